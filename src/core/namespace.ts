/**
 * The namespace of the worksheet names, TEA.OUTTURN. Whatever makes or takes apart such a name has it from here and
 * nowhere else (test/structure.test.ts); formulas and texts that are written out whole hold the names themselves.
 */
export const namespace = "TEA";
