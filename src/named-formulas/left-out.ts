/** The functions that have no named formula, and why. */
export const leftOut: Readonly<Record<string, string>> = {
  PACKPLAN:
    "its margin is a normal quantile found by halving, and what is left goes from one size to the next in a loop",
  BALANCEFIT: "it fits all weighings of a lot at once, by repeated least squares over a matrix",
  STOCKBALANCE: "it reads a whole book row by row and leaves out rows with mistakes, each with its reason",
  SEASONTABLE:
    "it reads a whole book row by row, leaves out rows with mistakes with their reasons, and groups the rest",
  FINISHEDFORECAST: "it reads a whole book row by row and leaves out rows with mistakes before it fits a line",
  LOTFLAG: "it reads a whole book row by row and leaves out rows with mistakes before it looks at the spread",
  LOTFLAGS: "it reads a whole book row by row, and fits the spread of the lots",
  UNCERTAINTY: "it calls another function by its name, many times, to find how fast its answer changes",
  DAYPLAN:
    "it plans one charge after the other over pans and breaks, in a loop whose length depends on what came before",
  DRYINGTIME: "its curve is fitted by repeated steps until they settle",
};
