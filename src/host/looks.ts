import { heading, ink, quiet, tint } from "../workbook/colours";
import type { Style } from "../workbook/workbook";
import type { WrittenCell } from "./workbook-host";

/** What the cells of a block look like, in every host: as in the sample workbooks, what is typed over is tinted. */
export const looks: Readonly<Record<NonNullable<WrittenCell["look"]>, Style>> = {
  heading: { bold: true, size: 12, color: heading, border: "bottom" },
  label: { color: ink },
  input: { color: ink, fill: tint, border: "thin" },
  answer: { bold: true, color: ink },
  caution: { italic: true, color: quiet },
};
