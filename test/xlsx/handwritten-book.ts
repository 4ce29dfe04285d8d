/** Workbooks put together from parts that a test writes by hand: no program would write all that files may hold. */
import { strToU8, zipSync } from "fflate";

const namespace = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

export interface Handwritten {
  /** What stands inside `worksheet`, by the names of the sheets. */
  readonly sheets: Readonly<Record<string, string>>;
  readonly strings?: string;
  readonly styles?: string;
  /** What stands in the workbook's part, before its sheets and behind them. */
  readonly before?: string;
  readonly behind?: string;
  /** More parts, and what the list of parts says of them. */
  readonly parts?: Readonly<Record<string, string | Uint8Array>>;
  readonly types?: Readonly<Record<string, string>>;
  /** More relations of the workbook's part, by kind. */
  readonly relations?: Readonly<Record<string, string>>;
  /** Relations of a sheet's part, by its name: id, kind and target. */
  readonly ofSheets?: Readonly<Record<string, readonly (readonly [id: string, kind: string, target: string])[]>>;
}

export const partsOf = (book: Handwritten): Record<string, Uint8Array> => {
  const names = Object.keys(book.sheets);
  const more = {
    ...(book.strings && { sharedStrings: "sharedStrings.xml" }),
    ...(book.styles && { styles: "styles.xml" }),
    ...book.relations,
  };
  const types: Record<string, string> = {
    "xl/workbook.xml": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
    ...Object.fromEntries(
      names.map((_, index) => [
        `xl/worksheets/sheet${index + 1}.xml`,
        "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml",
      ]),
    ),
    ...(book.strings && {
      "xl/sharedStrings.xml": "application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml",
    }),
    ...(book.styles && { "xl/styles.xml": "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml" }),
    ...book.types,
  };
  const overrides = Object.entries(types).map(
    ([path, type]) => `<Override PartName="/${path}" ContentType="${type}"/>`,
  );
  const sheets = names.map((name, index) => `<sheet name="${name}" sheetId="${index + 1}" r:id="rId${index + 1}"/>`);
  const texts: Record<string, string | Uint8Array> = {
    "[Content_Types].xml": `${head}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>${overrides.join("")}</Types>`,
    "_rels/.rels": relationsPart([["rId1", "officeDocument", "xl/workbook.xml"]]),
    "xl/workbook.xml": `${head}<workbook xmlns="${namespace}" xmlns:r="${relations}">${book.before ?? ""}<sheets>${sheets.join("")}</sheets>${book.behind ?? ""}</workbook>`,
    "xl/_rels/workbook.xml.rels": relationsPart([
      ...names.map((_, index) => [`rId${index + 1}`, "worksheet", `worksheets/sheet${index + 1}.xml`] as const),
      ...Object.entries(more).map(([kind, target], index) => [`rId${names.length + index + 1}`, kind, target] as const),
    ]),
    ...(book.strings && { "xl/sharedStrings.xml": `${head}<sst xmlns="${namespace}">${book.strings}</sst>` }),
    ...(book.styles && { "xl/styles.xml": `${head}<styleSheet xmlns="${namespace}">${book.styles}</styleSheet>` }),
    ...Object.fromEntries(
      names.map((name, index) => [`xl/worksheets/sheet${index + 1}.xml`, sheetPart(book.sheets[name] ?? "")]),
    ),
    ...Object.fromEntries(
      Object.entries(book.ofSheets ?? {}).map(([name, links]) => [
        `xl/worksheets/_rels/sheet${names.indexOf(name) + 1}.xml.rels`,
        relationsPart(links),
      ]),
    ),
    ...book.parts,
  };
  return Object.fromEntries(
    Object.entries(texts).map(([path, text]) => [path, typeof text === "string" ? strToU8(text) : text]),
  );
};

/** A part that is a whole document already stays as it is. */
const sheetPart = (inside: string): string =>
  inside.startsWith("<?xml")
    ? inside
    : `${head}<worksheet xmlns="${namespace}" xmlns:r="${relations}">${inside}</worksheet>`;

const relationsPart = (links: readonly (readonly [id: string, kind: string, target: string])[]): string =>
  `${head}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${links
    .map(([id, kind, target]) => {
      const mode = /^(?:https?|file):/.test(target) ? ' TargetMode="External"' : "";
      return `<Relationship Id="${id}" Type="${relations}/${kind}" Target="${target}"${mode}/>`;
    })
    .join("")}</Relationships>`;

export const handwritten = (book: Handwritten): Uint8Array => zipSync(partsOf(book), { mtime: "2020-01-01" });

/** A book of one sheet with these rows. */
export const withRows = (rows: string, more: Omit<Handwritten, "sheets"> = {}): Uint8Array =>
  handwritten({ sheets: { Lots: `<sheetData>${rows}</sheetData>` }, ...more });
