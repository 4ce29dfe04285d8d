import type { CDPSession, Page } from "playwright-core";

/** Numbers that look random and are the same in every run (a linear congruential generator of Numerical Recipes). */
export function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) % 2 ** 32;
    return state / 2 ** 32;
  };
}

/** Weights as a scale of a tenth of a gram shows them, written as people write them. */
export const weights = (count: number, next: () => number): string[] =>
  Array.from({ length: count }, () => String(Math.round((10 + next() * 1490) * 10) / 10));

/**
 * Hands on a keyboard. They keep their own pace, whether or not the page has dealt with the key before: unlike the
 * keyboard of the driver, which waits for the page after each key and so hides what a busy page loses.
 */
export class Hands {
  readonly #session: CDPSession;
  readonly #next: () => number;

  private constructor(session: CDPSession, next: () => number) {
    this.#session = session;
    this.#next = next;
  }

  static async on(page: Page, seed = 20_240_401): Promise<Hands> {
    return new Hands(await page.context().newCDPSession(page), chance(seed));
  }

  /** Types the text with so many milliseconds from key to key; after Enter, `\n`, the next key follows in 60 to 120. */
  async type(text: string, pace: number): Promise<void> {
    const sent: Promise<unknown>[] = [];
    let due = performance.now();
    for (const sign of text) {
      await new Promise((done) => setTimeout(done, due - performance.now()));
      sent.push(...this.#press(sign));
      due += sign === "\n" ? 60 + this.#next() * 60 : pace;
    }
    await Promise.all(sent);
  }

  /** What an input method does: each step stands underlined in the editor, and the last is put in its place. */
  async compose(steps: readonly string[], chosen: string, pace: number): Promise<void> {
    for (const step of steps) {
      await this.#session.send("Input.imeSetComposition", {
        text: step,
        selectionStart: step.length,
        selectionEnd: step.length,
      });
      await new Promise((done) => setTimeout(done, pace));
    }
    await this.#session.send("Input.insertText", { text: chosen });
  }

  #press(sign: string): Promise<unknown>[] {
    const key =
      sign === "\n"
        ? { key: "Enter", code: "Enter", windowsVirtualKeyCode: 13, text: "\r" }
        : { key: sign, code: codeOf(sign), windowsVirtualKeyCode: keyCodes[sign] ?? sign.charCodeAt(0), text: sign };
    const { text: _, ...up } = key;
    return [
      this.#session.send("Input.dispatchKeyEvent", { type: "keyDown", ...key }),
      this.#session.send("Input.dispatchKeyEvent", { type: "keyUp", ...up }),
    ];
  }
}

/** A point's own number is that of the key Delete. */
const keyCodes: Readonly<Record<string, number>> = {
  ".": 190,
  ",": 188,
  "%": 53,
  "=": 187,
  "(": 57,
  ")": 48,
  ";": 186,
};

const codeOf = (sign: string): string => (sign === "." ? "Period" : /\d/.test(sign) ? `Digit${sign}` : "");
