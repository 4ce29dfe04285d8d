import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { get, type Server } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { serve } from "../../src/build/serve";

let folder: string;
let server: Server;
let address: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "served-"));
  await mkdir(join(folder, "page"));
  await writeFile(join(folder, "secret.txt"), "not for the page");
  await writeFile(join(folder, "page", "index.html"), "<p>the page</p>");
  await writeFile(join(folder, "page", "part.wasm"), "");
  ({ server, address } = await serve(join(folder, "page"), 0));
});

afterAll(async () => {
  server.close();
  await rm(folder, { recursive: true });
});

test("serves a folder's page with its policy", async () => {
  const response = await fetch(address);
  expect(await response.text()).toBe("<p>the page</p>");
  expect(response.headers.get("content-type")).toBe("text/html; charset=utf-8");
  const policy = response.headers.get("content-security-policy");
  expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval';");
  expect(policy).toContain("connect-src 'self'");
});

test("gives the phone page a policy of its own, for its manifest and its worker", async () => {
  await mkdir(join(folder, "page", "phone"));
  await writeFile(join(folder, "page", "phone", "index.html"), "<p>the phone page</p>");
  await writeFile(join(folder, "page", "phone", "phone.webmanifest"), "{}");
  const policy = (await fetch(`${address}phone/`)).headers.get("content-security-policy");
  expect(policy).toContain("manifest-src 'self'; worker-src 'self'");
  expect((await fetch(address)).headers.get("content-security-policy")).not.toContain("manifest-src");
  const given = await serve(join(folder, "page"), 0, "default-src 'none'");
  for (const path of ["", "phone/"]) {
    const { headers } = await fetch(`${given.address}${path}`);
    expect(headers.get("content-security-policy")).toBe("default-src 'none'");
  }
  given.server.close();
  const manifest = await fetch(`${address}phone/phone.webmanifest`);
  expect(manifest.headers.get("content-type")).toBe("application/manifest+json");
});

test("names what a compiled part is", async () => {
  expect((await fetch(`${address}part.wasm`)).headers.get("content-type")).toBe("application/wasm");
});

test("compresses a script that its content names, and lets the browser keep it for good", async () => {
  const script = "weigh(leaf);\n".repeat(1000);
  await writeFile(join(folder, "page", "page.A1B2C3D4.js"), script);
  const response = await fetch(`${address}page.A1B2C3D4.js`, { headers: { "accept-encoding": "br" } });
  expect(response.headers.get("content-encoding")).toBe("br");
  expect(response.headers.get("cache-control")).toBe("max-age=31536000, immutable");
  expect(Number(response.headers.get("content-length"))).toBeLessThan(script.length / 10);
  expect(await response.text()).toBe(script);
  const plain = await fetch(`${address}page.A1B2C3D4.js`, { headers: { "accept-encoding": "identity" } });
  expect(plain.headers.get("content-encoding")).toBe(null);
  expect(await plain.text()).toBe(script);
});

test("asks anew for a page, which may be another one tomorrow", async () => {
  const response = await fetch(address);
  expect(response.headers.get("cache-control")).toBe("no-cache");
  expect(response.headers.get("content-encoding")).toBe(null);
});

test("serves a folder under the path that it will have on its host, and nothing beside it", async () => {
  const inside = await serve(join(folder, "page"), 0, "", "/tea/farm/");
  expect(new URL(inside.address).pathname).toBe("/tea/farm/");
  expect(await (await fetch(inside.address)).text()).toBe("<p>the page</p>");
  for (const path of ["/", "/index.html", "/tea/index.html", "/tea/farms/index.html"]) {
    expect((await fetch(new URL(path, inside.address))).status, path).toBe(404);
  }
  inside.server.close();
});

// fetch() would tidy these addresses up before it asks.
test.each([
  "/../secret.txt",
  "/%2e%2e/secret.txt",
  "/..%2fsecret.txt",
  "/..%5csecret.txt",
  "//etc/passwd",
  "/%00",
  "/%",
  "/nothing",
])("%s leads nowhere", async (path) => {
  const status = await new Promise((done) => get(address, { path }, (response) => done(response.statusCode)));
  expect(status).toBe(404);
});

test("nothing can be sent", async () => {
  expect((await fetch(address, { method: "POST", body: "x" })).status).toBe(405);
});

test("a port that is taken is refused", async () => {
  const port = Number(new URL(address).port);
  await expect(serve(folder, port)).rejects.toMatchObject({ code: "EADDRINUSE" });
});
