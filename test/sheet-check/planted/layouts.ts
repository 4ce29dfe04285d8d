/** How the invented farm Otter Bend keeps its sheets, in nineteen layouts. No weight and no lot of it is real. */
import type { SeededNumbers } from "../../../src/sample-books/season/seeded-numbers";
import { Draft, type FarmSheet, keyOf, lotBy, manyBy } from "./farm-sheet";

export type Layout = (random: SeededNumbers) => FarmSheet;

const percent = "0.0%";
const day = 'd" "mmm';
const clock = "hh:mm";
const span = "[h]:mm";
const remarks = ["rain from noon", "upper rows", "second plucking", "coarse", "sun all day", "two pickers"];

const round = (value: number, places: number): number => Number(value.toFixed(places));
const sumOver = (column: number, from: number, to: number): string =>
  `=SUM(${keyOf(from, column)}:${keyOf(to, column)})`;

/** Whole grams, moistures and functions of ours; a title above, notes beside, a total below. */
const gramBook: Layout = (random) => {
  const draft = new Draft();
  draft.line("Otter Bend, an invented farm: lots of spring");
  draft.line("weigh before airing");
  draft.row += 1;
  draft.line(
    ...["Lot", "Picked", "Fresh, g", "After airing, g", "Finished, g", "Fresh moisture", "Finished moisture"],
    ...["Outturn", "Remark"],
  );
  const first = draft.row;
  for (let lot = 1; lot <= 14; lot += 1) {
    const { fresh, aired, finished, freshMoisture, finishedMoisture } = lotBy(random);
    const name = `OB-${lot}`;
    draft.put(0, name);
    draft.put(1, 45_380 + lot, day);
    draft.place(2, "fresh", name, fresh);
    draft.place(3, "aired", name, aired);
    draft.place(4, "finished", name, finished);
    draft.place(5, "fresh moisture", name, freshMoisture, percent);
    draft.place(6, "finished moisture", name, finishedMoisture, percent);
    draft.place(7, "formula", name, `=TEA.OUTTURN(${draft.at(2)},${draft.at(4)})`, percent);
    if (random.next() < 0.3) draft.put(8, remarks[Math.floor(random.next() * remarks.length)]);
    draft.row += 1;
  }
  const total = [2, 3, 4].map((column) => sumOver(column, first, draft.row - 1));
  draft.line("Total", "", ...total);
  return draft.done("book in grams");
};

/** The unit in a second line of headings, days above their lots, subtotals, blank rows between. */
const kilogramDays: Layout = (random) => {
  const draft = new Draft();
  draft.line("Lot", "Fresh", "Finished", "Outturn", "Who");
  draft.line("", "kg", "kg", "", "");
  let lot = 0;
  for (const name of ["Monday", "Tuesday", "Wednesday"]) {
    draft.line(name);
    const first = draft.row;
    for (const _ of manyBy(4, () => 0)) {
      lot += 1;
      const { fresh, finished } = lotBy(random);
      const id = `B${lot}`;
      draft.put(0, id);
      draft.place(1, "fresh", id, round((8 * fresh) / 1000, 2));
      draft.place(2, "finished", id, round((8 * finished) / 1000, 2));
      draft.place(3, "formula", id, `=${draft.at(2)}/${draft.at(1)}`, percent);
      draft.put(4, random.next() < 0.5 ? "Ines" : "Tomo");
      draft.row += 1;
    }
    draft.line("Subtotal", sumOver(1, first, draft.row - 1), sumOver(2, first, draft.row - 1));
    draft.row += 1;
  }
  return draft.done("days in kilograms, with subtotals");
};

