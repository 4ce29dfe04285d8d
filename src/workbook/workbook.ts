/** A workbook as plain data, as its schema states it. */
import type { z } from "zod";
import type * as schema from "./schema";

/** Never changed once it is made. */
type Plain<Value> = Value extends readonly (infer Item)[]
  ? readonly Plain<Item>[]
  : Value extends object
    ? { readonly [Name in keyof Value]: Plain<Value[Name]> }
    : Value;

export type Workbook = Plain<z.infer<typeof schema.workbook>>;
export type DefinedName = Plain<z.infer<typeof schema.definedName>>;
export type Sheet = Plain<z.infer<typeof schema.sheet>>;
export type Link = Plain<z.infer<typeof schema.link>>;
export type Area = Plain<z.infer<typeof schema.area>>;
export type Cell = Plain<z.infer<typeof schema.cell>>;
export type Style = Plain<z.infer<typeof schema.style>>;
export type PageSetup = Plain<z.infer<typeof schema.pageSetup>>;
export type Table = Plain<z.infer<typeof schema.table>>;
export type Chart = Plain<z.infer<typeof schema.chart>>;
export type ChartSeries = Plain<z.infer<typeof schema.chartSeries>>;
export type ChartAxis = Plain<z.infer<typeof schema.chartAxis>>;

/** The errors that a file can hold as constants. */
export const isErrorCode = (value: unknown): value is string =>
  typeof value === "string" && /^#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A)$/.test(value);

const errorsOfFormulasAlone = /^#(?:SPILL!|CALC!|FIELD!|BLOCKED!|BUSY!|GETTING_DATA|CONNECT!|UNKNOWN!)$/;

/** The errors that a file can hold as the result of a formula. */
export const isErrorResult = (value: unknown): value is string =>
  isErrorCode(value) || (typeof value === "string" && errorsOfFormulasAlone.test(value));

/** The errors that a cell can show, in whichever program: the embedded engine has two of its own, which no file holds. */
export const isErrorAnswer = (value: unknown): value is string =>
  isErrorResult(value) || value === "#CYCLE!" || value === "#ERROR!";

/** The font of every cell; its size is that of cells without a size of their own. */
export const usualFont = { name: "Arial", size: 10 } as const;
