/** What goes in and out of cells, whatever the host. Hosts translate their own errors to and from CellError. */

import { englishReason } from "../core/english-refusals";
import type { DomainError } from "../core/errors";
import type { Reason } from "../core/refusals";

/** Any error a spreadsheet knows; `#VALUE!` and `#N/A` of our own carry a message. */
export class CellError {
  readonly code: string;
  readonly message: string;
  /** What the message says, as data for other languages; undefined where a host or a formula gave the error. */
  readonly reason: Reason | undefined;

  constructor(code: string, message = "", reason?: Reason) {
    this.code = code;
    this.message = message;
    this.reason = reason;
  }
}

/** A refusal as it stands in a cell. */
export const refusedCell = ({ refusal }: DomainError): CellError => cellErrorOf(refusal.code, refusal);

/** An error of ours with its reason, in English. */
export const cellErrorOf = (code: string, reason: Reason): CellError =>
  new CellError(code, englishReason(reason), reason);

export type CellValue = number | string | boolean | CellError;

/** What a host passes for one argument: a constant, rows of constants, or nothing. */
export type CellArgument = unknown;

/** Rows of values: what every cell function returns. A single value is one row of one. */
export type Grid = CellValue[][];

/** null and "" are blank everywhere. Some hosts send 0 instead, which only the kind of quantity can judge. */
export const isBlank = (value: unknown): boolean => value === null || value === undefined || value === "";
