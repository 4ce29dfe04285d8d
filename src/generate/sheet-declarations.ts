import type { Result } from "../core/define";
import { headers, type Parameter } from "../core/define";
import { accepts, meaning, plainName, shownNumber } from "../core/describe";
import type { Entry } from "../core/entry";

/** Every function of the catalogue comes with its help in one script, which has to stay small: bounds are on its page. */
const helpFor = (parameter: Parameter, meanings: Readonly<Record<string, string>>): string =>
  [
    `@param {${typeOf(parameter)}} ${parameter.name} ${meaning(parameter, meanings)}`,
    parameter.quantity.holds === "choice" ? `; ${accepts(parameter)}` : "",
    parameter === headers ? "" : leftOut(parameter, meanings),
  ].join("");

function typeOf({ takes, quantity }: Parameter): string {
  if (takes === "list") return "range";
  return quantity.holds === "number" ? "number" : quantity.holds === "yesNo" ? "boolean" : "string";
}

/** What stands in for an argument that is left out, where its meaning does not say it already. */
function leftOut({ name, optional, fallback }: Parameter, meanings: Readonly<Record<string, string>>): string {
  if (!optional || /left out|without it/.test(meanings[name] ?? "")) return "";
  if (fallback === undefined) return " (optional)";
  if (typeof fallback === "boolean") return ` (optional: ${fallback ? "TRUE" : "FALSE"})`;
  return ` (optional: ${typeof fallback === "number" ? shownNumber(fallback) : `"${fallback}"`})`;
}

/** A number comes as a plain one: the format is for its cell. */
const formatOf = ({ format, holds }: { readonly format: string; readonly holds: string }): string =>
  holds === "number" ? `, format ${format}` : "";

function given(result: Result): string {
  switch (result.shape) {
    case "cell":
      return `one value, or one for each cell of a range${formatOf(result.quantity)}`;
    case "column":
      return `a column${formatOf(result.quantity)}`;
    case "row":
      return `a row of ${result.columns.map(({ name }) => name).join(", ")}`;
    case "table":
      return "a table";
  }
}

/** One line of a comment, which nothing in it may end. */
const commentLine = (text: string): string => ` * ${text.replaceAll("*/", "* /")}`.trimEnd();

/**
 * Every function of the catalogue as Google Sheets knows one: a plain declaration, under a comment from which it makes
 * its help. Each hands what it is given to `answer`.
 */
export const sheetDeclarations = (catalogue: readonly Entry[], answer: string): string =>
  catalogue
    .map(({ spec, page }) => {
      const lines = [
        page.summary,
        ...spec.parameters.map((parameter) => helpFor(parameter, page.parameters)),
        `@return ${given(spec.result)}`,
        "@customfunction",
      ];
      const names = spec.parameters.map(({ name }) => name).join(", ");
      return `/**
${lines.map(commentLine).join("\n")}
 */
function ${plainName(spec.id)}(${names}) {
  return ${answer}("${spec.id}", arguments);
}
`;
    })
    .join("\n");
