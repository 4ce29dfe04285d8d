import { nearestNames } from "../cells/nearest-names";
import { CellError } from "../cells/values";
import { catalogue } from "../core/catalogue";
import { deferral } from "../core/cautions";
import { groups } from "../core/define";
import { accepts, formula, meaning, resultInWords, rowsOf, signature, whenBlank } from "../core/describe";
import type { Entry } from "../core/entry";
import { namespace } from "../core/namespace";
import { writtenAnswer } from "./written-answer";

/** Every function with what it answers, by group. */
export function functionList(): string {
  const width = Math.max(...catalogue.map(({ spec }) => spec.id.length)) + namespace.length + 1;
  return groups
    .map((group) => {
      const lines = catalogue
        .filter(({ spec }) => spec.group === group)
        .map(({ spec, page }) => `  ${`${namespace}.${spec.id}`.padEnd(width)}  ${page.summary}`);
      return lines.length === 0 ? "" : `${group}\n${lines.join("\n")}\n`;
    })
    .join("")
    .concat("help NAME explains one of them.");
}

/** What one function is for; an error with the nearest names when there is none of that name. */
export function functionHelp(name: string): string | CellError {
  const id = name.trim().toUpperCase().replace(`${namespace}.`, "");
  const entry = catalogue.find(({ spec }) => spec.id === id);
  if (entry) return explanation(entry);
  const nearest = nearestNames(
    id,
    catalogue.map(({ spec }) => spec.id),
  );
  const hint = nearest.length > 0 ? `did you mean ${nearest.join(" or ")}?` : "help alone lists them all";
  return new CellError("#NAME?", `there is no function ${namespace}.${id}; ${hint}`);
}

function explanation({ spec, page }: Entry): string {
  const width = Math.max(0, ...spec.parameters.map(({ name }) => name.length));
  const parameters = spec.parameters.map(
    (parameter) =>
      `  ${parameter.name.padEnd(width)}  ${meaning(parameter, page.parameters)}; ${accepts(parameter)}; blank: ${whenBlank(parameter)}`,
  );
  const examples = page.examples.map(({ given, gives, shows }) => {
    const rows = writtenAnswer(rowsOf(gives).map((row) => [...row])).text.replaceAll("\n", "\n    ");
    return `  ${formula(spec, given)}\n    ${rows}\n    ${shows}`;
  });
  const cautions = page.cautions.map(({ title, text }) => `  ${title}: ${text}`);
  return [
    signature(spec),
    page.summary,
    "",
    ...parameters,
    "",
    resultInWords(spec),
    page.formula,
    "",
    ...page.guide,
    "",
    ...examples,
    ...(cautions.length > 0 ? ["", ...cautions, `  ${deferral}`] : []),
  ].join("\n");
}