/** 斤 of 500 g for leaf and 两 of 50 g for tea. */
const cattyOf500: Layout = (random) => {
  const draft = new Draft();
  draft.line("水獭湾茶园（虚构）春茶记录");
  draft.line("批次", "日期", "鲜叶（斤）", "摊放后（斤）", "干茶（两）", "成茶含水率", "出茶率", "备注");
  for (let part = 0; part < 2; part += 1) {
    const first = draft.row;
    for (let row = 0; row < 5; row += 1) {
      const lot = 5 * part + row + 1;
      const { fresh, aired, finished, finishedMoisture } = lotBy(random);
      const name = `春${lot}`;
      draft.put(0, name);
      draft.put(1, 45_380 + lot, "m月d日");
      draft.place(2, "fresh", name, round((10 * fresh) / 500, 1));
      draft.place(3, "aired", name, round((10 * aired) / 500, 1));
      draft.place(4, "finished", name, round((10 * finished) / 50, 1));
      draft.place(5, "finished moisture", name, finishedMoisture, percent);
      draft.place(6, "formula", name, `=${draft.at(4)}/10/${draft.at(2)}`, percent);
      draft.put(7, random.next() < 0.3 ? "午后有雨" : undefined);
      draft.row += 1;
    }
    draft.line("小计", "", ...[2, 3, 4].map((column) => sumOver(column, first, draft.row - 1)));
  }
  return draft.done("斤 of 500 g, with subtotals");
};

/** 台斤 of 600 g for leaf, which the check takes for no unit, and grams for tea. */
const cattyOf600: Layout = (random) => {
  const draft = new Draft();
  draft.line("批號", "鲜叶重 台斤", "干茶重 克", "出茶率");
  const first = draft.row;
  for (let lot = 1; lot <= 10; lot += 1) {
    const { fresh, finished } = lotBy(random);
    const name = `W${lot}`;
    draft.put(0, name);
    draft.place(1, "fresh", name, round((10 * fresh) / 600, 2));
    draft.place(2, "finished", name, round(10 * finished, 0));
    draft.place(3, "formula", name, `=${draft.at(2)}/(${draft.at(1)}*600)`, percent);
    draft.row += 1;
  }
  draft.line("合计", sumOver(1, first, draft.row - 1), sumOver(2, first, draft.row - 1));
  return draft.done("台斤 of 600 g beside grams");
};

/** One lot with its labels at the left, losses, and how sure the readings are. */
const lotForm: Layout = (random) => {
  const draft = new Draft();
  const { fresh, aired, finished, freshMoisture, finishedMoisture } = lotBy(random, 0.1);
  const lot = "the lot";
  const line = (label: string, put: () => void, unit = "") => {
    draft.put(0, label);
    put();
    draft.put(2, unit);
    draft.row += 1;
  };
  draft.line("One lot of Otter Bend, an invented farm");
  draft.row += 1;
  line("Scale step", () => draft.put(1, 0.1), "g");
  line("Fresh weight", () => draft.place(1, "fresh", lot, fresh, "0.0"), "g");
  line("After airing", () => draft.place(1, "aired", lot, aired, "0.0"), "g");
  line("Finished weight", () => draft.place(1, "finished", lot, finished, "0.0"), "g");
  line("Fresh moisture", () => draft.place(1, "fresh moisture", lot, freshMoisture, percent));
  line("Finished moisture", () => draft.place(1, "finished moisture", lot, finishedMoisture, percent));
  draft.row += 1;
  draft.line("Dry matter that gets lost");
  line("Usual loss", () => draft.place(1, "usual loss", lot, 0.03, percent));
  line("Least loss", () => draft.put(1, 0.01, percent));
  line("Largest loss", () => draft.place(1, "largest loss", lot, 0.06, percent));
  draft.row += 1;
  draft.line("How sure the readings are");
  line("Fresh moisture", () => draft.put(1, 0.01, percent));
  line("Finished moisture", () => draft.put(1, 0.003, percent));
  line("Weights", () => draft.put(1, 0.2), "g");
  draft.row += 1;
  line("Dry matter in", () => draft.put(1, "=TEA.DRYMATTER(B4,B7)", "0.0"), "g");
  line("Outturn", () => draft.put(1, "=TEA.OUTTURN(B4,B6)", percent));
  line("Expected", () => draft.put(1, "=TEA.FINISHEDWEIGHT(B4,B7,B8,B11)", "0.0"), "g");
  line("Verdict", () => draft.put(1, "=INDEX(TEA.FINISHEDCHECK(B4,B7,B6,B8),1,1)"));
  return draft.done("form of one lot");
};

