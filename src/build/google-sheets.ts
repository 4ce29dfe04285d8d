import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { marked } from "marked";
import { catalogue } from "../core/catalogue";
import { htmlDocument } from "../generate/blocks";
import { sheetDeclarations } from "../generate/sheet-declarations";
import { functionsScript } from "./bundle-script";
import { project } from "./folders";
import { unfitWords } from "./plain-script";

const text = (file: string): string => readFileSync(join(project, file), "utf8");

export const sheetsScript = "tea-mass-balance.js";
const manifestName = "appsscript.json";

/** What src/google-sheets/functions.ts answers through. */
const answerer = "teaMassBalance_";

/**
 * The functions need no leave beyond the sheet they stand in, and of that only its time zone. No time zone of the script
 * counts for anything; what is thrown at a maker is kept in no log.
 */
const manifest = {
  timeZone: "Etc/UTC",
  runtimeVersion: "V8",
  exceptionLogging: "NONE",
  oauthScopes: ["https://www.googleapis.com/auth/spreadsheets.currentonly"],
};

/** Whoever copies the script alone has its licence with it. */
const opening = (version: string): string => `/**
 * Tea Mass Balance ${version}: functions for people who make tea by hand in small lots, in Google Sheets.
 * Made from the project's sources: change those, not this.
 *
${text("LICENSE")
  .trimEnd()
  .split("\n")
  .map((line) => ` * ${line}`.trimEnd())
  .join("\n")}
 *
 * @OnlyCurrentDoc
 */
`;

/** The functions for Google Sheets as one script. A script that its engine may not read is none. */
async function sheetFunctions(): Promise<string> {
  const { version } = JSON.parse(text("package.json")) as { version: string };
  const { script } = await functionsScript({ project, from: "src/google-sheets/functions.ts" });
  const whole = [opening(version), `var ${answerer};`, script, sheetDeclarations(catalogue, answerer)].join("\n");
  const unfit = unfitWords(whole);
  if (unfit.length > 0) throw new Error(`Google's script engine may not have: ${unfit.join(", ")}`);
  return whole;
}

/** Writes the script, its manifest, and the page that says how to put them into a sheet, into a folder of its own. */
export async function buildGoogleSheets(folder: string): Promise<void> {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, sheetsScript), await sheetFunctions());
  writeFileSync(join(folder, manifestName), `${JSON.stringify(manifest, null, 2)}\n`);
  const files = `<p>Beside this page: <a href="${sheetsScript}">${sheetsScript}</a>, <a href="${manifestName}">${manifestName}</a>.</p>`;
  const guide = marked.parse(text("docs/google-sheets.md"), { async: false });
  writeFileSync(
    join(folder, "index.html"),
    htmlDocument(
      "The functions in Google Sheets",
      guide.replace("</h1>", () => `</h1>\n${files}`),
      "page.css",
    ),
  );
  cpSync(join(project, "src/generate/page.css"), join(folder, "page.css"));
}
