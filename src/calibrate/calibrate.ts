/**
 * `npm run calibrate`: measures how sure the functions are, keeps the counts in docs/how-sure.json, and writes
 * docs/how-sure.md, its pictures and the pages of the functions from them. `-- --only SCALEERROR` measures the studies
 * of one function again; `-- --changed` those that come out differently in the first tenth of a row, and notes of the
 * others that the code as it is now was tried.
 */
import { existsSync, writeFileSync } from "node:fs";
import { write } from "../generate/generate";
import { hashOf, type MeasuredStudy, measuredFile, measuredStudies } from "../generate/measured";
import { isTheSame, measured } from "./measure";
import { studies } from "./studies";

function only(): string | undefined {
  const at = process.argv.indexOf("--only");
  return at === -1 ? undefined : process.argv[at + 1]?.toUpperCase();
}

function measureAll(wanted: string | undefined, onlyChanged: boolean): MeasuredStudy[] {
  const before = existsSync(measuredFile) ? measuredStudies(".") : [];
  return Object.entries(studies).map(([name, study]) => {
    const file = `src/calibrate/studies/${name}.ts`;
    const kept = before.find((one) => one.file === file);
    if (wanted !== undefined && kept !== undefined && !study.functions.includes(wanted)) return kept;
    if (onlyChanged && kept !== undefined && isTheSame(study, kept)) {
      console.log(`${study.functions.join(", ")}: the same`);
      return { ...kept, hash: hashOf(".", file), says: study.says, picture: study.picture };
    }
    const start = performance.now();
    const found = measured(study, file);
    console.log(`${study.functions.join(", ")}: ${((performance.now() - start) / 1000).toFixed(1)} s`);
    return found;
  });
}

const wanted = only();
if (wanted !== undefined && !Object.values(studies).some(({ functions }) => functions.includes(wanted))) {
  console.error(`No study is about ${wanted}.`);
  process.exitCode = 1;
} else {
  writeFileSync(measuredFile, `${JSON.stringify(measureAll(wanted, process.argv.includes("--changed")), null, 1)}\n`);
  write();
}
