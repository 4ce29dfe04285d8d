/** Reads a file in a thread of its own: the page goes on meanwhile, and can end it. */
import { type ReadFile, readFile } from "../../xlsx/read-workbook";
import { Refusal } from "../../xlsx/refusal";
import type { FileRefusal } from "../../xlsx/refusals";
import { isTooLarge } from "./too-large";

export type ReadingAnswer =
  /** The bytes come back as they were sent. */
  | { readonly is: "read"; readonly read: ReadFile; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly is: "refused"; readonly why: FileRefusal }
  | { readonly is: "too large" }
  | { readonly is: "not read" };

addEventListener("message", ({ data }: MessageEvent<Uint8Array<ArrayBuffer>>) => {
  const answer = answered(data);
  postMessage(answer, { transfer: answer.is === "read" ? [answer.bytes.buffer] : [] });
});

function answered(bytes: Uint8Array<ArrayBuffer>): ReadingAnswer {
  try {
    return { is: "read", read: readFile(bytes), bytes };
  } catch (problem) {
    if (problem instanceof Refusal) return { is: "refused", why: problem.why };
    return { is: isTooLarge(problem) ? "too large" : "not read" };
  }
}
