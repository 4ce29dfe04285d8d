/** A page as a list of blocks, written as Markdown for readers of the repository and as HTML for a host. */
export type Block =
  | { readonly heading: string; readonly level: 1 | 2 }
  | { readonly paragraph: string }
  | { readonly code: string }
  | { readonly list: readonly string[] }
  | { readonly links: readonly Link[] }
  | { readonly picture: string; readonly words: string }
  | { readonly table: readonly string[]; readonly rows: readonly (readonly string[])[] };

interface Link {
  readonly text: string;
  /** The name of its file, without the ending. */
  readonly page: string;
  /** The heading there that it leads to. */
  readonly at?: string;
  readonly after: string;
}

export interface Page {
  /** The name of its file, without the ending. */
  readonly name: string;
  readonly title: string;
  readonly blocks: readonly Block[];
}

/** Text that Markdown would read as markup. */
const plain = (text: string): string => text.replaceAll(/([\\`*_<>[\]])/g, "\\$1");
/** The name of a heading in an address, as hosts of Markdown make it. */
const anchor = (heading: string): string =>
  heading
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{Nd} -]/gu, "")
    .replaceAll(" ", "-");
const hash = (at: string | undefined): string => (at === undefined ? "" : `#${anchor(at)}`);
const tableCell = (text: string): string => plain(text).replaceAll("|", "\\|");

function blockAsMarkdown(block: Block): string {
  if ("heading" in block) return `${"#".repeat(block.level)} ${plain(block.heading)}`;
  if ("paragraph" in block) return plain(block.paragraph);
  if ("code" in block) return `\`\`\`\n${block.code}\n\`\`\``;
  if ("list" in block) return block.list.map((item) => `- ${plain(item)}`).join("\n");
  if ("links" in block) {
    return block.links
      .map(({ text, page, at, after }) => `- [${plain(text)}](${page}.md${hash(at)})${plain(after)}`)
      .join("\n");
  }
  if ("picture" in block) return `![${plain(block.words)}](${block.picture})`;
  const rows = block.rows.map((row) => `| ${row.map(tableCell).join(" | ")} |`);
  return [`| ${block.table.map(tableCell).join(" | ")} |`, `|${" --- |".repeat(block.table.length)}`, ...rows].join(
    "\n",
  );
}

export const asMarkdown = ({ blocks }: Page): string => `${blocks.map(blockAsMarkdown).join("\n\n")}\n`;

const entities: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
/** Text as it stands in HTML or XML, between tags or in double quotes. */
export const escaped = (text: string): string => text.replaceAll(/[&<>"]/g, (letter) => entities[letter] ?? letter);
const tagged = (tag: string, text: string): string => `<${tag}>${escaped(text)}</${tag}>`;

function blockAsHtml(block: Block): string {
  if ("heading" in block) {
    const { heading, level } = block;
    const named = level === 1 ? "" : ` id="${escaped(anchor(heading))}"`;
    return `<h${level}${named}>${escaped(heading)}</h${level}>`;
  }
  if ("paragraph" in block) return tagged("p", block.paragraph);
  if ("code" in block) return `<pre>${tagged("code", block.code)}</pre>`;
  if ("list" in block) return `<ul>${block.list.map((item) => tagged("li", item)).join("")}</ul>`;
  if ("links" in block) {
    const items = block.links.map(
      ({ text, page, at, after }) =>
        `<li><a href="${escaped(page)}.html${hash(at)}">${escaped(text)}</a>${escaped(after)}</li>`,
    );
    return `<ul>${items.join("")}</ul>`;
  }
  if ("picture" in block) return `<img src="${escaped(block.picture)}" alt="${escaped(block.words)}">`;
  const head = block.table.map((name) => `<th scope="col">${escaped(name)}</th>`).join("");
  const rows = block.rows.map((row) => `<tr>${row.map((text) => tagged("td", text)).join("")}</tr>`);
  return `<table><thead><tr>${head}</tr></thead><tbody>${rows.join("\n")}</tbody></table>`;
}

/** A page that needs nothing beside its style sheet. */
export const asHtml = ({ title, blocks }: Page, style = "page.css"): string =>
  htmlDocument(title, blocks.map(blockAsHtml).join("\n"), style);

/** A document around a body that is HTML already. */
export const htmlDocument = (title: string, body: string, style: string): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'; img-src 'self' data:; base-uri 'none'; form-action 'none'">
<title>${escaped(title)}</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="${escaped(style)}">
</head>
<body>
${body}
</body>
</html>
`;
