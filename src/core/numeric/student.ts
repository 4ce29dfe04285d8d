import { crossing } from "./crossing";
import { normalQuantile } from "./normal";

/** Beyond so many degrees the expansion in powers of 1/degrees is good to all digits, and the sum would be long. */
const manyDegrees = 1000;

/**
 * The value that Student's t with a whole number of degrees of freedom stays below with this probability, above 0 and
 * below 1. Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.3, 26.7.4 and 26.7.5.
 */
export function studentQuantile(probability: number, degrees: number): number {
  if (probability === 0.5) return 0;
  if (probability < 0.5) return -studentQuantile(1 - probability, degrees);
  if (degrees > manyDegrees) return fromNormal(normalQuantile(probability), degrees);
  return crossing((t) => within(t, degrees), 2 * probability - 1);
}

/** Probability that t lies between −t and t. */
function within(t: number, degrees: number): number {
  const odd = degrees % 2 === 1;
  const length = Math.hypot(t, Math.sqrt(degrees));
  const sine = t / length;
  const squaredCosine = degrees / (length * length);
  let term = odd ? Math.sqrt(squaredCosine) : 1;
  let sum = 0;
  for (let index = odd ? 1 : 0; index <= degrees - 2; index += 2) {
    sum += term;
    term *= (squaredCosine * (index + 1)) / (index + 2);
  }
  return odd ? (2 / Math.PI) * (Math.atan(t / Math.sqrt(degrees)) + sine * sum) : sine * sum;
}

function fromNormal(z: number, degrees: number): number {
  const square = z * z;
  const first = (square + 1) / 4;
  const second = ((5 * square + 16) * square + 3) / 96;
  const third = (((3 * square + 19) * square + 17) * square - 15) / 384;
  const fourth = ((((79 * square + 776) * square + 1482) * square - 1920) * square - 945) / 92160;
  return z * (1 + (first + (second + (third + fourth / degrees) / degrees) / degrees) / degrees);
}
