/**
 * `npm run excel` builds the add-in for https://localhost:3000, serves it there and says how to load it into Excel.
 * Office.js comes from Microsoft's own address here too: its npm package takes 89 MB, and Excel on the web and a
 * signed-in Excel need the network anyway.
 */

import { cpSync } from "node:fs";
import { resolve } from "node:path";
import { namespace } from "../core/namespace";
import { buildAddIn, localOrigin } from "./add-in";
import { localCertificate } from "./certificate";
import { serveAddIn } from "./serve-add-in";
import { sideloading } from "./sideloading";

async function excel(): Promise<void> {
  const folder = resolve(".cache", "excel");
  console.log("Building what Excel loads …");
  await buildAddIn({ origin: localOrigin, folder });
  const certificate = await localCertificate(resolve(".cache", "certificate"));
  await serveAddIn(folder, certificate, Number(new URL(localOrigin).port));
  console.log(`\nServing ${localOrigin}/. Leave this window open while Excel uses the functions; Ctrl+C ends it.\n`);
  // On Windows the manifest's folder is shared, so it holds the manifest alone.
  const manifest = resolve(".cache", "sideload", "manifest.xml");
  cpSync(resolve("manifest.xml"), manifest);
  console.log(sideloading(manifest, certificate.authorityFile, process.platform));
  console.log(`Then type =${namespace}. in a cell, and check the functions with sample-workbooks/excel-check.xlsx.`);
}

excel().catch((problem: NodeJS.ErrnoException) => {
  const taken = `Another program uses port ${new URL(localOrigin).port}: end it, then try again.`;
  console.error(problem.code === "EADDRINUSE" ? taken : problem.message);
  process.exitCode = 1;
});
