/** npm run samples: builds the files of sample-workbooks/ anew. */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { sampleBooks, sampleFile, withoutAddIn, withoutNeedOfAddIn } from "./sample-books";

const folder = join(__dirname, "../../sample-workbooks");

function write(name: string, bytes: Uint8Array): void {
  mkdirSync(dirname(join(folder, name)), { recursive: true });
  writeFileSync(join(folder, name), bytes);
  console.log(`sample-workbooks/${name}: ${bytes.length} bytes`);
}

async function buildSamples(): Promise<void> {
  for (const [name, build] of Object.entries(sampleBooks)) {
    const bytes = await sampleFile(build);
    write(name, bytes);
    const named = withoutNeedOfAddIn(bytes);
    if (named !== undefined) write(`${withoutAddIn}/${name}`, named);
  }
}

buildSamples().catch((problem) => {
  console.error(problem);
  process.exitCode = 1;
});
