/** Opens workbooks, changes a little, saves, opens again, and says what is not as it was. */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { PatchableBook } from "../xlsx/patch/patchable-book";
import { readFile } from "../xlsx/read-workbook";
import { Refusal } from "../xlsx/refusal";
import { booksAt } from "./files-in";
import { changesOf } from "./round-trip/changes";
import { differencesOfCells, differencesOfParts, differencesOfText, type Saved } from "./round-trip/differences";
import { inLibreOffice } from "./round-trip/libreoffice";

const usage = `Opens each workbook, changes a number, puts a text beside it and adds a formula, saves it, opens it again, and
compares: part by part, what stands in the text of the sheets, cell by cell. The files themselves are not touched.

  npm run round-trip -- FOLDER or FILES
  npm run round-trip -- FOLDER --keep OTHER     leaves what was saved in the folder OTHER
  npm run round-trip -- FOLDER --libreoffice    also opens both in LibreOffice and compares the values there

The exit status is 1 when something was not kept.`;

interface Outcome {
  readonly file: string;
  readonly refused?: string;
  readonly saved?: { readonly before: Uint8Array; readonly after: Uint8Array; readonly edits: number };
  readonly problems: readonly string[];
}

function roundTrip(file: string): Outcome {
  const before = readFileSync(file);
  try {
    const { workbook } = readFile(before);
    const book = new PatchableBook(before);
    const edits = changesOf(workbook, book);
    const after = book.saved(edits);
    const edited = new Map(
      [...new Set(edits.map(({ sheet }) => sheet))].map(
        (sheet) => [book.pathOf(sheet), edits.filter((edit) => edit.sheet === sheet)] as const,
      ),
    );
    const saved: Saved = { before, after, edited };
    const problems = [
      ...differencesOfParts(saved),
      ...differencesOfText(saved),
      ...differencesOfCells(workbook, readFile(after).workbook, edits),
    ];
    return { file, saved: { before, after, edits: edits.length }, problems };
  } catch (problem) {
    if (problem instanceof Refusal) return { file, refused: problem.message, problems: [] };
    return { file, problems: [problem instanceof Error ? (problem.stack ?? problem.message) : String(problem)] };
  }
}

async function main(given: readonly string[]): Promise<number> {
  const keepAt = given.indexOf("--keep");
  const folder = keepAt < 0 ? undefined : given[keepAt + 1];
  const named = given.filter((word, index) => !word.startsWith("--") && (keepAt < 0 || index !== keepAt + 1));
  const isAsked = named.length > 0 && (keepAt < 0 || folder !== undefined);
  const files = isAsked ? booksAt(named) : usage;
  if (typeof files === "string") {
    console.error(files);
    return 2;
  }
  const outcomes = files.map(roundTrip);
  if (folder !== undefined) {
    mkdirSync(folder, { recursive: true });
    for (const { file, saved } of outcomes) if (saved) writeFileSync(join(folder, basename(file)), saved.after);
  }
  const elsewhere = given.includes("--libreoffice") ? await inLibreOffice(outcomes) : new Map<string, string[]>();
  let [kept, refused, lost] = [0, 0, 0];
  for (const { file, refused: why, saved, problems } of outcomes) {
    const all = [...problems, ...(elsewhere.get(file) ?? [])];
    if (why !== undefined) console.log(`refused   ${file}: ${why}`);
    else if (all.length > 0) console.log(`NOT KEPT  ${file}: ${all.slice(0, 5).join("; ")}`);
    else console.log(`kept      ${file} (${saved?.edits ?? 0} changes)`);
    if (why !== undefined) refused += 1;
    else if (all.length > 0) lost += 1;
    else kept += 1;
  }
  console.log(`${outcomes.length} files: ${kept} kept, ${refused} refused, ${lost} not kept`);
  return lost > 0 ? 1 : 0;
}

main(process.argv.slice(2)).then((status) => {
  process.exitCode = status;
});
