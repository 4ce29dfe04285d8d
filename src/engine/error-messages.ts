import { CellError, type Grid } from "../cells/values";
import type { Reason } from "../core/refusals";

/** Why a cell shows an error. */
export interface ErrorMessage {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** The error that the cell shows, such as "#VALUE!". */
  readonly code: string;
  readonly message: string;
  readonly reason: Reason | undefined;
}

/**
 * The engine's grid knows that a cell shows #VALUE!, not why: the messages of our functions are kept here by cell.
 * Cells that a spill fills have their own.
 */
export class ErrorMessages {
  readonly #messages = new Map<string, ErrorMessage>();
  /** What a spill left in cells beside its own, should it turn out that they show it. */
  readonly #spilled = new Map<string, ErrorMessage>();
  readonly #listeners = new Set<() => void>();
  #isUnheard = false;

  /** The message of the error that a cell shows; undefined when there is none. Sheets by id, rows from 0. */
  at(sheet: string, row: number, column: number): ErrorMessage | undefined {
    const key = place(sheet, row, column);
    return this.#messages.get(key) ?? this.#spilled.get(key);
  }

  all(): ErrorMessage[] {
    return [...new Map([...this.#spilled, ...this.#messages]).values()];
  }

  /** Keeps the errors in the answer of the formula in a cell. */
  record(sheet: string, row: number, column: number, answer: Grid): void {
    if (this.#isUnheard) return;
    let first: CellError | undefined;
    answer.forEach((values, down) => {
      values.forEach((value, right) => {
        if (!(value instanceof CellError) || value.message === "") return;
        first ??= value;
        if (down > 0 || right > 0) keep(this.#spilled, sheet, row + down, column + right, value);
      });
    });
    // Also of an error further inside: the formula may take one cell out of the answer, as INDEX does.
    if (first) keep(this.#messages, sheet, row, column, first);
  }

  /** Does something of which no error belongs to a cell. */
  unheard<Answer>(work: () => Answer): Answer {
    this.#isUnheard = true;
    try {
      return work();
    } finally {
      this.#isUnheard = false;
    }
  }

  /**
   * Forgets the cells that no longer show their error, and tells whoever listens. Called when a calculation is done:
   * only the grid knows what became of an error, since another function may have caught it on its way to the cell.
   */
  settle(valueAt: (sheet: string, row: number, column: number) => unknown): void {
    for (const messages of [this.#messages, this.#spilled]) {
      for (const [key, { sheet, row, column, code }] of messages) {
        if (valueAt(sheet, row, column) !== code) messages.delete(key);
      }
    }
    for (const listener of this.#listeners) listener();
  }

  /** Calls back after every calculation; gives the way to stop it. */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }
}

function keep(messages: Map<string, ErrorMessage>, sheet: string, row: number, column: number, error: CellError): void {
  const { code, message, reason } = error;
  messages.set(place(sheet, row, column), { sheet, row, column, code, message, reason });
}

const place = (sheet: string, row: number, column: number): string => `${sheet}!${row},${column}`;
