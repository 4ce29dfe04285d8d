/** Spreadsheets allow no more. */
const longest = 31;

/** A name that a sheet can have and no other one has: letters large or small make no difference. */
export function freeSheetName(wish: string, taken: readonly string[]): string {
  const others = new Set(taken.map((name) => name.toLowerCase()));
  const plain = wish.replace(/[[\]:*?/\\]/g, " ").replace(/^[' ]+|[' ]+$/g, "");
  for (let number = 1; ; number += 1) {
    const behind = number === 1 ? "" : ` ${number}`;
    const name = plain.slice(0, longest - behind.length).trimEnd() + behind;
    if (!others.has(name.toLowerCase())) return name;
  }
}
