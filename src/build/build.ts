/** `npm run build -- --origin https://example.org/tea` writes dist/, which any static host can serve. */
import { resolve } from "node:path";
import { buildAddIn } from "./add-in";
import { originFrom } from "./origin";

async function build(): Promise<void> {
  const origin = originFrom(process.argv.slice(2));
  await buildAddIn({ origin, folder: resolve("dist") });
  console.log(`Wrote dist/. Put its contents at ${origin}/ and load ${origin}/manifest.xml into Excel.`);
}

build().catch((problem: unknown) => {
  console.error(problem instanceof Error ? problem.message : problem);
  process.exitCode = 1;
});
