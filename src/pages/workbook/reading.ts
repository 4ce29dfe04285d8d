import type { ReadingAnswer } from "./reading-worker";
import { byId } from "./show";

/** Milliseconds. A file of a million cells takes less than a minute on a slow computer; what takes longer never ends. */
const longest = 120_000;

/** Reads a file in a thread of its own, which `ended` and the time limit end. The bytes are gone until they come back. */
export function readElsewhere(
  bytes: Uint8Array<ArrayBuffer>,
  ended: AbortSignal,
): Promise<ReadingAnswer | { readonly is: "ended" } | { readonly is: "too slow" }> {
  const worker = new Worker((byId("reading-worker") as HTMLLinkElement).href, { type: "module" });
  return new Promise<ReadingAnswer | { readonly is: "ended" } | { readonly is: "too slow" }>((done) => {
    const tooSlow = setTimeout(() => done({ is: "too slow" }), longest);
    ended.addEventListener("abort", () => done({ is: "ended" }));
    worker.addEventListener("message", ({ data }: MessageEvent<ReadingAnswer>) => done(data));
    // Its script did not come, or its memory gave out.
    worker.addEventListener("error", () => done({ is: "not read" }));
    worker.addEventListener("messageerror", () => done({ is: "too large" }));
    ended.addEventListener("abort", () => clearTimeout(tooSlow));
    worker.postMessage(bytes, [bytes.buffer]);
  }).finally(() => worker.terminate());
}
