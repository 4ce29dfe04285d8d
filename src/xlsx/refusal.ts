/** Why a file is not opened, or a cell of it not changed: what is in the way and what to do, for a maker to read. */
export class Refusal extends Error {
  override readonly name = "Refusal";
}

const again = "Copy it again from where it came, or open and save it once in the program that made it.";

/** Something does not hold together inside. */
export const damaged = (how: string): Refusal => new Refusal(`The file is damaged: ${how}. ${again}`);
