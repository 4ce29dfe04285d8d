/** What a maker is told of a file that can be opened and saved, as data, so that every language has words of its own for it. */

/** What will be out of date in a file once it is saved with changes. */
export type SavingRemark = "signature" | "charts" | "pivot tables";

/** What a file has and the grid does not show. */
export type NotShown =
  | FixedNotShown
  | { readonly kind: "part"; readonly path: string }
  | { readonly kind: "parts of a type"; readonly type: string }
  | { readonly kind: "names" | "names worked out" | "lost table columns"; readonly found: Few }
  | { readonly kind: NotShownInAreas; readonly found: Few };

export type NotShownInAreas = "data validation" | "conditional formats" | "tables of inputs";

export type FixedNotShown =
  | "macros"
  | "chart sheets"
  | "dialog sheets"
  | "looks of single words"
  | "pictures"
  | "shapes"
  | "other charts"
  | "pivot tables"
  | "slicers and timelines"
  | "buttons and boxes"
  | "objects of other programs"
  | "answers to comments"
  | "links to other workbooks"
  | "connections to other data"
  | "record of changes"
  | "signature"
  | "cards and pictures in cells"
  | "check boxes in cells"
  | "panes of add-ins"
  | "views of single people"
  | "drawings by pen"
  | "properties and labels"
  | "settings of a printer"
  | "sounds and films"
  | "fonts"
  | "filters"
  | "protection of sheets"
  | "lines inside cells"
  | "scenarios";

/** The first few of what was found, and how many more there are. */
export interface Few {
  readonly first: readonly string[];
  readonly more: number;
}

export const few = (found: readonly string[], most = 3): Few => ({
  first: found.slice(0, most),
  more: Math.max(0, found.length - most),
});
