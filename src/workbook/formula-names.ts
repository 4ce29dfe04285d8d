/**
 * What a formula looks like inside an .xlsx file. There a function of an add-in is called by its `_xldudf_` name,
 * functions younger than Excel 2007 carry a prefix, and so do the names that LET and LAMBDA introduce. Cells show
 * none of that.
 */
import { idInCell, idInFile, savedName } from "../core/describe";
import { namespace } from "../core/namespace";
import { formulaPieces, type Piece } from "./formula";

/** `=TEA.OUTTURN(B4,B5)` becomes `=_xldudf_TEA_OUTTURN(B4,B5)`. */
export function toFileFormula(formula: string): string {
  const pieces = formulaPieces(formula);
  const introduced = introducedNames(pieces);
  return pieces
    .map((piece, index) => {
      if (piece.kind === "gap" && mapped(pieces[index - 1]) && pieces[index + 1]?.text === "(") return "";
      if (piece.kind !== "name" || piece.text.startsWith("_xlop.")) return piece.text;
      if (introduced.has(index)) return `_xlpm.${piece.text}`;
      return isCalled(pieces, index) ? (mapped(piece) ?? piece.text) : piece.text;
    })
    .join("");
}

/**
 * The reverse: `=_xldudf_TEA_OUTTURN(B4,B5)` becomes `=TEA.OUTTURN(B4,B5)`. The prefix of a function that is not
 * listed here stays, since nobody could put it back.
 */
export function fromFileFormula(formula: string): string {
  const pieces = formulaPieces(formula);
  return pieces
    .map((piece, index) => (piece.kind === "name" ? shownName(piece.text, pieces, index) : piece.text))
    .join("");
}

function shownName(name: string, pieces: readonly Piece[], index: number): string {
  if (name.startsWith("_xlpm.")) return name.slice("_xlpm.".length);
  if (!isCalled(pieces, index)) return name;
  const ours = idInFile(name);
  if (ours !== undefined) return `${namespace}.${ours}`;
  const [, listed = ""] = /^_xlfn\.(?:_xlws\.)?(.+)$/.exec(name) ?? [];
  return prefixes.has(listed.toUpperCase()) ? listed : name;
}

/** What a called function is named in a file; undefined for those that have the same name there. */
function mapped(piece: Piece | undefined): string | undefined {
  if (piece?.kind !== "name") return undefined;
  const ours = idInCell(piece.text);
  if (ours !== undefined) return savedName(ours);
  const prefix = prefixes.get(piece.text.toUpperCase());
  return prefix && prefix + piece.text;
}

/** The formula with other functions called in it. */
export function withOtherCalls(formula: string, calledInstead: (name: string) => string | undefined): string {
  const pieces = formulaPieces(formula);
  const instead = pieces.map(({ kind, text }, index) =>
    kind === "name" && isCalled(pieces, index) ? calledInstead(text) : undefined,
  );
  return pieces
    .map(({ kind, text }, index) =>
      // No space before the bracket of such a call: behind a name it would stand for what two ranges share.
      kind === "gap" && instead[index - 1] !== undefined ? "" : (instead[index] ?? text),
    )
    .join("");
}

/** What a formula calls, in capitals. */
export function namesCalledIn(formula: string): readonly string[] {
  const pieces = formulaPieces(formula);
  return pieces.flatMap(({ kind, text }, index) =>
    kind === "name" && isCalled(pieces, index) ? [text.toUpperCase()] : [],
  );
}

/** Whether a bracket opens behind the name, perhaps after a space. */
const isCalled = (pieces: readonly Piece[], index: number): boolean => opening(pieces, index) !== undefined;

/** The place of the bracket that opens the call of a name. */
function opening(pieces: readonly Piece[], index: number): number | undefined {
  const next = pieces[index + 1]?.kind === "gap" ? index + 2 : index + 1;
  return pieces[next]?.text === "(" ? next : undefined;
}

