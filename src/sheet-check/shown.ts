/** Numbers as findings show them. */

/** A share, in percent. */
export const percent = (share: number): string => `${Number((share * 100).toPrecision(6))} %`;

/** A weight that was worked out, to four digits. */
export const shortWeight = (weight: number): string => String(Number(weight.toPrecision(4)));
