/** npm run samples: builds the files of sample-workbooks/ anew. */
import { statSync } from "node:fs";
import { join } from "node:path";
import { sampleBooks } from "./sample-books";
import { writeSamples } from "./write-samples";

const folder = join(__dirname, "../../sample-workbooks");

async function buildSamples(): Promise<void> {
  for (const name of await writeSamples(folder, sampleBooks)) {
    console.log(`sample-workbooks/${name}: ${statSync(join(folder, name)).size} bytes`);
  }
}

buildSamples().catch((problem) => {
  console.error(problem);
  process.exitCode = 1;
});
