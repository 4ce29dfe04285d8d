import { cpSync, existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { marked } from "marked";
import { catalogue } from "../core/catalogue";
import { asHtml, htmlDocument } from "../generate/blocks";
import { checksPage } from "../generate/checks-page";
import { writeSamples } from "../sample-books/write-samples";
import { languageIds, languages } from "../words/languages";
import type { Workbook } from "../workbook/workbook";

const functionsStyle = "functions/page.css";

/** Texts of the repository that are served as pages. */
const guides = [
  { file: "guide.md", title: "From picking to packing" },
  { file: "sheet-check.md", title: "What the sheet check finds" },
  { file: "without-the-add-in.md", title: "Without the add-in" },
  { file: "named-formulas.md", title: "The functions as named formulas" },
  { file: "excel-check.md", title: "Checking the functions in a real Excel" },
  { file: "changelog.md", title: "Changelog" },
  { file: "dependencies.md", title: "What it stands on" },
];

/** The guide in the other languages, by the title that each begins with. */
const translatedGuides = (project: string) =>
  languageIds.slice(1).flatMap((id) => {
    const file = `guide.${id}.md`;
    const path = join(project, "docs", file);
    if (!existsSync(path)) return [];
    const title = /^# (.+)$/m.exec(readFileSync(path, "utf8"))?.[1] ?? "";
    return [{ file, title, language: languages[id].inEnglish }];
  });

/**
 * Adds to a build what makes it a site: a first page, the guides, what the numbers are checked against, the samples. Of
 * the guides, dependencies.md is generated; a release has made sure by then that it is not stale.
 */
export async function writeSite(
  folder: string,
  project: string,
  version: string,
  samples: Readonly<Record<string, () => Workbook>>,
): Promise<void> {
  const docs = join(folder, "docs");
  mkdirSync(docs, { recursive: true });
  writeFileSync(join(docs, "checks.html"), asHtml(checksPage(catalogue), functionsStyle));
  const translated = translatedGuides(project);
  for (const { file, title } of [...guides, ...translated]) {
    const text = readFileSync(join(project, "docs", file), "utf8");
    writeFileSync(
      join(docs, file.replace(/md$/, "html")),
      htmlDocument(title, marked.parse(linkedInSite(text), { async: false }), functionsStyle),
    );
  }
  cpSync(join(project, "docs", "guide"), join(docs, "guide"), { recursive: true });
  const written = await writeSamples(join(folder, "sample-workbooks"), samples);
  writeFileSync(join(folder, "index.html"), firstPage(version, written, translated));
}

/** Texts name each other as files; in the site they are pages. */
const linkedInSite = (text: string): string => text.replace(/\]\(([\w./-]+)\.md\)/g, "]($1.html)");

const firstPage = (
  version: string,
  samples: readonly string[],
  translated: ReturnType<typeof translatedGuides>,
): string => {
  const link = (address: string, text: string, after = ""): string =>
    `<li><a href="${address}">${text}</a>${after}</li>`;
  return htmlDocument(
    "Tea Mass Balance",
    `<h1>Tea Mass Balance</h1>
<p>Worksheet functions for people who make tea by hand in small lots. Version ${version}.</p>
<ul>
${[
  link("workbook/index.html", "The workbook page", ", for those without Excel"),
  link("phone/index.html", "The phone page", ", for the guided jobs beside the pan"),
  link("manifest.xml", "manifest.xml", ": the add-in for Excel"),
  link("google-sheets/index.html", "The functions in Google Sheets", ", by copying one script"),
  ...samples.map((sample) => link(`sample-workbooks/${sample}`, sample, ": a sample of an invented farm")),
  link("docs/guide.html", "From picking to packing", ": a guide in pictures"),
  ...translated.map(({ file, title, language }) =>
    link(`docs/${file.replace(/md$/, "html")}`, title, `: the same in ${language}`),
  ),
  link("docs/functions/index.html", "Every function", " with its arguments, examples and checks"),
  link("docs/checks.html", "What the numbers are checked against"),
  link("docs/how-sure.html", "How sure the functions are"),
  link("docs/excel-check.html", "Checking an installation in Excel"),
  link("docs/changelog.html", "What changed"),
  link("docs/dependencies.html", "What it stands on"),
  link("LICENSE", "Licence"),
  link("third-party-licences.txt", "Licences of others' parts"),
  link("sbom.cdx.json", "Bill of materials"),
].join("\n")}
</ul>
<p>The functions calculate from the weights and moistures that are typed. They never say that a lot is safe to drink or fit for sale; local codes and licensed practice come first.</p>`,
    "docs/functions/page.css",
  );
};
