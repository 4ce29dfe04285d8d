/** Measured shares as a small picture that is read in light and in dark, and its words for those who hear it. */
import { escaped } from "./blocks";
import { type MeasuredStudy, type MeasuredTable, shownCell } from "./measured";

const width = 640;
const rowHeight = 34;
const top = 66;
const left = 190;
const right = 24;

/** Told apart by form and by height in their row as well as by colour. */
const marks: readonly ((x: number, y: number) => string)[] = [
  (x, y) => `<circle cx="${x}" cy="${y}" r="4.5"/>`,
  (x, y) => `<rect x="${round(x - 4)}" y="${round(y - 4)}" width="8" height="8"/>`,
  (x, y) => `<path d="M${x} ${round(y - 5)}L${round(x + 5)} ${round(y + 4)}H${round(x - 5)}Z"/>`,
  (x, y) => `<path d="M${x} ${round(y - 5.5)}L${round(x + 5.5)} ${y}L${x} ${round(y + 5.5)}L${round(x - 5.5)} ${y}Z"/>`,
];
const apart = 6;

const style =
  "text{font:12px system-ui,sans-serif;fill:#1b1b1b}.title{font-size:14px;font-weight:600}.grid{stroke:#d5d5d5}.row{stroke:#ededed}.asked{stroke:#1b1b1b;stroke-dasharray:4 3}.s0{fill:#0b5c8a}.s1{fill:#a4400a}.s2{fill:#2d6a2f}.s3{fill:#6b3fa0}@media(prefers-color-scheme:dark){text{fill:#eee}.grid{stroke:#444}.row{stroke:#2c2c2c}.asked{stroke:#eee}.s0{fill:#6cc0ef}.s1{fill:#f2a073}.s2{fill:#8ed08f}.s3{fill:#c6a6f2}}";

const round = (value: number): number => Math.round(value * 10) / 10;

interface Series {
  readonly name: string;
  readonly values: readonly number[];
}

function seriesOf({ picture, tables }: MeasuredStudy): { table: MeasuredTable; series: Series[] } {
  const table = tables[picture.table] as MeasuredTable;
  const series = picture.columns.map((name): Series => {
    const column = table.columns.findIndex((one) => one.name === name);
    return { name, values: table.rows.map((row) => shownCell(table, row, column).value) };
  });
  return { table, series };
}

/** What the picture shows, in words: every value. */
function pictureInWords(study: MeasuredStudy): string {
  const { table, series } = seriesOf(study);
  const lines = series.map(
    ({ name, values }) =>
      `${name}: ${values.map((value, row) => `${table.rows[row]?.label} ${value.toFixed(1)}`).join(", ")}`,
  );
  return `${study.picture.title}, of 100, by ${table.rowsAre}. ${lines.join("; ")}.`;
}

/** The same in short, where every number stands in a table as well. */
export function pictureInShort(study: MeasuredStudy): string {
  const { series } = seriesOf(study);
  const lines = series.map(
    ({ name, values }) => `${name} ${Math.min(...values).toFixed(1)} to ${Math.max(...values).toFixed(1)}`,
  );
  return `${study.picture.title}, of 100: ${lines.join("; ")}.`;
}

/** A row for each row of the table, a mark in it for each column, from left to right by how often it was so. */
export function picture(study: MeasuredStudy): string {
  const { table, series } = seriesOf(study);
  const { title, asked, from = 0 } = study.picture;
  const bottom = top + rowHeight * table.rows.length;
  const xOf = (share: number): number => round(left + ((width - left - right) * (share - from)) / (100 - from));
  const yOf = (row: number): number => round(top + rowHeight * (row + 0.5));
  const scale = [0, 0.2, 0.4, 0.6, 0.8, 1].map((part) => {
    const share = from + part * (100 - from);
    const x = xOf(share);
    return `<line class="grid" x1="${x}" x2="${x}" y1="${top}" y2="${bottom}"/><text x="${x}" y="${bottom + 18}" text-anchor="middle">${share}</text>`;
  });
  const rows = table.rows.map(
    ({ label }, row) =>
      `<line class="row" x1="${left}" x2="${width - right}" y1="${yOf(row)}" y2="${yOf(row)}"/><text x="${left - 12}" y="${yOf(row) + 4}" text-anchor="end">${escaped(label)}</text>`,
  );
  const asking =
    asked === undefined
      ? []
      : [`<line class="asked" x1="${xOf(asked)}" x2="${xOf(asked)}" y1="${top}" y2="${bottom}"/>`];
  const shown = series.map(({ values }, place) => {
    const above = (place - (series.length - 1) / 2) * apart;
    const drawn = values.map((value, row) => marks[place]?.(xOf(Math.max(from, value)), round(yOf(row) + above)));
    return `<g class="s${place}">${drawn.join("")}</g>`;
  });
  const legend = series.map(({ name }, place) => {
    const [x, y] = [12 + (place % 2) * (width / 2), bottom + 46 + Math.floor(place / 2) * 20];
    return `<g class="s${place}">${marks[place]?.(x, y)}</g><text x="${x + 12}" y="${y + 4}">${escaped(name)}</text>`;
  });
  const height = bottom + 46 + Math.ceil(series.length / 2) * 20;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="title words">
<title id="title">${escaped(title)}</title>
<desc id="words">${escaped(pictureInWords(study))}</desc>
<style>${style}</style>
<text class="title" x="12" y="22">${escaped(title)}</text>
<text x="${left - 12}" y="${top - 10}" text-anchor="end">${escaped(table.rowsAre)}</text>
<text x="${width - right}" y="${top - 10}" text-anchor="end">of 100</text>
${[...scale, ...rows, ...asking, ...shown, ...legend].join("\n")}
</svg>
`;
}
