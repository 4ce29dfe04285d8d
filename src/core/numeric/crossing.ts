/**
 * Where a rising function reaches a value that it does reach, from 0 up: halved until two neighbouring doubles are
 * left. Slower than Newton's method and never astray, and a sheet asks for few of these.
 */
export function crossing(rising: (x: number) => number, value: number): number {
  let low = 0;
  let high = 1;
  while (rising(high) < value) {
    low = high;
    high *= 2;
  }
  for (;;) {
    const middle = low + (high - low) / 2;
    if (middle <= low || middle >= high) return high;
    if (rising(middle) < value) low = middle;
    else high = middle;
  }
}
