/**
 * What a file has and the grid does not show: told from the parts, what the file says that they are, and the
 * elements of its sheets. A part of a kind that is not known here is named as well: none is forgotten.
 */
import type { PackageParts } from "../container/package-parts";
import { elementsNamed, type XmlElement } from "../container/xml-tree";
import { type FixedNotShown, few, type NotShown, type NotShownInAreas } from "../remarks";
import type { SheetPart } from "./sheet";
import { writtenAreas } from "./written-areas";

export interface ReadSheetPart {
  readonly name: string;
  readonly part: SheetPart;
  /** How many of its charts are shown. */
  readonly charts: number;
}

export function notShown(parts: PackageParts, sheets: readonly ReadSheetPart[], hasRichText: boolean): NotShown[] {
  const paths = parts.paths().filter((path) => !path.endsWith(".rels") && path !== "[Content_Types].xml");
  const kinds = paths.map((path) => kindOf(path, parts.contentType(path)));
  const drawings = paths.filter((_, index) => kinds[index] === "drawing").map((path) => parts.tree(path));
  const chartParts = kinds.filter((kind) => kind === "chart").length;
  const chartsShown = sheets.reduce((sum, { charts }) => sum + charts, 0);
  const drawn = (...names: string[]) =>
    drawings.some((each) => names.some((name) => elementsNamed(name, each as XmlElement).length > 0));
  const found: NotShown[] = [
    ...ofSheets(sheets),
    ...(hasRichText ? ["looks of single words" as const] : []),
    ...(drawn("pic") ? ["pictures" as const] : []),
    ...(drawn("sp", "cxnSp") ? ["shapes" as const] : []),
    ...(chartParts > chartsShown ? ["other charts" as const] : []),
    ...kinds.filter((kind) => kind !== "drawing" && kind !== "chart" && kind !== "shown"),
  ];
  return [...new Map(found.map((each) => [JSON.stringify(each), each])).values()];
}

/** `shown`: or what says nothing to a maker. */
type KindOfPart = FixedNotShown | "drawing" | "chart" | "shown";

function kindOf(path: string, contentType: string): KindOfPart | NotShown {
  for (const [kind, type, place] of kindsOfParts) if (type.test(contentType) || place?.test(path)) return kind;
  const isPlain = contentType === "" || /^application\/(?:xml|octet-stream)$/.test(contentType);
  return isPlain ? { kind: "part", path } : { kind: "parts of a type", type: contentType };
}

