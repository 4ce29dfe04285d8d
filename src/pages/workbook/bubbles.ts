import type { IDisposable } from "@univerjs/core";
import type { FRange } from "@univerjs/preset-sheets-core";
import { createElement } from "react";
import type { Api } from "./grid";

/** What a cell has to say: why it shows an error, or the note that came with the workbook. */
export interface CellMessage {
  readonly text: string;
  readonly isError: boolean;
}

/** Which side of its cell a bubble stands on. */
export type Side = "horizontal" | "top" | "bottom";

const bubbleName = "cell-bubble";

export const prepareBubbles = (api: Api): void => {
  api.registerComponent(bubbleName, Bubble);
};

/** A bubble that stands beside one cell at a time. */
export function bubbleSlot() {
  let standing: { key: string; bubble: IDisposable } | undefined;
  return {
    show(range: FRange | undefined, message: CellMessage | undefined, side: Side = "horizontal") {
      const key = range && message ? `${range.getSheetId()}!${range.getA1Notation()} ${side} ${message.text}` : "";
      if (key === (standing?.key ?? "")) return;
      standing?.bubble.dispose();
      standing = undefined;
      if (!range || !message) return;
      const bubble = range.attachPopup({
        componentKey: bubbleName,
        direction: side,
        offset: side === "horizontal" ? [6, 0] : [0, 6],
        showOnSelectionMoving: true,
        extraProps: { message },
      });
      if (bubble) standing = { key, bubble };
    },
  };
}

/** Where a bubble covers neither its cell nor another, which keys have gone on to. */
export function clearOf(cell: Place, other: Place): Side {
  // Beside its cell, and so over cells to the right of it, in its own row and those below.
  if (other.column <= cell.column) return "horizontal";
  return other.row <= cell.row ? "bottom" : "top";
}

interface Place {
  readonly row: number;
  readonly column: number;
}

function Bubble({ popup }: { popup: { extraProps: { message: CellMessage } } }) {
  const { text, isError } = popup.extraProps.message;
  return createElement("div", { className: isError ? "bubble has-error" : "bubble" }, text);
}
