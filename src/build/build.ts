/** `npm run build -- --origin https://example.org/tea` writes dist/site/, which any static host can serve. */
import { join, resolve } from "node:path";
import { buildAddIn } from "./add-in";
import { siteFolder } from "./folders";
import { originFrom } from "./origin";
import { buildPage } from "./workbook-page-build";

async function build(): Promise<void> {
  const origin = originFrom(process.argv.slice(2));
  const folder = siteFolder(resolve());
  await buildAddIn({ origin, folder });
  await buildPage(join(folder, "workbook"));
  console.log(
    `Wrote dist/site/. Put its contents at ${origin}/ and load ${origin}/manifest.xml into Excel.\nThe workbook page for those without Excel is then at ${origin}/workbook/`,
  );
}

build().catch((problem: unknown) => {
  console.error(problem instanceof Error ? problem.message : problem);
  process.exitCode = 1;
});
