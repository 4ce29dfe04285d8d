import { must, mustBe, shown } from "../errors";

/** How far from a whole number of steps still counts as one: noise of computed cells, far below any scale. */
const wholeWithin = 1e-6;

/** Above this many steps a double cannot tell a whole step from noise, and no scale shows them. */
const mostSteps = 1e9;

/** A weight as a whole number of the scale's steps; a weight that the scale cannot show is refused. */
export function wholeSteps(weight: number, readability: number): number {
  const steps = weight / readability;
  const whole = Math.round(steps);
  if (steps > mostSteps) {
    const most = shown(mostSteps * readability);
    throw mustBe("weight", `at most ${most}, a thousand million steps of ${shown(readability)}`, weight);
  }
  if (whole >= 1 && Math.abs(steps - whole) <= wholeWithin) return whole;
  const below = Math.floor(steps);
  const above = shown(weightOfSteps(below + 1, readability));
  const nearest =
    below === 0
      ? `the nearest is ${above}`
      : `the nearest are ${shown(weightOfSteps(below, readability))} and ${above}`;
  throw must("weight", `be a whole number of steps of ${shown(readability)}`, `got ${shown(weight)} (${nearest})`);
}

/** What the scale shows at a number of steps, without the noise of multiplying: 3087 steps of 0.1 are 308.7. */
export const weightOfSteps = (steps: number, readability: number): number =>
  Number((steps * readability).toPrecision(15));

/** How many whole steps of the scale keep within a load. */
export const stepsWithin = (load: number, readability: number): number => Math.floor(load / readability + wholeWithin);