/** Functions that came after Excel 2007, by their prefix in a file. */
const prefixes: ReadonlyMap<string, string> = new Map([
  ...prefixed("_xlfn._xlws.", "FILTER SORT"),
  ...prefixed(
    "_xlfn.",
    `ACOT ACOTH AGGREGATE ARABIC ARRAYTOTEXT BASE BETA.DIST BETA.INV BINOM.DIST BINOM.DIST.RANGE BINOM.INV BITAND
    BITLSHIFT BITOR BITRSHIFT BITXOR BYCOL BYROW CEILING.MATH CEILING.PRECISE CHISQ.DIST CHISQ.DIST.RT CHISQ.INV
    CHISQ.INV.RT CHISQ.TEST CHOOSECOLS CHOOSEROWS COMBINA CONCAT CONFIDENCE.NORM CONFIDENCE.T COT COTH COVARIANCE.P
    COVARIANCE.S CSC CSCH DAYS DECIMAL DROP ERF.PRECISE ERFC.PRECISE EXPAND EXPON.DIST F.DIST F.DIST.RT F.INV F.INV.RT
    F.TEST FLOOR.MATH FLOOR.PRECISE FORECAST.LINEAR FORMULATEXT GAMMA GAMMA.DIST GAMMA.INV GAMMALN.PRECISE GAUSS HSTACK
    HYPGEOM.DIST IFNA IFS ISFORMULA ISOMITTED ISOWEEKNUM LAMBDA LET LOGNORM.DIST LOGNORM.INV MAKEARRAY MAP MAXIFS MINIFS
    MODE.MULT MODE.SNGL MUNIT NEGBINOM.DIST NORM.DIST NORM.INV NORM.S.DIST NORM.S.INV NUMBERVALUE PDURATION
    PERCENTILE.EXC PERCENTILE.INC PERCENTRANK.EXC PERCENTRANK.INC PERMUTATIONA PHI POISSON.DIST QUARTILE.EXC
    QUARTILE.INC RANDARRAY RANK.AVG RANK.EQ REDUCE RRI SCAN SEC SECH SEQUENCE SHEET SHEETS SKEW.P SORTBY STDEV.P STDEV.S
    SWITCH T.DIST T.DIST.2T T.DIST.RT T.INV T.INV.2T T.TEST TAKE TEXTAFTER TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW
    UNICHAR UNICODE UNIQUE VALUETOTEXT VAR.P VAR.S VSTACK WEIBULL.DIST WRAPCOLS WRAPROWS XLOOKUP XMATCH XOR Z.TEST`,
  ),
]);

function prefixed(prefix: string, names: string): (readonly [string, string])[] {
  return names.split(/\s+/).map((name) => [name, prefix] as const);
}

/**
 * The places of the names that LET and LAMBDA introduce, within their call. Where such a name is called, it is one
 * only if its value is a LAMBDA: LET may well name a sum `sum`.
 */
function introducedNames(pieces: readonly Piece[]): ReadonlySet<number> {
  const places = new Set<number>();
  pieces.forEach((piece, index) => {
    const [, name] = /^(?:_xlfn\.)?(LET|LAMBDA)$/i.exec(piece.kind === "name" ? piece.text : "") ?? [];
    const start = opening(pieces, index);
    if (name === undefined || start === undefined) return;
    const given = argumentsFrom(pieces, start);
    const names = new Map<string, { isLambda: boolean }>();
    given.slice(0, -1).forEach((argument, position) => {
      const [introduced, ...others] = solid(pieces.slice(argument.from, argument.to));
      const isName = name.toUpperCase() === "LAMBDA" || position % 2 === 0;
      if (!isName || introduced?.kind !== "name" || others.length > 0) return;
      const value = given[position + 1];
      const [first] = value ? solid(pieces.slice(value.from, value.to)) : [];
      const isLambda = name.toUpperCase() === "LET" && /^(?:_xlfn\.)?LAMBDA$/i.test(first?.text ?? "");
      names.set(keyOf(introduced.text), { isLambda });
    });
    for (let at = start; at < (given.at(-1)?.to ?? start); at += 1) {
      const word = pieces[at];
      const known = word?.kind === "name" ? names.get(keyOf(word.text)) : undefined;
      if (known && (known.isLambda || !isCalled(pieces, at))) places.add(at);
    }
  });
  return places;
}

/** Cells compare names without regard to capitals. A parameter that may be left out has a prefix of its own. */
const keyOf = (name: string): string => name.replace(/^_xlop\./, "").toUpperCase();

const solid = (pieces: readonly Piece[]): Piece[] => pieces.filter(({ kind }) => kind !== "gap");

/** Where the arguments of the call stand whose bracket opens at `start`: each up to, not including, `to`. */
function argumentsFrom(pieces: readonly Piece[], start: number): { from: number; to: number }[] {
  const found: { from: number; to: number }[] = [];
  let depth = 0;
  let from = start + 1;
  for (let at = start + 1; at < pieces.length; at += 1) {
    const { text } = pieces[at] as Piece;
    if (depth === 0 && (text === "," || text === ")")) {
      found.push({ from, to: at });
      from = at + 1;
      if (text === ")") break;
    }
    if (text === "(" || text === "{") depth += 1;
    if (text === ")" || text === "}") depth -= 1;
  }
  return found;
}
