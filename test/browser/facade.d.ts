/** What the embedded spreadsheet adds to its programming interface, which functions run in the page name. */
import "@univerjs/preset-sheets-core";
