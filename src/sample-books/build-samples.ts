/** npm run samples: builds the files of sample-workbooks/ anew. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { sampleBooks, sampleFile, withoutAddIn, withoutNeedOfAddIn } from "./sample-books";

const folder = join(__dirname, "../../sample-workbooks");

async function buildSamples(): Promise<void> {
  mkdirSync(join(folder, withoutAddIn), { recursive: true });
  for (const [name, build] of Object.entries(sampleBooks)) {
    const bytes = await sampleFile(build);
    writeFileSync(join(folder, name), bytes);
    console.log(`sample-workbooks/${name}: ${bytes.length} bytes`);
    const named = withoutNeedOfAddIn(bytes);
    if (named === undefined) continue;
    writeFileSync(join(folder, withoutAddIn, name), named);
    console.log(`sample-workbooks/${withoutAddIn}/${name}: ${named.length} bytes`);
  }
}

buildSamples().catch((problem) => {
  console.error(problem);
  process.exitCode = 1;
});
