/**
 * The same file with other functions called in its formulas, and with the names that these need. Only the formulas that
 * change move, the list of names, and what asks the next program to work everything out.
 */
import { strToU8 } from "fflate";
import { mayCallOurs } from "../../core/describe";
import { addressOf } from "../../workbook/addresses";
import { namesCalledIn, withOtherCalls } from "../../workbook/formula-names";
import { openArchive } from "../container/kind-of-file";
import { PackageParts } from "../container/package-parts";
import { rewriteArchive } from "../container/rewrite-archive";
import { isWorksheet, readBook } from "../read/book";
import { Refusal } from "../refusal";
import { placeBehind, withFullCalculation } from "./package-patch";
import { PackageText, textOf } from "./package-text";
import { type CellPlace, type SharedFormula, SheetPlaces, writtenOut } from "./sheet-places";
import { SpillsPatch } from "./spills-patch";
import {
  childrenOf,
  inAttribute,
  inText,
  plain,
  prefixAt,
  type Replacement,
  replaced,
  type Span,
  type Tag,
  TagScanner,
  valueIn,
  withAttribute,
} from "./tag-scanner";

/** A name as a file has it. */
interface FileName {
  readonly name: string;
  readonly formula: string;
  readonly comment: string;
}

interface Renaming {
  /** What a called function is to be called instead, in the words of a file; undefined where it keeps its name. */
  readonly calledInstead: (name: string) => string | undefined;
  /** Whether a name of the file belongs to these functions. */
  readonly isOurs: (name: string) => boolean;
  /** The names that formulas need which call these. */
  readonly neededFor: (called: ReadonlySet<string>) => readonly FileName[];
}

export interface Renamed {
  readonly bytes: Uint8Array;
  /** How many formulas call another function now. */
  readonly formulas: number;
  /** What formulas call now, in capitals. */
  readonly called: ReadonlySet<string>;
  /** The names of ours that the file has now, and those that it had. */
  readonly names: readonly string[];
  readonly namesBefore: readonly string[];
}

/** What stands before the names in the part of a workbook (ECMA-376 part 1, 18.2.27). */
const beforeNames = ["sheets", "functionGroups", "externalReferences"];

export function withRenamedCalls(bytes: Uint8Array, renaming: Renaming): Renamed {
  const parts = new PackageParts(openArchive(bytes));
  const book = readBook(parts);
  const package_ = new PackageText(parts, book);
  const contents = new Map<string, Uint8Array | undefined>();
  const calls = new Calls(renaming);
  const spills = new SpillsPatch(parts, book);

  for (const sheet of book.sheets.filter(isWorksheet)) {
    const text = textOf(parts, sheet.path);
    const changed = calls.ofElements(calls.ofSheet(text, spills.number), /^(?:formula[12]?|f|cfvo)$/, "sheetData");
    if (changed !== text) contents.set(sheet.path, strToU8(changed));
  }
  for (const path of parts.paths().filter((each) => /spreadsheetml\.table\+xml/.test(parts.contentType(each) ?? ""))) {
    const text = textOf(parts, path);
    const changed = calls.ofElements(text, /^(?:calculatedColumnFormula|totalsRowFormula)$/);
    if (changed !== text) contents.set(path, strToU8(changed));
  }
  spills.writeTo(package_, contents);
  const before = textOf(parts, book.path);
  const named = calls.withNames(before);
  if (named.text !== before || contents.size > 0) {
    contents.set(book.path, strToU8(withFullCalculation(named.text)));
    package_.dropCalculationOrder(contents);
  }
  package_.writeTo(contents);
  return {
    bytes: contents.size === 0 ? bytes : rewriteArchive(parts.archive, { contents }),
    formulas: calls.changed,
    called: calls.called,
    names: named.names,
    namesBefore: named.namesBefore,
  };
}

class Calls {
  readonly #renaming: Renaming;
  readonly called = new Set<string>();
  changed = 0;

  constructor(renaming: Renaming) {
    this.#renaming = renaming;
  }

  /** A formula without its equals sign. */
  #renamed(formula: string): string {
    const renamed = withOtherCalls(`=${formula}`, this.#renaming.calledInstead);
    for (const name of namesCalledIn(renamed)) this.called.add(name);
    const result = renamed.slice(1);
    if (result !== formula) this.changed += 1;
    return result;
  }

