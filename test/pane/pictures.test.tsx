import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, test } from "vitest";
import { bindInPhrases } from "../../src/cells/bind";
import { chargePlan } from "../../src/core/charges/charge-plan";
import { packCheck } from "../../src/core/packing/pack-check";
import { seasonTable } from "../../src/core/season/season-table";
import { dryingSteps } from "../../src/core/targets/drying-steps";
import { lossMeanings } from "../../src/core/targets/loss-meanings";
import { dayPlan } from "../../src/core/time/day-plan";
import { dryingTime } from "../../src/core/time/drying-time";
import { turnTimes } from "../../src/core/time/turn-times";
import { AnswerPicture } from "../../src/pane/pictures/answer-picture";
import { ChargesPicture } from "../../src/pane/pictures/charges-picture";
import { LotPicture } from "../../src/pane/pictures/lot-picture";
import { OutturnPicture } from "../../src/pane/pictures/outturn-picture";
import { MessagesContext } from "../../src/pane/use-messages";
import { messagesIn } from "../../src/words/in-every-language/messages";

const words = { en: await messagesIn.en(), zh: await messagesIn.zh() };

const markupOf = (picture: React.ReactNode, language: "en" | "zh" = "en"): string =>
  renderToStaticMarkup(<MessagesContext.Provider value={words[language]}>{picture}</MessagesContext.Provider>);

const alternativeOf = (markup: string): string | undefined => /role="img" aria-label="([^"]*)"/.exec(markup)?.[1];

/** The cells of the table, row by row. */
const tableOf = (markup: string): string[][] =>
  [...markup.matchAll(/<tr>(.*?)<\/tr>/g)].map(([, row]) =>
    [...(row as string).matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/g)].map(([, cell]) => cell as string),
  );

const calledAsGiven = (spec: Parameters<typeof bindInPhrases>[0], given: readonly unknown[]) => (
  <AnswerPicture spec={spec} given={given} rows={bindInPhrases(spec)(...given)} unit="g" />
);

describe("the pictures of the clock and the tin", () => {
  const at = (hours: number, minutes = 0): number => (hours * 60 + minutes) / 1440;
  const day = [at(9, 15), 6, [[at(0, 22)], [at(0, 18)], [at(0, 15)]], [[at(2, 30)], [at(1, 45)], [null]], 2] as const;
  const list = (values: readonly (number | null)[]) => values.map((value) => [value]);

  test("show the day by pans, its breaks and what overruns, in words and as a table", () => {
    const markup = markupOf(calledAsGiven(dayPlan, [...day, at(12, 45), at(13, 30), false]));
    expect(alternativeOf(markup)).toBe(
      "18 firings in 2 pans, 09:15–16:06. 4 rests run over. Break from 12:45 to 13:30.",
    );
    expect(tableOf(markup).slice(0, 2)).toEqual([
      ["Charge", "Pan", "Start", "End", "Flag"],
      ["1", "1", "09:15", "09:37", ""],
    ]);
    expect(tableOf(markup).filter((row) => row[4] === "overruns").length).toBe(4);
    expect(alternativeOf(markupOf(calledAsGiven(dayPlan, [...day, null, null, false])))).not.toContain("Break");
  });

  test("show a break of every night that the day reaches into", () => {
    const given = [at(20), 1, [[at(1)], [at(1)]], at(30), 1, at(22), at(6), false];
    expect(alternativeOf(markupOf(calledAsGiven(dayPlan, given)))?.match(/Break/g)?.length).toBe(2);
  });

  test("show a drying with its readings, its target and the range", () => {
    const minutes = (values: readonly number[]) => list(values.map((minute) => at(9, minute)));
    const given = [minutes([0, 20, 40, 60, 80, 100]), list([420, 381.5, 351, 327.5, 309.5, null]), 265.3, 258.5];
    const markup = markupOf(calledAsGiven(dryingTime, given));
    expect(alternativeOf(markup)).toBe(
      "5 readings, 420 g → 309.5 g; the target is 265.3 g. It comes between 11:09 and 13:04. Likely at 12:31.",
    );
    expect(tableOf(markup).length).toBe(1 + 5 + 3);
    expect(alternativeOf(markupOf(calledAsGiven(dryingTime, [...given.slice(0, 3), null])))).not.toContain("between");
  });

  test("show fills against what the tins state, and name those that are short", () => {
    const markup = markupOf(calledAsGiven(packCheck, [list([50.1, 49.8, 45.2]), 50, 4.5]));
    expect(alternativeOf(markup)).toBe(
      "3 packages, 45.2 g–50.1 g; they state 50 g. 1 below 45.5 g, short by more than the tolerance.",
    );
    expect(tableOf(markup).at(-1)).toEqual(["3", "45.2 g", "short"]);
    expect(alternativeOf(markupOf(calledAsGiven(packCheck, [list([50.1, 45.5]), 50, 4.5])))).not.toContain("below");
  });

  test("speak Chinese", () => {
    const markup = markupOf(calledAsGiven(dayPlan, [...day, at(12, 45), at(13, 30), false]), "zh");
    expect(alternativeOf(markup)).toBe("2 口锅共炒 18 次，09:15–16:06。4 次静置超时。12:45 到 13:30 休息。");
  });
});

