import type { ReactElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, test } from "vitest";
import { catalogue } from "../../src/core/catalogue";
import { cautions, deferral } from "../../src/core/cautions";
import { formula, signature } from "../../src/core/describe";
import { englishBeing } from "../../src/core/english-refusals";
import { jobs } from "../../src/jobs/jobs";
import { CautionsPage } from "../../src/pane/cautions-page";
import { FunctionEntry } from "../../src/pane/function-entry";
import { FunctionReference } from "../../src/pane/function-reference";
import { Pane } from "../../src/pane/pane";
import { MessagesContext } from "../../src/pane/use-messages";
import { english } from "../../src/words/en/messages";

const inEnglish = (part: ReactElement): string =>
  renderToStaticMarkup(<MessagesContext.Provider value={english}>{part}</MessagesContext.Provider>);

const asText = (markup: string): string =>
  markup
    .replaceAll(/<[^>]*>/g, " ")
    .replaceAll("&quot;", '"')
    .replaceAll("&#x27;", "'")
    .replaceAll("&gt;", ">")
    .replaceAll("&lt;", "<")
    .replaceAll("&amp;", "&")
    .replaceAll(/\s+/g, " ");

describe("the pane", () => {
  test.each(catalogue.map((entry) => ({ id: entry.spec.id, entry })))("explains $id", ({ entry }) => {
    const text = asText(inEnglish(<FunctionEntry entry={entry} />));
    const { spec, page } = entry;
    for (const words of [signature(spec), page.summary, page.formula, ...page.guide])
      expect(text).toContain(words.replaceAll(/\s+/g, " "));
    for (const { name, quantity } of spec.parameters) {
      expect(text).toContain(name);
      expect(text).toContain(englishBeing(quantity.requirement));
    }
    for (const { given } of page.examples) expect(text).toContain(formula(spec, given));
    for (const caution of page.cautions) expect(text).toContain(caution.text);
    expect(text.includes(deferral)).toBe(page.cautions.length > 0);
  });

  test("opens on the jobs, and says how many functions there are", () => {
    const text = asText(renderToStaticMarkup(<Pane host={undefined} speech={{ language: "en", words: english }} />));
    for (const { id } of jobs) expect(text).toContain(english.jobs[id]?.title);
    expect(asText(inEnglish(<FunctionReference catalogue={catalogue} />))).toContain(`${catalogue.length} functions`);
  });

  test("shows every caution, and that local codes come first", () => {
    const text = asText(inEnglish(<CautionsPage />));
    for (const { title, text: words } of cautions) {
      expect(text).toContain(title);
      expect(text).toContain(words);
    }
    expect(text).toContain(deferral);
  });
});
