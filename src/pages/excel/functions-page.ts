/// <reference types="custom-functions-runtime" />
/**
 * What Excel loads before the first cell resolves: every function of the catalogue, and nothing else. In this script
 * core/entry.ts is exchanged for entry-without-page.ts, so that no explanation is shipped in it.
 */
import { catalogue } from "../../core/catalogue";
import { excelFunction } from "./excel-function";

for (const { spec } of catalogue) CustomFunctions.associate(spec.id, excelFunction(spec));
