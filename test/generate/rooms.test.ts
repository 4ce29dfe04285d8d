import { describe, expect, test } from "vitest";
import { packagesImportedBy, type Room, roomsImportedBy } from "../../src/generate/rooms";
import { roomsPicture } from "../../src/generate/rooms-picture";

const room = (name: string, ...imports: string[]): Room => ({
  name,
  references: [],
  packages: [],
  mayName: { page: false, node: name === "attic", worker: false },
  files: [{ path: `${name}/file.ts`, room: name, text: "", imports }],
});

const cellar = room("cellar", "some-package/part", "@some/package/part", "node:fs", "./other");
const kitchen = room("kitchen", "../cellar/file");
const stove = room("kitchen/stove", "../file", "../../cellar/file");
const attic = room("attic", "../kitchen/stove/file", "../cellar/file");
const house = [attic, cellar, kitchen, stove];

describe("the rooms", () => {
  test("are the innermost that an import leads into, and never a file's own", () => {
    expect(house.map(({ files }) => files.flatMap((file) => roomsImportedBy(file, house)))).toEqual([
      ["kitchen/stove", "cellar"],
      [],
      ["cellar"],
      ["kitchen", "cellar"],
    ]);
  });

  test("take packages by their name, whichever part of them", () => {
    expect(cellar.files.flatMap(packagesImportedBy)).toEqual(["some-package", "@some/package"]);
  });
});

describe("their picture", () => {
  test("has a box for each and the arrows that do not follow from others", () => {
    const picture = roomsPicture(house);
    for (const { name } of house) expect(picture).toContain(`>${name}</text>`);
    // Down the stairs: attic, stove, kitchen, cellar.
    expect(picture.match(/marker-end/g)?.length).toBe(3);
    expect(picture.match(/names Node/g)?.length).toBe(1);
  });

  test("leads an arrow past the rooms between", () => {
    const picture = roomsPicture([room("attic", "../kitchen/file", "../shed/file"), kitchen, cellar, room("shed")]);
    expect(picture.match(/marker-end/g)?.length).toBe(3);
    expect(picture.match(/<path d="M[^"]* V\d+"/g)?.length).toBe(1);
  });

  test("is refused where rooms import in a circle", () => {
    expect(() => roomsPicture([room("cellar", "../kitchen/file"), kitchen])).toThrow("cellar → kitchen → cellar");
  });
});
