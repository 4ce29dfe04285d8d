/**
 * Comes before whatever describes data with zod in a page: the pages' policies forbid the scripts that the library would
 * otherwise try to write for itself.
 */
import { config } from "zod/v4/core";

config({ jitless: true });
