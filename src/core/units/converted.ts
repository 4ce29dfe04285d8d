/**
 * An amount in another unit, from the size of both. Always by the ratio above 1: between metric units that is a whole
 * number, so that nothing but the last digit of the answer is rounded.
 */
export const converted = (value: number, sizeOfFrom: number, sizeOfTo: number): number =>
  sizeOfFrom >= sizeOfTo ? value * (sizeOfFrom / sizeOfTo) : value / (sizeOfTo / sizeOfFrom);