/** Stages of two lots below each other, each from leaf to tea. */
const stageTables: Layout = (random) => {
  const draft = new Draft();
  for (const lot of ["first lot", "second lot"]) {
    const { fresh, aired, finished, freshMoisture, finishedMoisture } = lotBy(random);
    const dry = fresh * (1 - freshMoisture);
    const stages = [
      ["fresh", fresh, freshMoisture],
      ["aired", aired, 1 - (0.998 * dry) / aired],
      ["panned", 0.62 * aired, 1 - (0.992 * dry) / (0.62 * aired)],
      ["rolled", 0.58 * aired, 1 - (0.985 * dry) / (0.58 * aired)],
      ["dried", finished, finishedMoisture],
    ] as const;
    draft.line("stage", "weight g", "moisture", "dry g");
    for (const [stage, weight, moisture] of stages) {
      draft.put(0, stage);
      draft.place(1, "stage weight", lot, Math.round(weight));
      draft.place(2, "stage moisture", lot, round(moisture, 3), percent);
      draft.place(3, "formula", lot, `=${draft.at(1)}*(1-${draft.at(2)})`, "0.0");
      draft.row += 1;
    }
    draft.row += 1;
  }
  return draft.done("stages of two lots");
};

/** A pan's plan: targets round by round, and a wrap with its turns. */
const firingPlan: Layout = (random) => {
  const draft = new Draft();
  const { fresh, freshMoisture } = lotBy(random);
  draft.line("Plan of a pan, Otter Bend (invented)");
  draft.row += 1;
  draft.put(0, "Leaf in the pan, g");
  draft.put(1, Math.round(fresh / 4));
  draft.row += 1;
  draft.put(0, "Its moisture");
  draft.put(1, freshMoisture, percent);
  draft.row += 2;
  draft.line("Round", "Target moisture", "Scale should read, g");
  const targets = [0.6, 0.45, 0.25, 0.055].map((target) => round(target * (0.96 + 0.08 * random.next()), 3));
  for (const [index, target] of targets.entries()) {
    draft.put(0, `round ${index + 1}`);
    draft.place(1, "target", `round ${index + 1}`, target, percent);
    draft.place(2, "formula", `round ${index + 1}`, `=TEA.TARGETWEIGHT(B$3,B$4,${draft.at(1)})`, "0.0");
    draft.row += 1;
  }
  draft.row += 1;
  draft.line("Steps", "=TEA.DRYINGSTEPS(B3,B4,B7:B10)");
  draft.row += 7;
  draft.put(0, "Wrapped at");
  draft.put(1, round(14.25 / 24, 6), clock);
  draft.row += 1;
  draft.put(0, "Stays wrapped");
  draft.place(1, "span", "wrap", round((3 + 2 * random.next()) / 24, 6), span);
  draft.row += 1;
  draft.put(0, "Turned every");
  draft.put(1, round(35 / 1440, 6), span);
  draft.row += 1;
  draft.line("Turn at", "=TEA.TURNTIMES(B20,B21,B22)");
  return draft.done("plan of a pan");
};

/** Two books beside each other, one for each pan. */
const twoBooks: Layout = (random) => {
  const draft = new Draft();
  draft.line("North slope", "", "", "", "", "South slope");
  draft.line(...["Lot", "Fresh, g", "Finished, g", "Outturn", "", "Lot", "Fresh, g", "Finished, g", "Outturn"]);
  for (let row = 1; row <= 9; row += 1) {
    for (const [left, slope] of [
      [0, "N"],
      [5, "S"],
    ] as const) {
      const { fresh, finished } = lotBy(random, 0.5);
      const lot = `${slope}${row}`;
      draft.put(left, lot);
      draft.place(left + 1, "fresh", lot, fresh);
      draft.place(left + 2, "finished", lot, finished);
      draft.place(left + 3, "formula", lot, `=TEA.OUTTURN(${draft.at(left + 1)},${draft.at(left + 2)})`, percent);
    }
    draft.row += 1;
  }
  return draft.done("two books beside each other");
};

