import { webDarkTheme, webLightTheme } from "@fluentui/tokens";

/**
 * The Fluent tokens that a style sheet uses, as custom properties for light and dark: as the system is, unless the
 * host says otherwise in `data-theme`. Written into a file rather than set by a script, so that a strict security
 * policy holds and the whole set of tokens is not shipped.
 */
export function fluentTokensFor(styleSheet: string): string {
  const names = [...new Set([...styleSheet.matchAll(/var\(--(\w+)\)/g)].map((match) => match[1] as string))].sort();
  const light = webLightTheme as unknown as Record<string, string | number>;
  const dark = webDarkTheme as unknown as Record<string, string | number>;
  const unknown = names.filter((name) => light[name] === undefined);
  if (unknown.length > 0) throw new Error(`No Fluent token is called ${unknown.join(", ")}`);
  const line = (theme: Record<string, string | number>) => (name: string) =>
    `--${name}: ${String(theme[name]).replaceAll("'", '"')};`;
  const differing = names.filter((name) => light[name] !== dark[name]);
  const darkLines = (indent: string) =>
    differing
      .map(line(dark))
      .map((text) => `${indent}${text}\n`)
      .join("");
  return `/* Written by npm run generate from @fluentui/tokens. */
.tea-pane {
${names
  .map(line(light))
  .map((text) => `  ${text}\n`)
  .join("")}}

@media (prefers-color-scheme: dark) {
  .tea-pane:not([data-theme="light"]) {
${darkLines("    ")}  }
}

.tea-pane[data-theme="dark"] {
${darkLines("  ")}}
`;
}
