import { catalogue } from "../core/catalogue";
import { FunctionReference } from "./function-reference";

/** Every function of the catalogue, with its page. */
export const WholeReference = () => <FunctionReference catalogue={catalogue} />;