  ofSheet(text: string, spillNumber: () => number): string {
    const places = new SheetPlaces(text);
    const replacements: Replacement[] = [];
    const shared = new Set<string>();
    const cells = new Map<number, { cell: CellPlace; row: number }>();
    for (const row of places.rows) {
      if (
        !mayCallOurs(text.slice(row.inside, row.insideEnd)) &&
        !/"shared"/.test(text.slice(row.inside, row.insideEnd))
      ) {
        continue;
      }
      for (const cell of places.cellsIn(row)) {
        const formula = places.partOf(cell, "f");
        if (!formula) continue;
        cells.set(formula.start, { cell, row: row.row });
        const tag = places.tagOf(formula);
        const group = valueIn(tag, "t") === "shared" ? valueIn(tag, "si") : undefined;
        if (group !== undefined) {
          if (mayCallOurs(text.slice(formula.inside, formula.insideEnd))) shared.add(group);
          continue;
        }
        const old = plain(text.slice(formula.inside, formula.insideEnd));
        const renamed = this.#renamed(old);
        if (renamed === old) continue;
        if (valueIn(tag, "t") === "array") {
          replacements.push({ start: formula.inside, end: formula.insideEnd, text: inText(renamed) });
        } else replacements.push(...spilling(places, cell, row.row, formula, renamed, spillNumber));
      }
    }
    for (const members of places.sharing(shared).values()) {
      replacements.push(...this.#ofGroup(members, places, cells, spillNumber));
    }
    return replaced(text, replacements);
  }

  /** Cells that shared a text have their own once they may spill. */
  #ofGroup(
    members: readonly SharedFormula[],
    places: SheetPlaces,
    cells: ReadonlyMap<number, { readonly cell: CellPlace; readonly row: number }>,
    spillNumber: () => number,
  ): Replacement[] {
    const before = this.changed;
    const renamed = [...writtenOut(members, plain)].map(([member, old]) => [member, this.#renamed(old)] as const);
    if (this.changed === before) return [];
    return renamed.flatMap(([member, formula]) => {
      const at = cells.get(member.formula.start);
      return at ? spilling(places, at.cell, at.row, member.formula, formula, spillNumber) : [];
    });
  }

  /** The text of elements that hold a formula and no other element, and the limits (`cfvo`) that are one. */
  ofElements(text: string, name: RegExp, passedOver?: string): string {
    if (!mayCallOurs(text)) return text;
    const scanner = new TagScanner(text);
    const replacements: Replacement[] = [];
    let opened: Tag | undefined;
    for (let tag = scanner.next(); tag; tag = scanner.next()) {
      if (tag.name === passedOver) scanner.skip(tag);
      else if (tag.is === "close" && opened) {
        const old = plain(text.slice(opened.end, tag.start));
        const renamed = this.#renamed(old);
        if (renamed !== old) replacements.push({ start: opened.end, end: tag.start, text: inText(renamed) });
      } else if (tag.is !== "close" && tag.name === "cfvo" && name.test(tag.name)) {
        const limit = text.slice(tag.start, tag.end);
        const old = valueIn(limit, "type") === "formula" ? (valueIn(limit, "val") ?? "") : "";
        const renamed = this.#renamed(old);
        if (renamed !== old) {
          replacements.push({ start: tag.start, end: tag.end, text: withAttribute(limit, "val", renamed) });
        }
      }
      opened = tag.is === "open" && name.test(tag.name) ? tag : undefined;
    }
    return replaced(text, replacements);
  }

  /** The workbook's part with the names that are needed now, and without those of ours that are not. */
  withNames(text: string): {
    readonly text: string;
    readonly names: readonly string[];
    readonly namesBefore: string[];
  } {
    const list = childrenOf(text).find(({ name }) => name === "definedNames");
    const there = list ? childrenOf(text, list) : [];
    const replacements: Replacement[] = [];
    const ours: { readonly name: string; readonly span: Span }[] = [];
    for (const span of there) {
      const name = (valueIn(text.slice(span.start, span.inside), "name") ?? "").toUpperCase();
      const old = plain(text.slice(span.inside, span.insideEnd));
      if (this.#renaming.isOurs(name)) {
        if (!/^_xlfn\.LAMBDA\(/.test(old)) throw new Refusal({ kind: "name of its own", name });
        ours.push({ name, span });
        continue;
      }
      if (!mayCallOurs(old)) continue;
      const renamed = this.#renamed(old);
      if (renamed !== old) replacements.push({ start: span.inside, end: span.insideEnd, text: inText(renamed) });
    }
    const needed = this.#renaming.neededFor(this.called);
    const x = prefixAt(text, list?.start ?? childrenOf(text)[0]?.start ?? 0);
    const written = new Map(
      needed.map(({ name, formula, comment }) => [
        name.toUpperCase(),
        `<${x}definedName name="${name}" comment="${inAttribute(comment)}">${inText(formula)}</${x}definedName>`,
      ]),
    );
    for (const { name, span } of ours) {
      replacements.push({ start: span.start, end: span.end, text: written.get(name) ?? "" });
      written.delete(name);
    }
    const added = [...written.values()].join("");
    if (list && there.length === ours.length && needed.length === 0) {
      return {
        text: replaced(text, [{ start: list.start, end: list.end, text: "" }]),
        names: [],
        namesBefore: ours.map(({ name }) => name),
      };
    }
    if (list && added !== "") replacements.push({ start: list.insideEnd, end: list.insideEnd, text: added });
    if (!list && added !== "") {
      const at = placeBehind(text, beforeNames);
      replacements.push({ start: at, end: at, text: `<${x}definedNames>${added}</${x}definedNames>` });
    }
    return {
      text: replaced(text, replacements),
      names: needed.map(({ name }) => name),
      namesBefore: ours.map(({ name }) => name),
    };
  }
}

/**
 * The formula of a cell as one that may spill over its one cell: without that, Excel would read the name of a LAMBDA as
 * one value of many, with an @ before it.
 */
function spilling(
  places: SheetPlaces,
  cell: CellPlace,
  row: number,
  formula: Span,
  text: string,
  spillNumber: () => number,
): Replacement[] {
  const x = places.prefix;
  const address = addressOf(row, cell.column);
  return [
    { start: cell.start, end: cell.inside, text: withAttribute(places.tagOf(cell), "cm", String(spillNumber())) },
    { start: formula.start, end: formula.end, text: `<${x}f t="array" ref="${address}">${inText(text)}</${x}f>` },
  ];
}
