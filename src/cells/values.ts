/** What goes in and out of cells, whatever the host. Hosts translate their own errors to and from CellError. */

import type { Refusal } from "../core/errors";

/** Any error a spreadsheet knows; `#VALUE!` and `#N/A` of our own carry a message. */
export class CellError {
  readonly code: string;
  readonly message: string;
  /** The message in its parts, where a function of ours refused; no host keeps them. */
  readonly refusal?: Refusal;

  constructor(code: string, message = "", refusal?: Refusal) {
    this.code = code;
    this.message = message;
    if (refusal) this.refusal = refusal;
  }
}

export type CellValue = number | string | boolean | CellError;

/** What a host passes for one argument: a constant, rows of constants, or nothing. */
export type CellArgument = unknown;

/** Rows of values: what every cell function returns. A single value is one row of one. */
export type Grid = CellValue[][];

/** null and "" are blank everywhere. Some hosts send 0 instead, which only the kind of quantity can judge. */
export const isBlank = (value: unknown): boolean => value === null || value === undefined || value === "";
