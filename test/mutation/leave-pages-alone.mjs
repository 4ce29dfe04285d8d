import { declareValuePlugin, PluginKind } from "@stryker-mutator/api/plugin";

/** What a refusal is made with: its words are for the maker, and tests that repeat them all would prove nothing. */
const refusals = new Set(["must", "mustBe", "mustBeNumber", "noAnswer", "DomainError"]);

const isText = (path) => path.isStringLiteral() || path.isTemplateLiteral();

/** Pages explain and do not run; the catalogue's tests execute what they promise. */
const ignorer = {
  shouldIgnore(path) {
    if (path.isVariableDeclarator() && path.node.id.type === "Identifier" && path.node.id.name.endsWith("Page")) {
      return "a page explains";
    }
    const parent = path.parentPath;
    if (isText(path) && (parent?.isCallExpression() || parent?.isNewExpression()) && path.listKey === "arguments") {
      if (refusals.has(parent.node.callee.name)) return "the words of a refusal";
    }
    return undefined;
  },
};

export const strykerPlugins = [declareValuePlugin(PluginKind.Ignore, "pages and words", ignorer)];
