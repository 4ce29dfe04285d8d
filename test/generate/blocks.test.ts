import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import { signature } from "../../src/core/describe";
import { asHtml, asMarkdown, type Page } from "../../src/generate/blocks";
import { functionPages } from "../../src/generate/function-pages";
import { measuredStudies } from "../../src/generate/measured";

const page: Page = {
  name: "try",
  title: "Try <this>",
  blocks: [
    { heading: "Try", level: 1 },
    { paragraph: "a_b *c* <d> & [e]" },
    { table: ["one|two"], rows: [["3 < 4"]] },
    { links: [{ text: "other", page: "other", after: ": more" }] },
  ],
};

describe("a page", () => {
  test("keeps the signs of its text in Markdown", () => {
    expect(asMarkdown(page)).toBe(
      "# Try\n\na\\_b \\*c\\* \\<d\\> & \\[e\\]\n\n| one\\|two |\n| --- |\n| 3 \\< 4 |\n\n- [other](other.md): more\n",
    );
  });

  test("keeps the signs of its text in HTML", () => {
    const html = asHtml(page);
    expect(html).toContain("<title>Try &lt;this&gt;</title>");
    expect(html).toContain("<p>a_b *c* &lt;d&gt; &amp; [e]</p>");
    expect(html).toContain('<th scope="col">one|two</th>');
    expect(html).toContain('<li><a href="other.html">other</a>: more</li>');
  });
});

describe("the pages of the functions", () => {
  const pages = functionPages(catalogue, measuredStudies("."));

  test("are an index that links to all, and one for each function", () => {
    const index = asMarkdown(pages[0] as Page);
    expect(pages).toHaveLength(catalogue.length + 1);
    for (const { name } of pages.slice(1)) expect(index).toContain(`(${name}.md)`);
  });

  test("tell no fact of the trade that has no source", () => {
    const text = pages.map(asMarkdown).join("\n");
    expect(text).not.toContain("common practice |");
    for (const { page } of catalogue) {
      for (const check of page.checks) if (check.status === "common practice") expect(text).not.toContain(check.fact);
    }
  });

  test.each(catalogue.map((entry, index) => ({ id: entry.spec.id, entry, index })))(
    "$id: signature, sources with status, checks with tolerance, and one cell of a spill",
    ({ entry: { spec, page }, index }) => {
      const html = asHtml(pages[index + 1] as Page);
      expect(html).toContain(signature(spec));
      for (const { work } of page.sources)
        expect(html).toContain(work.status === "restated" ? "as restated" : work.status);
      for (const check of page.checks)
        if (check.status !== "common practice") expect(html).toContain(`<td>${check.status}</td>`);
      expect(html.includes("=INDEX(")).toBe(spec.result.shape !== "cell");
    },
  );
});
