import { accepts, meaning } from "../core/describe";
import type { Entry } from "../core/entry";

/** What Excel reads to know the functions before their script has run. */
interface FunctionsJson {
  /** Stands at the top by the schema: cells that hold an error reach the function as such. */
  readonly allowErrorForDataTypeAny: true;
  readonly functions: readonly FunctionJson[];
}

interface FunctionJson {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly ParameterJson[];
  readonly result: { readonly type: "any"; readonly dimensionality: "matrix" };
}

interface ParameterJson {
  readonly name: string;
  readonly description: string;
  readonly type: "any";
  readonly dimensionality: "matrix";
  readonly optional?: true;
}

/** The page of a function on the host that serves the add-in. */
const pageAddress = (origin: string, id: string): string => `${origin}/docs/functions/${id.toLowerCase()}.html`;

/** `any` and `matrix` throughout: the cell layer reads ranges and judges every value itself. */
export function functionsJson(catalogue: readonly Entry[], origin: string): FunctionsJson {
  return {
    allowErrorForDataTypeAny: true,
    functions: catalogue.map(({ spec, page }) => ({
      id: spec.id,
      name: spec.id,
      description: page.summary,
      helpUrl: pageAddress(origin, spec.id),
      parameters: spec.parameters.map((parameter) => ({
        name: parameter.name,
        description: `${meaning(parameter, page.parameters)}; ${accepts(parameter)}`,
        type: "any",
        dimensionality: "matrix",
        ...(parameter.optional ? { optional: true as const } : {}),
      })),
      result: { type: "any", dimensionality: "matrix" },
    })),
  };
}
