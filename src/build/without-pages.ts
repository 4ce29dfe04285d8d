import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Plugin } from "esbuild";
import ts from "typescript";

/**
 * Leaves out of a bundle what only explains a function: its group, its page, and whatever in its file serves the page alone. A
 * bundler keeps every value that is worked out by a call, since it can't know that the call does nothing else; in the
 * core no call does. Whoever takes core/entry.ts gets entry-without-page.ts.
 */
export const withoutPages = (project: string): Plugin => ({
  name: "functions without their pages",
  setup({ onLoad, onResolve }) {
    onResolve({ filter: /^\.\/entry$/ }, () => ({ path: join(project, "src/core/entry-without-page.ts") }));
    onLoad({ filter: /[\\/]src[\\/]core[\\/].*\.ts$/ }, async ({ path }) => ({
      contents: withoutPage(await readFile(path, "utf8")),
      loader: "ts",
    }));
  },
});

/** Leaves out of a bundle what explains a function, but for what to be careful of. */
export const onlyCautions: Plugin = {
  name: "functions with their cautions alone",
  setup({ onLoad }) {
    onLoad({ filter: /[\\/]src[\\/]core[\\/].*\.ts$/ }, async ({ path }) => ({
      contents: pageOfCautions(await readFile(path, "utf8")),
      loader: "ts",
    }));
  },
};

/** The file of a function with a page that says no more than its cautions. */
export function pageOfCautions(text: string): string {
  const { statements } = ts.createSourceFile("function.ts", text, ts.ScriptTarget.Latest, true);
  return statements
    .map((statement) => {
      const [name = ""] = namesOf(statement);
      if (!isExported(statement) || !ts.isVariableStatement(statement) || !name.endsWith("Page")) {
        return statement.getFullText();
      }
      const kept = /^ +cautions: (\[[^\]]*\])/m.exec(statement.getText())?.[1];
      if (kept === undefined) return statement.getFullText();
      // A page that is made for its function is asked for with it.
      const [{ initializer } = {}] = statement.declarationList.declarations;
      const made = initializer && ts.isArrowFunction(initializer) ? "() => " : "";
      return `\nexport const ${name} = ${made}({ cautions: ${kept} });`;
    })
    .join("");
}

/** The file of a function without its group, which only lists ask for, and with a page that gives nothing. */
export function withoutPage(file: string): string {
  const text = withoutWords(file.replace(/^ +group: "\w+",\n/m, ""));
  const { statements } = ts.createSourceFile("function.ts", text, ts.ScriptTarget.Latest, true);
  const declarations = statements.map((statement) => ({ statement, names: namesOf(statement) }));
  const pages = declarations.filter(
    ({ statement, names }) => isExported(statement) && names.some((name) => name.endsWith("Page")),
  );
  const kept = new Set(
    declarations.filter(
      (each) =>
        !pages.includes(each) && (each.names.length === 0 || isExported(each.statement) || isType(each.statement)),
    ),
  );
  // What is added on the way is looked at in turn.
  for (const { statement } of kept) {
    if (ts.isImportDeclaration(statement)) continue;
    const named = identifiersIn(statement);
    for (const each of declarations)
      if (each.names.some((name) => named.has(name)) && !pages.includes(each)) kept.add(each);
  }
  return declarations
    .map((each) => {
      if (kept.has(each)) return each.statement.getFullText();
      return pages.includes(each) ? each.names.map((name) => `\nexport const ${name} = () => undefined;`).join("") : "";
    })
    .join("");
}

/** What is only said, and marked as explained, is left out where it stands. */
function withoutWords(text: string): string {
  const said: ts.PropertyAssignment[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAssignment(node) && isExplained(node.initializer)) said.push(node);
    else ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile("function.ts", text, ts.ScriptTarget.Latest, true));
  return said.reduceRight(
    (left, node) => left.slice(0, node.getStart()) + left.slice(node.end).replace(/^,/, ""),
    text,
  );
}

const isExplained = (value: ts.Expression): boolean =>
  ts.isCallExpression(value) && ts.isIdentifier(value.expression) && value.expression.text === "explained";

function namesOf(statement: ts.Statement): string[] {
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations.flatMap(({ name }) => [...identifiersIn(name)]);
  return ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement) ? [statement.name?.text ?? ""] : [];
}

const isExported = (statement: ts.Statement): boolean =>
  ts.canHaveModifiers(statement) &&
  ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) === true;

const isType = (statement: ts.Statement): boolean =>
  ts.isInterfaceDeclaration(statement) || ts.isTypeAliasDeclaration(statement);

function identifiersIn(node: ts.Node): Set<string> {
  const found = new Set<string>();
  const visit = (each: ts.Node): void => {
    if (ts.isIdentifier(each)) found.add(each.text);
    ts.forEachChild(each, visit);
  };
  visit(node);
  return found;
}
