/**
 * Comes before whatever describes data with zod in a page: the pages' policies forbid the scripts that the library would
 * otherwise try to write for itself.
 */
import { config } from "zod";

config({ jitless: true });
