import type { Damage } from "./damage";
import { englishFileRefusal } from "./english-refusals";
import type { FileRefusal } from "./refusals";

/** Thrown where a file is not opened, or a cell of it not changed. */
export class Refusal extends Error {
  override readonly name = "Refusal";
  readonly why: FileRefusal;

  constructor(why: FileRefusal) {
    super();
    this.why = why;
  }

  /** In English. Put together when it is read. */
  override get message(): string {
    return englishFileRefusal(this.why);
  }
}

/** Something does not hold together inside. */
export const damaged = (how: Damage): Refusal => new Refusal({ kind: "damaged", how });
