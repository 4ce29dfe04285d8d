import { catalogue } from "../core/catalogue";
import type { Check, Expected, Given } from "../core/define";
import { formula } from "../core/describe";

/** A call with what it has to give. */
export interface Trial {
  readonly id: string;
  readonly says: string;
  readonly given: readonly Given[];
  readonly expected: Expected;
  readonly tolerance: Check["tolerance"];
}

/** Examples are written to ten significant digits. */
const asWritten = { relative: 1e-9 };

/** Every example and every check of every function. */
export const trials: readonly Trial[] = catalogue.flatMap(({ spec, page }) =>
  [...page.examples.map(({ given, gives }) => ({ given, expected: gives, tolerance: asWritten })), ...page.checks].map(
    ({ given, expected, tolerance }) => ({ id: spec.id, says: formula(spec, given), given, expected, tolerance }),
  ),
);
