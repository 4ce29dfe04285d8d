import { namespace } from "../core/namespace";
import type { Block, Page } from "./blocks";
import { type MeasuredStudy, type MeasuredTable, shownCell } from "./measured";
import { pictureInShort } from "./picture";

/** Where the picture of a study stands, beside the page. */
export const pictureOf = ({ functions }: MeasuredStudy): string =>
  `how-sure/${(functions[0] as string).toLowerCase()}.svg`;

export const headingOf = ({ functions }: MeasuredStudy): string =>
  functions.map((id) => `${namespace}.${id}`).join(" and ");

const spaced = (count: number): string => count.toLocaleString("en").replaceAll(",", " ");

/** One decimal for what is of 100, two for a number. */
function tableOf(table: MeasuredTable): Block[] {
  const columns = table.columns.map((column, place) => ({
    ...column,
    cells: table.rows.map((row) => shownCell(table, row, place)),
    decimals: column.of === "share" ? 1 : 2,
  }));
  const worst = (isShare: boolean): number =>
    columns
      .filter(({ of }) => (of === "share") === isShare)
      .flatMap(({ cells }) => cells.map(({ error }) => error))
      .reduce((most, error) => Math.max(most, error), 0);
  const isMixed = columns.some(({ of }) => of !== "share");
  const ofShares = columns.some(({ of }) => of === "share") ? `${worst(true).toFixed(2)} in 100` : undefined;
  const ofNumbers = isMixed ? `${worst(false).toFixed(3)} of a number that is not counted` : undefined;
  const errors = [ofShares, ofNumbers].filter((error) => error !== undefined).join(" and ");
  const counting = ofShares === undefined ? "" : ", counted of 100";
  return [
    {
      paragraph: `${table.title}. ${spaced(table.trials)} trials in each row${counting}; the standard error is at most ${errors}.`,
    },
    {
      table: [table.rowsAre, ...columns.map(({ name }) => name)],
      rows: table.rows.map(({ label }, row) => [
        label,
        ...columns.map(({ cells, decimals }) => (cells[row]?.value ?? 0).toFixed(decimals)),
      ]),
    },
  ];
}

/** How often each promise held, in all studies. */
export function howSurePage(studies: readonly MeasuredStudy[]): Page {
  return {
    name: "how-sure",
    title: "How sure the functions are",
    blocks: [
      { heading: "How sure the functions are", level: 1 },
      {
        paragraph:
          "Where a function says that a lot is unusual, that readings agree or that a range holds, this is how often it is right: measured with simulated lots of an invented farm, whose truth is known. Your leaf and your scale are not these; what carries over is how the numbers go together.",
      },
      {
        paragraph:
          "npm run calibrate measures all of it again and writes this page, its pictures and docs/how-sure.json. Every row has random numbers of its own, from the seed that stands with its function, so that everybody gets the same counts; npm test works out the first tenth of each again.",
      },
      ...studies.flatMap((study): Block[] => [
        { heading: headingOf(study), level: 2 },
        ...study.says.map((paragraph) => ({ paragraph })),
        { picture: pictureOf(study), words: pictureInShort(study) },
        ...study.tables.flatMap(tableOf),
        { paragraph: `Seed ${study.seed}; ${study.file}.` },
      ]),
    ],
  };
}

/** What the page of a function says of it. */
export function howSureBlocks(id: string, studies: readonly MeasuredStudy[]): Block[] {
  const about = studies.filter(({ functions }) => functions.includes(id));
  if (about.length === 0) return [];
  return [
    { heading: "How sure it is", level: 2 },
    ...about.flatMap((study): Block[] => [
      { picture: `../${pictureOf(study)}`, words: pictureInShort(study) },
      {
        links: [
          {
            text: "How sure the functions are",
            page: "../how-sure",
            at: headingOf(study),
            after: ": what was measured, with all numbers",
          },
        ],
      },
    ]),
  ];
}
