/** Node is started with this before anything that calculates: the packages of the engine are put right as they are loaded. */
import Module from "node:module";
import { filesOfEngine, quickerInNode } from "./quicker-engine";

type Compile = (this: unknown, text: string, file: string, ...others: unknown[]) => unknown;

/** What Node and its loaders call with the text of every file of a package, by a name that is not in its types. */
const loading = Module.prototype as unknown as { _compile: Compile };
const compile = loading._compile;

function compileQuicker(this: unknown, ...[text, file, ...others]: Parameters<Compile>): unknown {
  return compile.call(this, filesOfEngine.test(file) ? quickerInNode(text) : text, file, ...others);
}

// Each file of tests asks for it once more.
if (compile.name !== compileQuicker.name) loading._compile = compileQuicker;
