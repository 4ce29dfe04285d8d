import { expect, test } from "vitest";
import { checksumOf, writeInto } from "../../../src/pages/workbook/file-access";
import { englishPage } from "../../../src/words/en/page";
import { chinesePage } from "../../../src/words/zh/page";

const before = new Uint8Array([1, 2, 3]);

/** A file on a disk where writing, or closing what was written, ends so. */
const fileThat = (fails: "write" | "close" | "never", name: string) => {
  const file = { isLeft: false, handle: {} as FileSystemFileHandle };
  const ending = (step: "write" | "close") => async () => {
    if (fails === step) throw new DOMException("as the browser says", name);
  };
  const createWritable = async () => {
    file.isLeft = true;
    const abort = async () => {
      file.isLeft = false;
    };
    return { write: ending("write"), close: ending("close"), abort };
  };
  file.handle = { getFile: async () => new Blob([before]), createWritable } as unknown as FileSystemFileHandle;
  return file;
};

test.each(["write", "close"] as const)("a full disk is told from what is not allowed, at %s", async (step) => {
  const checksum = await checksumOf(before);
  for (const [name, written] of [
    ["QuotaExceededError", "no room"],
    ["NotAllowedError", "not allowed"],
    ["NotFoundError", "gone"],
  ] as const) {
    const file = fileThat(step, name);
    expect(await writeInto(file.handle, new Uint8Array([4]), checksum)).toBe(written);
    expect(file.isLeft).toBe(false);
  }
  expect(await writeInto(fileThat("never", "").handle, new Uint8Array([4]), checksum)).toBe("written");
  expect(await writeInto(fileThat("never", "").handle, new Uint8Array([4]), "another")).toBe("changed");
});

test("a full disk is said in every language", () => {
  for (const { ownFile } of [englishPage, chinesePage]) {
    const said = (["not allowed", "no room", "changed", "gone"] as const).map((why) => ownFile.notInto("a.xlsx", why));
    expect(new Set(said).size).toBe(4);
  }
  expect(englishPage.ownFile.notInto("a.xlsx", "no room")).toContain("no room left on the disk");
});
