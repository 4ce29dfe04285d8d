/** The most that the script may weigh which Excel loads before the first cell answers, compressed. */
export const mostFunctionsBytes = 24_000;