/** Units only in the formats of the numbers. */
const unitsInFormats: Layout = (random) => {
  const draft = new Draft();
  draft.line("Batch", "Plucked leaf, fresh", "Made tea", "Moisture of the made tea", "Made from leaf");
  for (let lot = 1; lot <= 12; lot += 1) {
    const { fresh, finished, finishedMoisture } = lotBy(random);
    const name = `No ${lot}`;
    draft.put(0, name);
    draft.place(1, "fresh", name, round(fresh / 100, 2), '0.00" kg"');
    draft.place(2, "finished", name, 10 * finished, '0" g"');
    draft.place(3, "finished moisture", name, finishedMoisture, percent);
    draft.place(4, "formula", name, `=${draft.at(2)}/1000/${draft.at(1)}`, percent);
    draft.row += 1;
  }
  return draft.done("units in number formats");
};

/** Times beside weights. */
const wrapDiary: Layout = (random) => {
  const draft = new Draft();
  draft.line("Lot", "Fresh, g", "Wrapped at", "Wrapped for", "Finished, g", "Moisture finished");
  for (let lot = 1; lot <= 10; lot += 1) {
    const { fresh, finished, finishedMoisture } = lotBy(random);
    const name = `D${lot}`;
    draft.put(0, name);
    draft.place(1, "fresh", name, fresh);
    draft.put(2, round((18 + random.next()) / 24, 4), clock);
    draft.place(3, "span", name, round((8 + 3 * random.next()) / 24, 6), span);
    draft.place(4, "finished", name, finished);
    draft.place(5, "finished moisture", name, finishedMoisture, percent);
    draft.row += 1;
  }
  return draft.done("diary with times");
};

/** Labels at the left and a column for each lot. */
const lotsInColumns: Layout = (random) => {
  const draft = new Draft();
  const lots = manyBy(8, () => lotBy(random));
  const names = lots.map((_, index) => `C${index + 1}`);
  draft.line("Lot", ...names);
  const line = (label: string, each: (lot: (typeof lots)[number], column: number, name: string) => void) => {
    draft.put(0, label);
    for (const [index, lot] of lots.entries()) each(lot, index + 1, names[index] ?? "");
    draft.row += 1;
  };
  line("Fresh, g", ({ fresh }, column, name) => draft.place(column, "fresh", name, fresh));
  line("After airing, g", ({ aired }, column, name) => draft.place(column, "aired", name, aired));
  line("Finished, g", ({ finished }, column, name) => draft.place(column, "finished", name, finished));
  line("Fresh moisture", (lot, column, name) =>
    draft.place(column, "fresh moisture", name, lot.freshMoisture, percent),
  );
  line("Finished moisture", (lot, column, name) =>
    draft.place(column, "finished moisture", name, lot.finishedMoisture, percent),
  );
  line("Outturn", (_, column, name) =>
    draft.place(column, "formula", name, `=${keyOf(3, column)}/${keyOf(1, column)}`, percent),
  );
  return draft.done("a column for each lot");
};

/** Sixty lots, the headings again on each page, weeks parted by blank rows, two lots still in the making. */
const longBook: Layout = (random) => {
  const draft = new Draft();
  for (let lot = 1; lot <= 60; lot += 1) {
    if (lot % 20 === 1) draft.line("Lot no.", "Plot", "Fresh g", "Finished g", "Outturn", "Note");
    const { fresh, finished } = lotBy(random, 0.5);
    const name = `24-${String(lot).padStart(2, "0")}`;
    draft.put(0, name);
    draft.put(1, ["Weir", "Orchard", "Long field"][lot % 3]);
    draft.place(2, "fresh", name, fresh);
    if (lot <= 58) draft.place(3, "finished", name, finished);
    draft.place(4, "formula", name, `=TEA.OUTTURN(${draft.at(2)},${draft.at(3)})`, percent);
    if (random.next() < 0.2) draft.put(5, remarks[Math.floor(random.next() * remarks.length)]);
    draft.row += lot % 7 === 0 ? 2 : 1;
  }
  return draft.done("sixty lots on pages");
};

