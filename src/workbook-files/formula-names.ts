/**
 * What a formula looks like inside an .xlsx file. There a function of an add-in is called by its `_xldudf_` name,
 * functions younger than Excel 2007 carry a prefix, and so do the names that LET and LAMBDA introduce. Cells show
 * none of that.
 */

/** `=TEA.OUTTURN(B4,B5)` becomes `=_xldudf_TEA_OUTTURN(B4,B5)`. */
export function toFileFormula(formula: string): string {
  return withPrefixedNames(
    outsideQuotes(formula, (part) =>
      part
        .replace(/(?<![\w.])TEA\.([A-Z][A-Z0-9]*)(?=\()/gi, (_, name: string) => `_xldudf_TEA_${name.toUpperCase()}`)
        .replace(
          /(?<![\w.])([A-Z][A-Z0-9.]*)(?=\()/gi,
          (name: string) => (prefixes.get(name.toUpperCase()) ?? "") + name,
        ),
    ),
  );
}

/** The reverse: `=_xldudf_TEA_OUTTURN(B4,B5)` becomes `=TEA.OUTTURN(B4,B5)`. */
export function fromFileFormula(formula: string): string {
  return outsideQuotes(formula, (part) =>
    part
      .replace(/_xldudf_TEA_([A-Z][A-Z0-9]*)(?=\()/gi, (_, name: string) => `TEA.${name.toUpperCase()}`)
      .replace(/_xlfn\.(?:_xlws\.)?|_xlpm\./g, ""),
  );
}

/** Text in quotes and sheet names in quotes stay as they are. */
function outsideQuotes(formula: string, change: (part: string) => string): string {
  return formula
    .split(/("(?:[^"]|"")*"|'(?:[^']|'')*')/)
    .map((part, index) => (index % 2 === 0 ? change(part) : part))
    .join("");
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

/** Marks the names that LET and LAMBDA introduce, wherever they stand in the formula. */
function withPrefixedNames(formula: string): string {
  const names = new Set<string>();
  for (const { index, 0: call, 1: name } of formula.matchAll(/_xlfn\.(LET|LAMBDA)\(/g)) {
    const given = argumentsFrom(formula, index + call.length);
    for (const [position, argument] of given.slice(0, -1).entries()) {
      if (name === "LAMBDA" || position % 2 === 0) names.add(argument.trim());
    }
  }
  if (names.size === 0) return formula;
  return outsideQuotes(formula, (part) =>
    part.replace(/(?<![\w.])[A-Z_][\w.]*(?![\w.(!])/gi, (word) => (names.has(word) ? `_xlpm.${word}` : word)),
  );
}

/** The arguments of the call whose opening bracket ends before `start`. */
function argumentsFrom(formula: string, start: number): string[] {
  const found: string[] = [];
  let depth = 0;
  let from = start;
  let quoted = false;
  for (let at = start; at < formula.length; at += 1) {
    const character = formula[at];
    if (character === '"') quoted = !quoted;
    if (quoted) continue;
    if (character === "(" || character === "{") depth += 1;
    if ((character === "," && depth === 0) || (character === ")" && depth === 0)) {
      found.push(formula.slice(from, at));
      from = at + 1;
      if (character === ")") break;
    }
    if (character === ")" || character === "}") depth -= 1;
  }
  return found;
}