/** The first that fits counts. A path speaks for parts of which the file says nothing but that they are XML. */
const kindsOfParts: readonly (readonly [kind: KindOfPart, type: RegExp, path?: RegExp])[] = [
  ["macros", /vbaProject|vba|macrosheet/i, /^xl\/(?:vbaProject\.bin|macrosheets\/)/],
  ["chart sheets", /\.chartsheet\+xml$/, /^xl\/chartsheets\/[^/]+$/],
  ["dialog sheets", /\.dialogsheet\+xml$/, /^xl\/dialogsheets\/[^/]+$/],
  [
    "shown",
    /spreadsheetml\.(?:sheet|template)\.main\+xml$|ms-excel\.(?:sheet|template|addin)\.macroEnabled\.main\+xml$/,
  ],
  [
    "shown",
    /spreadsheetml\.(?:worksheet|sharedStrings|styles|table|tableSingleCells|calcChain|sheetMetadata|comments)\+xml$/,
  ],
  [
    "shown",
    /\.theme\+xml$|themeOverride\+xml$|vmlDrawing$|core-properties\+xml$|extended-properties\+xml$/,
    /^(?:docProps\/thumbnail|xl\/theme\/)/,
  ],
  ["chart", /drawingml\.chart\+xml$|ms-office\.chartex\+xml$/, /^xl\/charts\/chart(?:Ex)?\d*\.xml$/],
  ["shown", /chartstyle\+xml$|chartcolorstyle\+xml$|chartshapes\+xml$/, /^xl\/charts\//],
  ["shapes", /drawingml\.diagram|drawingml\.diagramDrawing|ms-office\.drawingml\.diagram/, /^xl\/diagrams\//],
  ["drawing", /officedocument\.drawing\+xml$/, /^xl\/drawings\/[^/]+\.xml$/],
  ["pivot tables", /\.pivot(?:Table|CacheDefinition|CacheRecords)\+xml$/, /^xl\/pivot(?:Tables|Cache)\//],
  [
    "slicers and timelines",
    /slicer(?:Cache)?\+xml$|timeline(?:Cache)?\+xml$/,
    /^xl\/(?:slicers|timelines|slicerCaches|timelineCaches)\//,
  ],
  ["buttons and boxes", /controlproperties\+xml$|activeX/, /^xl\/(?:ctrlProps|activeX)\//],
  ["objects of other programs", /oleObject|officedocument\.package$/, /^xl\/embeddings\//],
  ["answers to comments", /threadedcomments\+xml$|ms-excel\.person\+xml$/, /^xl\/(?:threadedComments|persons)\//],
  ["links to other workbooks", /externalLink\+xml$/, /^xl\/externalLinks\/[^/]+$/],
  [
    "connections to other data",
    /connections\+xml$|queryTable\+xml$|xmlMaps|\.model\+data$|volatileDependencies\+xml$/,
    /^xl\/(?:connections\.xml|queryTables\/|model\/|xmlMaps\.xml|volatileDependencies)/,
  ],
  ["record of changes", /revision(?:Headers|Log)\+xml$|userNames\+xml$/, /^xl\/revisions\//],
  ["signature", /digital-signature/, /^_xmlsignatures\//],
  ["cards and pictures in cells", /rdrichvalue|richvalue|rdsupportingpropertybag|richstyles/i, /^xl\/richData\//],
  ["check boxes in cells", /featurepropertybag/i],
  ["panes of add-ins", /webextension/i, /^xl\/webextensions\//],
  ["views of single people", /namedsheetviews\+xml$/i],
  ["drawings by pen", /inkml\+xml$/],
  [
    "properties and labels",
    /custom-properties\+xml$|customXmlProperties\+xml$|spreadsheetml\.customProperty$|docMetadata|LabelInfo/,
    /^(?:customXml|docMetadata|xl\/customProperty)/,
  ],
  ["settings of a printer", /printerSettings$/],
  ["pictures", /^image\//, /^xl\/media\//],
  ["sounds and films", /^(?:audio|video)\//],
  ["fonts", /font/i],
];

/** What sheets say beside their cells. */
function ofSheets(sheets: readonly ReadSheetPart[]): NotShown[] {
  const has = (...names: string[]) => sheets.some(({ part }) => names.some((name) => part.elements.has(name)));
  const where = (kind: NotShownInAreas, areas: (part: SheetPart) => SheetPart["validations"]): NotShown[] => {
    const found = writtenAreas(sheets.map(({ name, part }) => ({ name, areas: areas(part) })));
    return found.length === 0 ? [] : [{ kind, found: few(found) }];
  };
  const all: readonly (readonly [kind: FixedNotShown, found: boolean])[] = [
    ["pictures", has("picture", "legacyDrawingHF", "drawingHF")],
    ["filters", has("autoFilter")],
    ["protection of sheets", has("sheetProtection", "protectedRanges")],
    ["lines inside cells", has("sparklineGroup")],
    ["scenarios", has("scenarios")],
    ["views of single people", has("customSheetViews")],
    ["objects of other programs", has("oleObjects")],
    ["buttons and boxes", has("controls")],
  ];
  return [
    ...where("data validation", ({ validations }) => validations),
    ...where("conditional formats", ({ conditionalFormats }) => conditionalFormats),
    ...where("tables of inputs", ({ dataTables }) => dataTables),
    ...all.filter(([, found]) => found).map(([kind]) => kind),
  ];
}
