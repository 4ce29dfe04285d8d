/** How far from a whole number of steps still counts as one: noise of computed cells, far below any scale. */
import { mustBe } from "../errors";

export const wholeWithin = 1e-6;

/** Above this many steps a double cannot tell a whole step from noise, and no scale shows them. */
export const mostSteps = 1e9;

/** A weight as a whole number of the scale's steps; a weight that the scale cannot show is refused. */
export function wholeSteps(weight: number, readability: number): number {
  const steps = weight / readability;
  const whole = Math.round(steps);
  if (steps > mostSteps) {
    throw mustBe("weight", { kind: "at most steps", weight: mostSteps * readability, readability }, weight);
  }
  if (whole >= 1 && Math.abs(steps - whole) <= wholeWithin) return whole;
  const below = Math.floor(steps);
  const nearest = below === 0 ? [1] : [below, below + 1];
  const weights = nearest.map((count) => weightOfSteps(count, readability));
  throw mustBe("weight", { kind: "whole steps", readability }, weight, { hint: { kind: "nearest", weights } });
}

/** What the scale shows at a number of steps, without the noise of multiplying: 3087 steps of 0.1 are 308.7. */
export const weightOfSteps = (steps: number, readability: number): number =>
  Number((steps * readability).toPrecision(15));

/** How many whole steps of the scale keep within a load. */
export const stepsWithin = (load: number, readability: number): number => Math.floor(load / readability + wholeWithin);