describe("the pictures", () => {
  test("a lot by stages has a text alternative and a table of dry matter and water", () => {
    const stages = [
      { name: "fresh", weight: 320, moisture: 0.75 },
      { name: "fired", weight: 200, moisture: 0.6 },
    ];
    const markup = markupOf(<LotPicture stages={stages} unit="g" />);
    expect(alternativeOf(markup)).toBe(
      "Bars of dry matter and water. fresh: 320 g, 80 g of it dry matter; fired: 200 g, 80 g of it dry matter.",
    );
    expect(tableOf(markup)).toEqual([
      ["Stage", "Weight", "Dry matter", "Water"],
      ["fresh", "320 g", "80 g", "240 g"],
      ["fired", "200 g", "80 g", "120 g"],
    ]);
  });

  test("charges say which of them pass the limit, in words", () => {
    const charges = [
      { name: "1", load: 301 },
      { name: "2", load: 300 },
    ];
    const over = markupOf(<ChargesPicture charges={charges} limit={300} unit="g" />);
    expect(alternativeOf(over)).toBe("2 charges; the heaviest is 301 g. 1 above the limit of 300 g.");
    expect(tableOf(over).slice(1)).toEqual([
      ["1", "301 g", "300 g", "above the limit"],
      ["2", "300 g", "300 g", ""],
    ]);
    expect(alternativeOf(markupOf(<ChargesPicture charges={charges} limit={310} unit="g" />))).toContain("None passes");
    expect(alternativeOf(markupOf(<ChargesPicture charges={charges} unit="g" />))).toBe(
      "2 charges; the heaviest is 301 g.",
    );
  });

  test("outturns name the flagged lots", () => {
    const lots = [
      { name: "A", outturn: 0.215, flag: "" },
      { name: "B", outturn: 1 / 6, flag: "low" },
    ] as const;
    const markup = markupOf(<OutturnPicture lots={lots} areCompared />);
    expect(alternativeOf(markup)).toBe("Outturn of 2 lots, from 16.7 % to 21.5 %. Flagged: B (low).");
    expect(tableOf(markup)[2]).toEqual(["B", "16.7 %", "low"]);
    expect(alternativeOf(markupOf(<OutturnPicture lots={lots.slice(0, 1)} areCompared />))).toContain(
      "None is flagged.",
    );
  });

  test("speak Chinese", () => {
    const markup = markupOf(<LotPicture stages={[{ name: "鲜叶", weight: 320, moisture: 0.75 }]} unit="克" />, "zh");
    expect(tableOf(markup)[0]).toEqual(["阶段", "重量", "干物质", "水分"]);
  });

  test("show names from the sheet as text", () => {
    const hostile = '<script>alert(1)</script><img src="x">';
    for (const markup of [
      markupOf(<LotPicture stages={[{ name: hostile, weight: 1, moisture: 0.5 }]} unit={hostile} />),
      markupOf(<ChargesPicture charges={[{ name: hostile, load: 1 }]} limit={1} unit={hostile} />),
      markupOf(<OutturnPicture lots={[{ name: hostile, outturn: 0.2, flag: "high" }]} areCompared />),
    ]) {
      expect(markup).not.toMatch(/<script|<img/);
      expect(markup).toContain("&lt;script&gt;");
    }
  });

  test("show nothing of nothing", () => {
    expect(markupOf(<LotPicture stages={[]} unit="g" />)).toBe("");
    expect(markupOf(<ChargesPicture charges={[]} unit="g" />)).toBe("");
    expect(markupOf(<OutturnPicture lots={[]} areCompared />)).toBe("");
    expect(markupOf(<AnswerPicture spec={turnTimes} given={[]} rows={[[0.5]]} unit="g" />)).toBe("");
  });

  test("are found for the answers that have one", () => {
    const rowsOf = (markup: string) => tableOf(markup).slice(1);
    const steps = bindInPhrases(dryingSteps)(320, 0.75, [[0.6]], null, null, false);
    expect(rowsOf(markupOf(<AnswerPicture spec={dryingSteps} given={[]} rows={steps} unit="g" />))).toEqual([
      ["start", "320 g", "80 g", "240 g"],
      ["step 1", "200 g", "80 g", "120 g"],
    ]);
    const meanings = bindInPhrases(lossMeanings)(500, 0.2, 0.3, false);
    expect(rowsOf(markupOf(<AnswerPicture spec={lossMeanings} given={[]} rows={meanings} unit="g" />))).toEqual([
      ["water", "470 g", "400 g", "70 g"],
    ]);
    const plan = bindInPhrases(chargePlan)(601, 0.75, 320, 0.6, null, null, 1, false);
    expect(rowsOf(markupOf(<AnswerPicture spec={chargePlan} given={[]} rows={plan} limit={320} unit="g" />))).toEqual([
      ["1", "301 g", "320 g"],
      ["2", "300 g", "320 g"],
    ]);
  });

  test("of a season are of its lots, flagged from five finished ones on", () => {
    const pictureOf = (plots: string[], fresh: number[], finished: (number | null)[]) => {
      const given = [plots, fresh, finished].map((list) => list.map((cell) => [cell]));
      const rows = bindInPhrases(seasonTable)(...given, null, null, false);
      return markupOf(<AnswerPicture spec={seasonTable} given={[...given, null, null, false]} rows={rows} unit="g" />);
    };
    const few = pictureOf(["hill", "wall", "hill"], [1000, 500, 800], [220, 100, null]);
    expect(tableOf(few)).toEqual([
      ["Lot", "Outturn"],
      ["1 hill", "22 %"],
      ["2 wall", "20 %"],
    ]);
    expect(alternativeOf(few)).toContain("from five finished lots on");

    const plots = ["hill", "wall", "hill", "wall", "hill", "wall"];
    const many = pictureOf(plots, [1200, 880, 1000, 600, 1500, 900], [258, 187, 216, 126, 318, 150]);
    expect(tableOf(many)[0]).toEqual(["Lot", "Outturn", "Flag"]);
    expect(tableOf(many).at(-1)).toEqual(["6 wall", "16.7 %", "low"]);
    expect(alternativeOf(many)).toContain("Flagged: 6 wall (low).");
  });
});
