import { readFileSync } from "node:fs";
import { inflateSync } from "node:zlib";
import { expect, test } from "vitest";
import { iconPixels, iconSizes, phoneIconPixels, phoneIconSizes } from "../../src/build/draw-icons";

/** The pixels of a picture as draw-icons writes it: one part of data, lines without filters. */
function pixelsOf(png: Buffer, size: number): number[] {
  const start = png.indexOf("IDAT");
  const lines = inflateSync(png.subarray(start + 4, start + 4 + png.readUInt32BE(start - 4)));
  const line = size * 4 + 1;
  return Array.from({ length: size }, (_, row) => [...lines.subarray(row * line + 1, (row + 1) * line)]).flat();
}

test.each(iconSizes)("the icon of %i pixels is the one that the script draws", (size) => {
  const png = readFileSync(`src/pages/excel/icons/icon-${size}.png`);
  expect(pixelsOf(png, size)).toEqual([...iconPixels(size)]);
});

test.each(phoneIconSizes)(
  "the phone page's icon of %i pixels is the one that the script draws, without a hole",
  (size) => {
    const png = readFileSync(`src/pages/phone/icons/icon-${size}.png`);
    const drawn = phoneIconPixels(size);
    expect(Buffer.from(pixelsOf(png, size)).equals(Buffer.from(drawn))).toBe(true);
    expect(drawn.filter((_, index) => index % 4 === 3).every((opacity) => opacity === 255)).toBe(true);
  },
);
