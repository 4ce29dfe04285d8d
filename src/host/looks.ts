import type { Style } from "../workbook/workbook";
import type { WrittenCell } from "./workbook-host";

const ink = "#24312a";

/** What the cells of a block look like, in every host: as in the sample workbooks, what is typed over is tinted. */
export const looks: Readonly<Record<NonNullable<WrittenCell["look"]>, Style>> = {
  heading: { bold: true, size: 12, color: "#2e5e4e", border: "bottom" },
  label: { color: ink },
  input: { color: ink, fill: "#f7efd3", border: "thin" },
  answer: { bold: true, color: ink },
  caution: { italic: true, color: "#66726a" },
};
