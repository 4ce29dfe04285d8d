/**
 * Standard uncertainty of a sum of independent parts: the root of the sum of their squares.
 * Source: NIST Technical Note 1297; GUM (JCGM 100:2008), the law of propagation of uncertainty.
 */
export const combinedError = (parts: readonly number[]): number => Math.hypot(...parts);
