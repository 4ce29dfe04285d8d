/*
 * Two things in the packages of the calculating engine cost more than half of a calculation (`npm run bench` has the
 * ratio), and neither changes an answer: so they are put right in the text of the packages, as they are bundled for a
 * page or loaded by Node.
 */

/** The files of the packages that are put right. */
export const filesOfEngine = /[\\/]@univerjs[\\/][\w-]+[\\/]lib[\\/](?:cjs|es)[\\/]\w+\.js$/;

export const mends: readonly { readonly before: RegExp; readonly after: string }[] = [
  // Each field of each object is set by a function that works its name out anew. It assigns, and so does this.
  { before: /\b_defineProperty\(this, "([A-Za-z_$][\w$]*)", /g, after: "(this.$1 = " },
  // Whether a text reads as a number is remembered where it does. Most texts do not, and were read anew at each turn.
  {
    before: /(\tconst cacheValue = stringToNumberPatternCache\.get\(_input\);\n)/g,
    after: "$1\tif (cacheValue === null) return { isNumberPattern: false };\n",
  },
  {
    before: /(\treturn \{ isNumberPattern: false \};\n\}\nfunction setNumberPatternCache)/g,
    after: "\tstringToNumberPatternCache.set(_input, null);\n$1",
  },
];

/** The text of one of these files, put right. */
export const quicker = (text: string): string =>
  mends.reduce((mended, { before, after }) => mended.replace(before, after), text);

/** What Node does without: each stands in one file of the packages, once. */
export const mendsInNode: readonly { readonly file: string; readonly before: RegExp; readonly after: string }[] = [
  // A calculation waits a tenth of a second, in case a maker types on. In Node nobody types: what is to be calculated
  // together is asked for in one go.
  {
    file: "sheets-formula",
    before: /(\t\tthis\._setTimeoutKey = setTimeout\(\(\) => \{\n(?:\t{4,}.*\n)+\t{3}\}), 100\);/g,
    after: "$1, 0);",
  },
  // Where a line of Chinese may end is looked up in a thousand files, to draw it. Node draws nothing.
  {
    file: "engine-render",
    before: /\brequire\("cjk-regex"\)/g,
    after: "((none) => ({ all: none, letters: none, punctuations: none }))(() => ({ toRegExp: () => /(?!)/ }))",
  },
];

export const quickerInNode = (text: string): string =>
  mendsInNode.reduce((mended, { before, after }) => mended.replace(before, after), quicker(text));
