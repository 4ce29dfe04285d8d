import { afterAll, expect, test, vi } from "vitest";
import type { pageWordsIn } from "../../../src/words/in-every-language/page";

let language: keyof typeof pageWordsIn = "zh";
const settings = "../../../src/pane/settings";
const [reading, show, leaving] = ["reading", "show", "leave-page"].map((file) => `../../../src/pages/workbook/${file}`);

/** The thread that reads, in this one: what it is sent, and what it sends back. */
let read: (event: { data: Uint8Array }) => void = () => undefined;
const answers: unknown[] = [];
vi.stubGlobal("addEventListener", (_: string, listener: typeof read) => {
  read = listener;
});
vi.stubGlobal("postMessage", (answer: unknown) => answers.push(structuredClone(answer)));

const said: string[] = [];
vi.doMock(settings, () => ({ keptSettings: { read: () => ({ language }) } }));
vi.doMock(String(leaving), () => ({ canLeave: async () => true }));
vi.doMock(String(show), () => ({ showStatus: (text: string) => said.push(text), showWaiting: () => () => undefined }));
vi.doMock(String(reading), () => ({
  readElsewhere: async (data: Uint8Array) => {
    read({ data });
    return answers.pop();
  },
}));

afterAll(() => {
  for (const path of [settings, leaving, show, reading]) vi.doUnmock(String(path));
  vi.unstubAllGlobals();
  vi.resetModules();
});

test.each([
  ["zh", "没有打开“春.xlsx”。文件已损坏：缺少结尾。请从原处重新复制，或在制作它的程序中打开并保存一次。"],
  [
    "en",
    "“春.xlsx” was not opened. The file is damaged: its end is missing. Copy it again from where it came, or open and save it once in the program that made it.",
  ],
] as const)("a broken file is refused in the language that is spoken: %s", async (spoken, sentence) => {
  language = spoken;
  // The page's words remember which language is spoken.
  vi.resetModules();
  await import("../../../src/pages/workbook/reading-worker");
  const { openOwn } = await import("../../../src/pages/workbook/own-file");
  const broken = new File([new Uint8Array([0x50, 0x4b, 3, 4, 0, 0])], "春.xlsx");
  await openOwn({ file: broken }, async () => undefined);
  expect(said).toEqual([sentence]);
  said.length = 0;
});
