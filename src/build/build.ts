/**
 * `npm run build` writes dist/google-sheets/, and with `-- --origin https://example.org/tea` dist/site/ as well, which any
 * static host can serve.
 */
import { join, resolve } from "node:path";
import { buildAddIn } from "./add-in";
import { phoneFolder, sheetsFolder, siteFolder } from "./folders";
import { buildGoogleSheets } from "./google-sheets";
import { originFrom } from "./origin";
import { buildPhonePage } from "./phone-page-build";
import { buildPage } from "./workbook-page-build";

async function build(): Promise<void> {
  // Nothing is written for an address that will not do.
  const args = process.argv.slice(2);
  const origin = args.length === 0 ? undefined : originFrom(args);
  await buildGoogleSheets(sheetsFolder(resolve()));
  console.log("Wrote dist/google-sheets/. How to put it into a sheet: docs/google-sheets.md, or index.html in there.");
  if (origin === undefined) {
    console.log(
      "dist/site/ is left as it is, for it needs to know where it will be served from:\nnpm run build -- --origin https://example.org/tea",
    );
    return;
  }
  const folder = siteFolder(resolve());
  await buildAddIn({ origin, folder });
  await buildPage(join(folder, "workbook"));
  await buildPhonePage(join(folder, phoneFolder));
  console.log(
    `Wrote dist/site/. Put its contents at ${origin}/ and load ${origin}/manifest.xml into Excel.\nThe workbook page for those without Excel is then at ${origin}/workbook/,\nand the page for a phone beside the pan at ${origin}/phone/`,
  );
}

build().catch((problem: unknown) => {
  console.error(problem instanceof Error ? problem.message : problem);
  process.exitCode = 1;
});
