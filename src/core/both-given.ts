import { mustBe } from "./errors";

/** Whether two arguments that only make sense together are there; one alone is refused by the name of the other. */
export function bothGiven(one: string, first: unknown, other: string, second: unknown): boolean {
  if ((first === undefined) === (second === undefined)) return first !== undefined;
  const [missing, given] = first === undefined ? [one, other] : [other, one];
  throw mustBe(missing, { kind: "given with", argument: given }, null);
}
