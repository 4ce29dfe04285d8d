import ts from "typescript";

/** What the language itself has, and Google's script engine offers to a function in a cell: nothing else is there. */
const known = new Set(
  `Array Boolean Date Error Float64Array Infinity JSON Map Math NaN Number Object RangeError RegExp Set String Symbol
  TypeError WeakMap arguments isFinite isNaN parseFloat parseInt undefined SpreadsheetApp Utilities`.split(/\s+/),
);

/** Forms of the language that Google's script engine does not read, or for which it never comes back to the function. */
const unread: ReadonlyMap<ts.SyntaxKind, string> = new Map([
  [ts.SyntaxKind.ImportDeclaration, "an import"],
  [ts.SyntaxKind.ImportKeyword, "an import"],
  [ts.SyntaxKind.MetaProperty, "import.meta or new.target"],
  [ts.SyntaxKind.ExportKeyword, "an export"],
  [ts.SyntaxKind.ExportAssignment, "an export"],
  [ts.SyntaxKind.ExportDeclaration, "an export"],
  [ts.SyntaxKind.PrivateIdentifier, "a private field"],
  [ts.SyntaxKind.PropertyDeclaration, "a field of a class, static or not"],
  [ts.SyntaxKind.ClassStaticBlockDeclaration, "a static block"],
  [ts.SyntaxKind.BigIntLiteral, "a big integer"],
  [ts.SyntaxKind.AsyncKeyword, "an async function"],
  [ts.SyntaxKind.AwaitExpression, "an await"],
]);

/** What a script holds that Google's script engine may not have, one line each. */
export function unfitWords(script: string): string[] {
  const file = ts.createSourceFile("script.js", script, ts.ScriptTarget.Latest, true, ts.ScriptKind.JS);
  const [declared, used, forms] = [new Set<string>(), new Set<string>(), new Set<string>()];
  const visit = (node: ts.Node): void => {
    const form = unread.get(node.kind);
    if (form !== undefined) forms.add(form);
    if (ts.isIdentifier(node) && declares(node)) declared.add(node.text);
    else if (ts.isIdentifier(node) && !isName(node)) used.add(node.text);
    ts.forEachChild(node, visit);
  };
  visit(file);
  const strange = [...used].filter((name) => !declared.has(name) && !known.has(name));
  return [...forms, ...strange].sort();
}

/** A variable, parameter, function or class where it is declared. */
function declares(node: ts.Identifier): boolean {
  const { parent } = node;
  return (
    (ts.isVariableDeclaration(parent) ||
      ts.isParameter(parent) ||
      ts.isBindingElement(parent) ||
      ts.isFunctionDeclaration(parent) ||
      ts.isFunctionExpression(parent) ||
      ts.isClassDeclaration(parent) ||
      ts.isClassExpression(parent)) &&
    parent.name === node
  );
}

/** Only what a part of an object, or a loop, is called. */
function isName(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isBindingElement(parent)) return parent.propertyName === node;
  if (ts.isLabeledStatement(parent) || ts.isBreakOrContinueStatement(parent)) return true;
  return (
    (ts.isPropertyAccessExpression(parent) ||
      ts.isPropertyAssignment(parent) ||
      ts.isMethodDeclaration(parent) ||
      ts.isAccessor(parent) ||
      ts.isPropertyDeclaration(parent)) &&
    parent.name === node
  );
}