/** What a season brought, week by week: no lots, formulas across. */
const weeksWithMoney: Layout = (random) => {
  const draft = new Draft();
  draft.line("Week", "Green leaf, kg", "Made tea, kg", "Price per kg", "Earned", "Pickers", "Per picker");
  const first = draft.row;
  for (let week = 14; week <= 23; week += 1) {
    const { fresh, finished } = lotBy(random);
    const name = `week ${week}`;
    draft.put(0, name);
    draft.place(1, "fresh", name, round(fresh / 10, 1));
    draft.place(2, "finished", name, round(finished / 10, 1));
    draft.put(3, 40 + Math.round(20 * random.next()));
    draft.place(4, "formula", name, `=${draft.at(2)}*${draft.at(3)}`);
    draft.put(5, 3 + Math.floor(5 * random.next()));
    draft.place(6, "formula", name, `=${draft.at(4)}/${draft.at(5)}`, "0.0");
    draft.row += 1;
  }
  draft.line(
    "Season",
    sumOver(1, first, draft.row - 1),
    sumOver(2, first, draft.row - 1),
    "",
    sumOver(4, first, draft.row - 1),
  );
  return draft.done("weeks with money");
};

/** Samples dried in an oven: dishes, weights and both bases. */
const ovenSheet: Layout = (random) => {
  const draft = new Draft();
  draft.line("Otter Bend (invented), oven at 103 °C");
  draft.line("Sample", "Dish, g", "Dish and leaf, g", "After the oven, g", "Moisture", "Dry basis", "Meter, dry basis");
  for (let sample = 1; sample <= 8; sample += 1) {
    const { freshMoisture } = lotBy(random);
    const dish = round(28 + 4 * random.next(), 3);
    const leaf = round(8 + 3 * random.next(), 3);
    const name = `sample ${sample}`;
    draft.put(0, name);
    draft.put(1, dish);
    draft.put(2, round(dish + leaf, 3));
    draft.put(3, round(dish + leaf * (1 - freshMoisture), 3));
    draft.place(4, "formula", name, `=TEA.OVENMOISTURE(${draft.at(2)},${draft.at(3)},${draft.at(1)})`, percent);
    draft.place(5, "formula", name, `=TEA.DRYBASIS(${draft.at(4)})`, "0.00");
    const shown = freshMoisture / (1 - freshMoisture) + 0.05 * random.scatter();
    draft.place(6, "dry basis", name, round(shown, 2), "0.00");
    draft.row += 1;
  }
  return draft.done("samples from the oven");
};

/** Moistures as plain numbers of percent, which the headings say. */
const percentNumbers: Layout = (random) => {
  const draft = new Draft();
  draft.line("Lot", "Fresh, g", "Fresh moisture, %", "Finished, g", "Finished moisture, %", "Remark");
  for (let lot = 1; lot <= 11; lot += 1) {
    const { fresh, finished, freshMoisture, finishedMoisture } = lotBy(random);
    const name = `P${lot}`;
    draft.put(0, name);
    draft.place(1, "fresh", name, fresh);
    draft.put(2, round(100 * freshMoisture, 1));
    draft.place(3, "finished", name, finished);
    draft.put(4, round(100 * finishedMoisture, 1));
    draft.put(5, random.next() < 0.2 ? "n/a" : undefined);
    draft.row += 1;
  }
  return draft.done("moistures as numbers of percent");
};

/** A form in Chinese, with units in a column of their own. */
const chineseForm: Layout = (random) => {
  const draft = new Draft();
  const { fresh, aired, finished, freshMoisture, finishedMoisture } = lotBy(random, 0.1);
  const lot = "本批";
  draft.line("水獭湾茶园（虚构） 单批记录");
  draft.row += 1;
  const line = (label: string, put: () => void, unit = "") => {
    draft.put(0, label);
    put();
    draft.put(2, unit);
    draft.row += 1;
  };
  line("采摘日期", () => draft.put(1, 45_391, "m月d日"));
  line("鲜叶重", () => draft.place(1, "fresh", lot, fresh, "0.0"), "克");
  line("摊放后重", () => draft.place(1, "aired", lot, aired, "0.0"), "克");
  line("干茶重", () => draft.place(1, "finished", lot, finished, "0.0"), "克");
  line("鲜叶含水率", () => draft.place(1, "fresh moisture", lot, freshMoisture, percent));
  line("成茶含水率", () => draft.place(1, "finished moisture", lot, finishedMoisture, percent));
  draft.row += 1;
  draft.line("读数误差");
  line("鲜叶含水率", () => draft.put(1, 0.01, percent));
  line("成茶含水率", () => draft.put(1, 0.003, percent));
  draft.row += 1;
  line("通常损失", () => draft.place(1, "usual loss", lot, 0.025, percent));
  line("最大损失", () => draft.place(1, "largest loss", lot, 0.06, percent));
  line("出茶率", () => draft.put(1, "=B6/B4", percent));
  return draft.done("form of one lot in Chinese");
};

