/** The part that names the sheets, and what other parts belong to the whole file. */
import type { PackageParts } from "../container/package-parts";
import { isTrue } from "../container/xml-events";
import { childrenAt, elementAt, type XmlElement } from "../container/xml-tree";
import { damaged, Refusal } from "../refusal";

export interface Book {
  /** The path of its part. */
  readonly path: string;
  readonly content: XmlElement;
  readonly counts1904: boolean;
  /** Of all kinds, in their order: charts and dialogs can be sheets as well. */
  readonly sheets: readonly BookSheet[];
  /** Paths of parts; undefined where the file has none. */
  readonly styles: string | undefined;
  readonly strings: string | undefined;
  readonly theme: string | undefined;
}

export interface BookSheet {
  readonly name: string;
  readonly path: string;
  /** Only a worksheet has cells. */
  readonly kind: string;
  readonly isHidden: boolean;
}

export function readBook(parts: PackageParts): Book {
  const path = mainPart(parts);
  const content = parts.tree(path);
  if (!content) throw damaged({ kind: "missing", path });
  const relations = parts.relations(path);
  const target = (kind: string) => relations.find((relation) => relation.kind === kind && !relation.isExternal)?.target;
  const byId = new Map(relations.map((relation) => [relation.id, relation]));
  const sheets = childrenAt(content, "sheets").flatMap(({ attributes }): BookSheet[] => {
    const relation = byId.get(attributes.id ?? "");
    if (!relation || relation.isExternal) throw damaged({ kind: "sheet missing", sheet: attributes.name ?? "" });
    const isHidden = attributes.state === "hidden" || attributes.state === "veryHidden";
    return [{ name: attributes.name ?? "", path: relation.target, kind: relation.kind, isHidden }];
  });
  if (!sheets.some(isWorksheet)) {
    throw new Refusal(sheets.some(({ kind }) => /macrosheet/i.test(kind)) ? "macros alone" : "no sheet of cells");
  }
  return {
    path,
    content,
    counts1904: isTrue(elementAt(content, "workbookPr")?.attributes.date1904),
    sheets,
    styles: target("styles"),
    strings: target("sharedStrings"),
    theme: target("theme"),
  };
}

export const isWorksheet = ({ kind }: BookSheet): boolean => kind === "worksheet";

function mainPart(parts: PackageParts): string {
  const named = parts.related("", "officeDocument");
  const path =
    named ??
    parts
      .paths()
      .find((each) =>
        /spreadsheetml\.(?:sheet|template)\.main\+xml|\.macroEnabled\.main\+xml/.test(parts.contentType(each)),
      );
  if (path === undefined) throw new Refusal("archive without a workbook");
  if (/sheet\.binary/.test(parts.contentType(path))) {
    throw new Refusal("binary .xlsb");
  }
  return path;
}
