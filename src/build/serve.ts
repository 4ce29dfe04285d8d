import { createReadStream } from "node:fs";
import { readFile, stat } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { join, resolve, sep } from "node:path";
import { promisify } from "node:util";
import { brotliCompress, constants } from "node:zlib";
import { phoneFolder } from "./folders";
import { kindOf } from "./kinds-of-files";
import { pagePolicy, phonePolicy } from "./page-policy";

/** Only this computer can reach the page. */
const host = "127.0.0.1";

/** Tells a page of our own from another program at the same port. */
export const serverName = "tea-mass-balance";

/** The bundler writes a hash of the content into the name: the browser may keep the file, and what it compiled of it. */
const isNamedByContent = /\.(?:[0-9a-f]{8}|[0-9A-Z]{8})\.\w+$/;

/**
 * Serves the files of a folder at the port; port 0 takes any that is free. Rejects when the port is taken. Without a
 * policy the workbook page has its own, and so has the phone page under it; with an empty one, each page goes by what it
 * says itself, as on a static host. The path, with a slash at both ends, is where on the host the folder lies.
 */
export function serve(
  folder: string,
  port: number,
  policy?: string,
  path = "/",
): Promise<{ server: Server; address: string }> {
  const server = createServer((request, response) => {
    answer({ folder, policy, path }, request, response).catch((problem: unknown) => {
      console.error(problem);
      if (!response.headersSent) response.writeHead(500);
      response.end();
    });
  });
  return new Promise((done, failed) => {
    server.once("error", failed);
    server.listen(port, host, () =>
      done({ server, address: new URL(path, addressAt((server.address() as AddressInfo).port)).href }),
    );
  });
}

export const addressAt = (port: number): string => `http://${host}:${port}/`;

interface Served {
  readonly folder: string;
  /** Of every page; absent, each of ours has its own. */
  readonly policy: string | undefined;
  readonly path: string;
}

async function answer(
  { folder, policy, path }: Served,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  if (request.method !== "GET" && request.method !== "HEAD") return refuse(response, 405, "only reading is possible");
  const url = request.url ?? "/";
  const file = url.startsWith(path) ? await fileFor(folder, url.slice(path.length - 1)) : undefined;
  if (file === undefined) return refuse(response, 404, "there is no such page");
  const packed = /\bbr\b/.test(String(request.headers["accept-encoding"])) ? await compressed(file.path) : undefined;
  const counts = policy ?? (url.startsWith(`${path}${phoneFolder}/`) ? phonePolicy : pagePolicy);
  response.writeHead(200, {
    "content-type": kindOf(file.path) ?? "application/octet-stream",
    "content-length": packed?.length ?? file.size,
    ...(isWorthCompressing(file.path) && { vary: "accept-encoding" }),
    ...(packed && { "content-encoding": "br" }),
    ...(counts !== "" && { "content-security-policy": counts }),
    "cache-control": isNamedByContent.test(file.path) ? "max-age=31536000, immutable" : "no-cache",
    "referrer-policy": "no-referrer",
    "x-content-type-options": "nosniff",
    server: serverName,
  });
  if (request.method === "HEAD") response.end();
  else if (packed) response.end(packed);
  else createReadStream(file.path).pipe(response);
}

const compressing = new Map<string, Promise<Buffer>>();

const isWorthCompressing = (path: string): boolean =>
  isNamedByContent.test(path) && /\.(?:css|js|json|svg|wasm)$/.test(path);

/** Compressed once and kept, as its name says that it stays as it is; undefined for what is not worth it. */
function compressed(path: string): Promise<Buffer> | undefined {
  if (!isWorthCompressing(path)) return undefined;
  let packed = compressing.get(path);
  if (!packed) {
    // A third larger than at the best quality, and fifty times as fast.
    const options = { params: { [constants.BROTLI_PARAM_QUALITY]: 5 } };
    packed = readFile(path).then((content) => promisify(brotliCompress)(content, options));
    packed.catch(() => compressing.delete(path));
    compressing.set(path, packed);
  }
  return packed;
}

/** The file that an address names; undefined when there is none inside the folder. */
async function fileFor(folder: string, url: string): Promise<{ path: string; size: number } | undefined> {
  const root = resolve(folder);
  let name: string;
  try {
    name = decodeURIComponent(url.replace(/[?#].*$/s, ""));
  } catch {
    return undefined;
  }
  const path = resolve(join(root, name.endsWith("/") ? `${name}index.html` : name));
  if (name.includes("\0") || !path.startsWith(root + sep)) return undefined;
  const found = await stat(path).catch(() => undefined);
  return found?.isFile() ? { path, size: found.size } : undefined;
}

function refuse(response: ServerResponse, status: number, reason: string): void {
  response.writeHead(status, { "content-type": "text/plain; charset=utf-8", server: serverName });
  response.end(`${reason}\n`);
}