/** Days across, with a total and a mean at the end of each row. */
const daysAcross: Layout = (random) => {
  const draft = new Draft();
  const days = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
  const lots = days.map(() => lotBy(random));
  draft.line("Otter Bend (invented), week 17");
  draft.line("Day", ...days, "Week", "Mean");
  const line = (
    label: string,
    weigh: (lot: (typeof lots)[number]) => number,
    holds: "fresh" | "aired" | "finished",
  ) => {
    draft.put(0, label);
    for (const [index, lot] of lots.entries()) draft.place(index + 1, holds, days[index] ?? "", weigh(lot));
    draft.put(7, `=SUM(${draft.at(1)}:${draft.at(6)})`);
    draft.put(8, `=AVERAGE(${draft.at(1)}:${draft.at(6)})`, "0");
    draft.row += 1;
  };
  line("Fresh leaf, g", ({ fresh }) => fresh, "fresh");
  line("Aired leaf, g", ({ aired }) => aired, "aired");
  line("Finished tea, g", ({ finished }) => finished, "finished");
  draft.put(0, "Kept of the leaf");
  for (const [index, day] of days.entries()) {
    draft.place(index + 1, "formula", day, `=${keyOf(4, index + 1)}/${keyOf(2, index + 1)}`, percent);
  }
  draft.put(7, "=H5/H3", percent);
  return draft.done("days across, with totals");
};

/** Catties and taels in English, and the price that the tea fetched. */
const cattiesAndTaels: Layout = (random) => {
  const draft = new Draft();
  draft.line("Date", "Lot", "Fresh leaf (catties)", "Made tea (taels)", "Sold at, per tael", "Takings");
  for (let lot = 1; lot <= 12; lot += 1) {
    const { fresh, finished } = lotBy(random);
    const name = `K-${lot}`;
    draft.put(0, 45_390 + lot, day);
    draft.put(1, name);
    draft.place(2, "fresh", name, round((10 * fresh) / 604.79, 1));
    draft.place(3, "finished", name, round((10 * finished) / 37.8, 1));
    draft.put(4, 3 + round(2 * random.next(), 1));
    draft.place(5, "formula", name, `=${draft.at(3)}*${draft.at(4)}`, "0.00");
    draft.row += 1;
  }
  draft.line("All", "", "=SUM(C2:C13)", "=SUM(D2:D13)", "", "=SUM(F2:F13)");
  return draft.done("catties and taels, with takings");
};

/** What the pan did, minute by minute, beside what the lots weighed. */
const firingLog: Layout = (random) => {
  const draft = new Draft();
  draft.line("Firing log of Otter Bend, invented");
  draft.line("Lot", "Pan", "Pan °C", "Load, g", "Out of the pan, g", "Water lost, %", "Minutes", "Remark");
  for (let lot = 1; lot <= 12; lot += 1) {
    const load = 260 + 5 * Math.floor(12 * random.next());
    const name = `F${lot}`;
    draft.put(0, name);
    draft.put(1, 1 + (lot % 2));
    draft.put(2, 180 + 5 * Math.floor(8 * random.next()));
    draft.put(3, load);
    draft.put(4, Math.round(load * (0.58 + 0.04 * random.next())));
    draft.place(5, "formula", name, `=(${draft.at(3)}-${draft.at(4)})/${draft.at(3)}*100`, "0");
    draft.put(6, 9 + Math.floor(5 * random.next()));
    if (random.next() < 0.3) draft.put(7, "smoked a little");
    draft.row += 1;
  }
  return draft.done("log of the pan");
};

export const layouts: readonly Layout[] = [
  gramBook,
  kilogramDays,
  cattyOf500,
  cattyOf600,
  lotForm,
  stageTables,
  firingPlan,
  twoBooks,
  unitsInFormats,
  wrapDiary,
  lotsInColumns,
  longBook,
  weeksWithMoney,
  ovenSheet,
  percentNumbers,
  chineseForm,
  daysAcross,
  cattiesAndTaels,
  firingLog,
];
