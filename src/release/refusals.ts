import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { catalogue } from "../core/catalogue";
import type { Correction } from "../generate/corrections";
import { staleFiles } from "../generate/generate";
import { messagesIn } from "../words/in-every-language/messages";
import { type Language, languageIds, languages } from "../words/languages";
import { untranslated } from "../words/untranslated";
import { correctionsSince, type Release, reasonsAgainst } from "./last-release";

/** What speaks against a release before anything is built: what is wrong, with a line for each case. */
export const refusals = async (
  project: string,
  next: Release,
  last: Release | undefined,
): Promise<[string, readonly string[]][]> => [
  ["Workbooks that were saved with the last release would break", reasonsAgainst(next, last)],
  ["The changelog", changelogProblems(readFileSync(join(project, "docs", "changelog.md"), "utf8"), next.version)],
  ["The changelog lists no", unlisted(readFileSync(join(project, "docs", "changelog.md"), "utf8"), last)],
  ...(await Promise.all(others.map(lacking))),
  ["Stale, run npm run generate", staleFiles(project)],
  ["The types do not fit", typeProblems(project)],
];

const [, ...others] = languageIds;

const lacking = async (language: Language): Promise<[string, readonly string[]]> => [
  `The pane has no ${languages[language].inEnglish} for`,
  untranslated(catalogue, await messagesIn[language]()),
];

export const changelogProblems = (text: string, version: string): string[] =>
  text.split(/\r?\n/).includes(`## ${version}`) ? [] : [`has no part for ${version}`];

/** Corrections that no line of the changelog names, with what was and what is. */
const unlisted = (text: string, last: Release | undefined): string[] =>
  last === undefined ? [] : unlistedCorrections(text, correctionsSince(last));

export const unlistedCorrections = (text: string, made: readonly Correction[]): string[] =>
  made
    .map(({ id, parameter = "", before, after }) => [id, parameter, `${before}`, `${after}`])
    .filter((parts) => !text.split(/\r?\n/).some((line) => parts.every((part) => line.includes(part))))
    .map(([id, parameter, before, after]) => `correction of ${id}: ${parameter} from ${before} to ${after}`);

/** What the type check of every room says: the bundler reads the sources without it. */
function typeProblems(project: string): string[] {
  const compiler = join(project, "test", "node_modules", "native-typescript", "bin", "tsc");
  try {
    execFileSync(process.execPath, [compiler, "--build", "--pretty", "false"], { cwd: project, encoding: "utf8" });
    return [];
  } catch (problem) {
    const { stdout, message } = problem as { stdout?: string; message: string };
    return (stdout?.trim() || message).split("\n");
  }
}
