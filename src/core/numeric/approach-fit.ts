/** A value that approaches a rest, fitted to readings: W₁ − b(1 − e^(−kx)), x counted from the first reading. */
interface Approach {
  /** How far it falls in all. */
  readonly depth: number;
  /** Rate, one over the unit of x. */
  readonly rate: number;
  readonly squares: number;
}

/** Rates tried, in orders of magnitude of one over the whole span of x, and how many of them to an order. */
const slowest = -4;
const orders = 7;
const perOrder = 40;

/**
 * Least squares of y = b(1 − e^(−kx)) by variable projection: for each rate the best depth is b = Σyg/Σg², so only the
 * rate is searched, on a grid and then, between the neighbours of the best, to where Σ(y − bg)·x·e^(−kx) is 0, halved
 * until neighbouring doubles. Undefined where the best rate is the slowest or the fastest tried: the readings do not
 * say where they come to rest. Source: Golub and Pereyra, SIAM J. Numer. Anal. 10 (1973); checked on NIST StRD BoxBOD.
 */
export function approachFit(x: readonly number[], y: readonly number[]): Approach | undefined {
  const span = x[x.length - 1] as number;
  const rateAt = (place: number): number => 10 ** (slowest + place / perOrder) / span;
  const last = orders * perOrder;
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let place = 0; place <= last; place += 1) {
    const { squares } = projected(x, y, rateAt(place));
    if (squares < least) [best, least] = [place, squares];
  }
  if (best === 0 || best === last) return undefined;
  let slow = rateAt(best - 1);
  let fast = rateAt(best + 1);
  for (;;) {
    const rate = slow + (fast - slow) / 2;
    if (rate <= slow || rate >= fast) return { rate, ...projected(x, y, rate) };
    if (projected(x, y, rate).pull > 0) slow = rate;
    else fast = rate;
  }
}

/** The best depth for a rate, what it leaves, and on which side the better rate lies: above 0, a faster one. */
function projected(x: readonly number[], y: readonly number[], rate: number) {
  const shape = x.map((at) => -Math.expm1(-rate * at));
  let products = 0;
  let shapes = 0;
  shape.forEach((g, index) => {
    products += g * (y[index] as number);
    shapes += g * g;
  });
  const depth = products / shapes;
  let squares = 0;
  let pull = 0;
  shape.forEach((g, index) => {
    const residual = (y[index] as number) - depth * g;
    squares += residual * residual;
    pull += residual * (x[index] as number) * (1 - g);
  });
  return { depth, squares, pull };
}
