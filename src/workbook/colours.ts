/** The colours of what is written into workbooks: by the pane, by commands, and in the sample workbooks. */
export const ink = "#24312a";
export const quiet = "#66726a";
export const heading = "#2e5e4e";
/** Behind what is typed over. */
export const tint = "#f7efd3";
