import { BaseSequencer, type TestSpecification } from "vitest/node";

/** The longest files, in the order in which they are begun: so that none is left alone at the end. */
const longest = [
  "browser/embedded-host",
  "browser/workbook-page",
  "browser/pane-access",
  "browser/typing",
  "browser/sort-table",
  "sample-books/season",
  "browser/charts-page",
  "release/proof",
];

/** What drives a browser waits much of its time: it comes first, while there is other work to do beside it. */
export class BrowsersFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId, project }: TestSpecification): number => {
      const place = longest.findIndex((name) => moduleId.includes(`/${name}.test.`));
      if (place >= 0) return place;
      return longest.length + (project.name === "browser" ? 0 : 1);
    };
    const sorted = await super.sort(files);
    return sorted
      .map((file, place) => ({ file, place }))
      .sort((one, other) => rank(one.file) - rank(other.file) || one.place - other.place)
      .map(({ file }) => file);
  }
}
