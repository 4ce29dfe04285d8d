/** Characters that XML has no place for stand in texts as `_x000D_` (ECMA-376 part 1, 22.9.2.19, ST_Xstring). */

export const unescaped = (text: string): string =>
  text.includes("_x")
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
    : text;

/** The other way: what would be read as such a character, and what XML would not hold. */
export const escaped = (text: string): string =>
  text
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_")
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what XML does not hold; a CR would become an LF.
    .replace(/[\u0000-\u0008\u000B-\u001F\uFFFE\uFFFF]/g, (character) => `_x${hexOf(character)}_`);

const hexOf = (character: string): string => character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0");
