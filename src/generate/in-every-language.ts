/**
 * The files that name every language, from the one list of them. A bundler follows imports that are written out, and keeps
 * files whole: each part of what is said has a file of its own, so that a page fetches no more than it speaks.
 */
import { type Language, languageIds, languages } from "../words/languages";
import { sampleKeys } from "../words/page";

const folder = "src/words/in-every-language";
const [first, ...others] = languageIds;

/** `chinesePage`: what the file `page.ts` of a language's folder gives. */
function nameOf(id: Language, part = ""): string {
  const { inEnglish } = languages[id];
  return `${inEnglish[0]?.toLowerCase()}${inEnglish.slice(1).replaceAll(" ", "")}${part}`;
}

/** Every such file with its text. */
export const wordsInEveryLanguage = (): Map<string, string> =>
  new Map([
    [
      `${folder}/page.ts`,
      atOnce({
        says: "The workbook page around its grid; what the pane says is larger, and fetched with the pane.",
        file: "page",
        part: "Page",
        type: ["PageWords", "page"],
        name: "pageWordsIn",
      }),
    ],
    [
      `${folder}/commands.ts`,
      atOnce({
        says: "What the commands say.",
        file: "commands",
        part: "Commands",
        type: ["CommandWords", "commands"],
        name: "commandWordsIn",
      }),
    ],
    [
      `${folder}/samples.ts`,
      atOnce({
        says: "What the sample workbooks say.",
        file: "samples/samples",
        part: "Samples",
        type: ["SampleWords", "samples"],
        name: "sampleWordsIn",
      }),
    ],
    [`${folder}/messages.ts`, messages()],
    [`${folder}/phone.ts`, phone()],
    ["src/pages/workbook/sample-files.ts", sampleFiles()],
  ]);

interface Part {
  readonly says: string;
  /** In the folder of a language. */
  readonly file: string;
  /** Behind the language, in the name of what the file gives. */
  readonly part: string;
  /** What all of them are, and where that is said. */
  readonly type: readonly [name: string, file: string];
  readonly name: string;
}

/** What is there from the beginning in every language. */
function atOnce({ says, file, part, type: [type, of], name }: Part): string {
  const imports = languageIds.map((id) => [`../${id}/${file}`, `{ ${nameOf(id, part)} }`] as const);
  return [
    `/** ${says} ${written} */`,
    ...importing([...imports, ["../languages", "type { Language }"], [`../${of}`, `type { ${type} }`]]),
    "",
    `export const ${name}: Readonly<Record<Language, ${type}>> = {`,
    ...languageIds.map((id) => `  ${id}: ${nameOf(id, part)},`),
    "};\n",
  ].join("\n");
}

const messages = (): string =>
  [
    `/** What the pane says. The first language stands in for others, whose words are fetched when they are spoken. ${written} */`,
    ...importing([
      [`../${first}/messages`, `{ ${nameOf(first)} }`],
      ["../languages", "type { Language }"],
      ["../messages", "type { Messages }"],
    ]),
    "",
    "/** What is there from the beginning. */",
    `export const firstMessages: Messages = ${nameOf(first)};`,
    "",
    "export const messagesIn: Readonly<Record<Language, () => Promise<Messages>>> = {",
    `  ${first}: async () => firstMessages,`,
    ...others.map((id) => `  ${id}: () => ${fetched(id, "messages", nameOf(id))},`),
    "};\n",
  ].join("\n");

const phone = (): string =>
  [
    `/** What the phone page says. The first language stands in for others, whose words are fetched when they are spoken. ${written} */`,
    ...importing([
      [`../${first}/messages`, `{ ${nameOf(first)} }`],
      [`../${first}/phone`, `{ ${nameOf(first, "Phone")} }`],
      ["../languages", "type { Language }"],
      ["../phone-speech", "{ type PhoneSpeech, phoneSpeech }"],
    ]),
    "",
    "/** What is there from the beginning. */",
    `export const firstPhone: PhoneSpeech = { messages: ${nameOf(first)}, phone: ${nameOf(first, "Phone")} };`,
    "",
    "export const phoneIn: Readonly<Record<Language, () => Promise<PhoneSpeech>>> = {",
    `  ${first}: async () => firstPhone,`,
    ...others.flatMap((id) => [
      `  ${id}: () =>`,
      "    phoneSpeech(",
      `      ${fetched(id, "pane-words", nameOf(id, "PaneWords"))},`,
      `      ${fetched(id, "phone", nameOf(id, "Phone"))},`,
      "    ),",
    ]),
    "};\n",
  ].join("\n");

/** The build puts each file there as ready data (build/bundle-pages.ts). */
const sampleFiles = (): string =>
  [
    `/** Where the workbook page finds its samples. ${written} */`,
    ...importing([
      ["../../words/languages", "type { Language }"],
      ["../../words/page", "type { SampleKey }"],
    ]),
    "",
    "export const sampleFiles: Readonly<Record<SampleKey, Readonly<Record<Language, URL>>>> = {",
    ...sampleKeys.flatMap((key) => [
      `  ${/^\w+$/.test(key) ? key : JSON.stringify(key)}: {`,
      ...languageIds.map((id) => {
        const file = `${id === first ? "" : `${id}/`}${key}.xlsx`;
        return `    ${id}: new URL("../../../sample-workbooks/${file}", import.meta.url),`;
      }),
      "  },",
    ]),
    "};\n",
  ].join("\n");

const written = "Written by npm run generate.";

const importing = (imports: readonly (readonly [from: string, what: string])[]): string[] =>
  [...imports]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([from, what]) => `import ${what} from ${JSON.stringify(from)};`);

const fetched = (id: Language, file: string, name: string): string =>
  `import(${JSON.stringify(`../${id}/${file}`)}).then(({ ${name} }) => ${name})`;
