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

/** The file of a function without its group, which only lists ask for, and with a page that gives nothing. */
export function withoutPage(file: string): string {
  const text = withoutWords(file.replace(/^ +group: "\w+",\n/m, ""));
  return declarationsIn(text)
    .map((each) => {
      if (each.serves === "function") return each.text;
      return each.serves === "page"
        ? each.names.map((name) => `\nexport const ${name} = () => undefined;`).join("")
        : "";
    })
    .join("");
}

/** A statement of a function's file. */
interface Declaration {
  readonly text: string;
  readonly names: readonly string[];
  readonly identifiers: ReadonlySet<string>;
  readonly isImport: boolean;
  readonly isType: boolean;
  readonly isExported: boolean;
  /** What it is for: what runs, the page that explains it, or nothing but that page. */
  readonly serves: "function" | "page" | "its page alone";
}

/** The statements of a function's file, and which of them serve its page alone. */
export function declarationsIn(text: string): Declaration[] {
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
  return declarations.map((each) => ({
    text: each.statement.getFullText(),
    names: each.names,
    identifiers: identifiersIn(each.statement),
    isImport: ts.isImportDeclaration(each.statement),
    isType: isType(each.statement),
    isExported: isExported(each.statement),
    serves: kept.has(each) ? "function" : pages.includes(each) ? "page" : "its page alone",
  }));
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
