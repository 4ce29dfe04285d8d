import { z } from "zod";

const address = z
  .url({ protocol: /^https$/, error: "it must be an https address, such as https://example.org/tea", abort: true })
  .refine((text) => new URL(text).username === "", "it must not hold a user name or password")
  .refine((text) => !/[?#]/.test(text), "it must have nothing behind a ? or #")
  .transform((text) => new URL(text).href.replace(/\/+$/, ""));

/**
 * The address that the add-in will be served from, without a slash at its end, from `--origin https://…` or
 * `--origin=https://…`. Throws with words for the person who typed it.
 */
export function originFrom(args: readonly string[]): string {
  const index = args.findIndex((arg) => arg === "--origin" || arg.startsWith("--origin="));
  const given = args[index]?.startsWith("--origin=") ? args[index].slice("--origin=".length) : args[index + 1];
  if (index === -1 || given === undefined) {
    throw new Error("Say where the add-in will be served from: npm run build -- --origin https://example.org/tea");
  }
  const read = address.safeParse(given);
  if (!read.success) throw new Error(`--origin "${given}" cannot be used: ${read.error.issues[0]?.message}`);
  return read.data;
}
