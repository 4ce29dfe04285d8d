/**
 * Draws the icons, a leaf on a balance beam, and writes them beside the pages inside Excel and the phone page:
 * `npx tsx src/build/draw-icons.ts`. Office takes pictures as PNG only, in these sizes.
 */
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { crc32, deflateSync } from "node:zlib";

/** In pixels, as Office asks for them. */
export const iconSizes = [16, 32, 64, 80] as const;

/** Those that the phone page is installed with. Phones cut them to shapes of their own: the drawing keeps to the middle. */
export const phoneIconSizes = [180, 192, 512] as const;

type Colour = readonly [red: number, green: number, blue: number];
const leafGreen: Colour = [62, 124, 66];
const paleGreen: Colour = [226, 240, 217];
const beamBrown: Colour = [122, 84, 48];

/** A leaf is where two discs overlap; it has an axis of its own, which leans to the right. */
const [middleX, middleY, lean] = [0.5, 0.37, Math.PI / 3.4];
const [sine, cosine] = [Math.sin(lean), Math.cos(lean)];
const [radius, offset] = [0.46, 0.24];

/** The colour at a point of the unit square, or undefined where the icon is clear. */
function colourAt(x: number, y: number): Colour | undefined {
  // Around it lies most of an icon of the phone page.
  if (x < 0 || x > 1 || y < 0 || y > 1) return undefined;
  if (insideBeam(x, y)) return beamBrown;
  const along = (x - middleX) * cosine - (y - middleY) * sine;
  const across = (x - middleX) * sine + (y - middleY) * cosine;
  // What lies in the farther disc lies in both.
  const fromFarther = Math.abs(across) + offset;
  if (along * along + fromFarther * fromFarther >= radius * radius) return undefined;
  return Math.abs(across) < 0.025 && along < 0.3 ? paleGreen : leafGreen;
}

function insideBeam(x: number, y: number): boolean {
  const beam = y > 0.76 && y < 0.84 && x > 0.06 && x < 0.94;
  const foot = y >= 0.84 && y < 0.97 && Math.abs(x - 0.5) < 0.06 + (y - 0.84) * 1.1;
  return beam || foot;
}

const paper: Colour = [247, 250, 243];

/** The same on a ground without holes, in the part that is left of it whatever shape it is cut to. */
function colourOnPhone(x: number, y: number): Colour {
  const inMiddle = (place: number): number => 0.5 + (place - 0.5) / 0.62;
  return colourAt(inMiddle(x), inMiddle(y)) ?? paper;
}

export const iconPixels = (size: number): Uint8Array => pixelsOf(size, colourAt);
export const phoneIconPixels = (size: number): Uint8Array => pixelsOf(size, colourOnPhone);

/** Red, green, blue and opacity of every pixel, each the mean of 8 × 8 points. */
function pixelsOf(size: number, colourOf: (x: number, y: number) => Colour | undefined): Uint8Array {
  const points = 8;
  const pixels = new Uint8Array(size * size * 4);
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column < size; column += 1) {
      let [red, green, blue, covered] = [0, 0, 0, 0];
      for (let point = 0; point < points * points; point += 1) {
        const x = (column + ((point % points) + 0.5) / points) / size;
        const y = (row + (Math.floor(point / points) + 0.5) / points) / size;
        const colour = colourOf(x, y);
        if (colour === undefined) continue;
        covered += 1;
        red += colour[0];
        green += colour[1];
        blue += colour[2];
      }
      const mean = [red, green, blue].map((part) => (covered === 0 ? 0 : Math.round(part / covered)));
      pixels.set([...mean, Math.round((255 * covered) / (points * points))], (row * size + column) * 4);
    }
  }
  return pixels;
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
}

/** PNG, 8 bits a channel with opacity, no filters. */
function png(size: number, pixels: Uint8Array): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  header.set([8, 6, 0, 0, 0], 8);
  const lines = Array.from({ length: size }, (_, row) =>
    Buffer.concat([Buffer.from([0]), pixels.subarray(row * size * 4, (row + 1) * size * 4)]),
  );
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", header),
    chunk("IDAT", deflateSync(Buffer.concat(lines), { level: 9 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const write = (page: string, size: number, pixels: Uint8Array): void =>
    writeFileSync(
      fileURLToPath(new URL(`../pages/${page}/icons/icon-${size}.png`, import.meta.url)),
      png(size, pixels),
    );
  for (const size of iconSizes) write("excel", size, iconPixels(size));
  for (const size of phoneIconSizes) write("phone", size, phoneIconPixels(size));
}
