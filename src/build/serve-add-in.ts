import { readFileSync } from "node:fs";
import { createServer, type Server } from "node:https";
import { join } from "node:path";
import type { Certificate } from "./certificate";
import { filesIn } from "./folders";
import { kindOf } from "./kinds-of-files";

/**
 * Serves a built add-in over https to this computer alone. The files are read once: an address that is no file of
 * the build cannot lead anywhere else. Excel on the web reads them from another site, which has to be allowed.
 */
export function serveAddIn(folder: string, { key, chain }: Certificate, port: number): Promise<Server> {
  const files = new Map<string, Buffer>(filesIn(folder).map((path) => [`/${path}`, readFileSync(join(folder, path))]));
  const server = createServer({ key, cert: chain }, (request, response) => {
    const headers = {
      "access-control-allow-origin": "*",
      "access-control-allow-private-network": "true",
      "cache-control": "no-cache",
      "x-content-type-options": "nosniff",
    };
    if (request.method === "OPTIONS") return void response.writeHead(204, headers).end();
    const path = new URL(request.url ?? "/", "https://localhost").pathname;
    const body = files.get(path);
    if (body === undefined) return void response.writeHead(404, headers).end("There is no such page.\n");
    response.writeHead(200, { ...headers, "content-type": kindOf(path) ?? "text/plain; charset=utf-8" });
    response.end(request.method === "HEAD" ? undefined : body);
  });
  return new Promise((done, failed) => {
    server.once("error", failed);
    // Names of this computer only: nobody else on the network can reach it.
    server.listen(port, "localhost", () => done(server));
  });
}
