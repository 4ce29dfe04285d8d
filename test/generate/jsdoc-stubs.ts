import { meaning } from "../../src/core/describe";
import type { Entry } from "../../src/core/entry";

/** The catalogue as the annotated source that Microsoft's metadata tool reads; types and names alone, no code. */
export function jsdocStubs(catalogue: readonly Entry[], origin: string): string {
  return catalogue
    .map(({ spec, page }) => {
      const parameters = spec.parameters.map((parameter) => {
        const name = parameter.optional ? `[${parameter.name}]` : parameter.name;
        return ` * @param {any[][]} ${name} ${meaning(parameter, page.parameters)}`;
      });
      const typed = spec.parameters.map(({ name, optional }) => `${name}${optional ? "?" : ""}: any[][]`);
      return [
        "/**",
        ` * ${page.summary}`,
        ` * @customfunction ${spec.id} ${spec.id}`,
        ` * @helpurl ${origin}/docs/functions/${spec.id.toLowerCase()}.html`,
        ...parameters,
        " * @returns {any[][]}",
        " */",
        `function stub${spec.id}(${typed.join(", ")}): any[][] { return []; }`,
      ].join("\n");
    })
    .join("\n\n");
}
