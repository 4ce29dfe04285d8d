import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { get, type Server } from "node:https";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildAddIn, localOrigin, manifestFor } from "../../src/build/add-in";
import { localCertificate } from "../../src/build/certificate";
import { serveAddIn } from "../../src/build/serve-add-in";
import { catalogue } from "../../src/core/catalogue";
import { mostFunctionsBytes } from "../../src/generate/size-limit";
import { addressesIn, manifestProblems } from "../../src/release/manifest-problems";
import { chineseTexts } from "../../src/words/zh/function-texts";
import { parseXml } from "../../src/xlsx/container/xml-tree";

const origin = "https://example.org/tea";
const workplace = mkdtempSync(join(tmpdir(), "tea-build-"));
const folder = join(workplace, "dist");
const text = (path: string): string => readFileSync(join(folder, path), "utf8");
const addresses = (manifest: string): string[] =>
  [...manifest.matchAll(/DefaultValue="(https:[^"]*)"/g)].map((match) => match[1] as string);

let packages: readonly string[];

beforeAll(async () => {
  packages = await buildAddIn({ origin, folder });
});
afterAll(() => rmSync(workplace, { recursive: true, force: true }));

describe("the script that Excel loads before the first cell resolves", () => {
  test("ships none of what explains a function", () => {
    const script = text("functions.js");
    for (const { page } of catalogue) {
      const explains = [
        page.summary,
        page.formula,
        ...page.guide,
        ...Object.values(page.parameters).filter((meaning) => meaning.length > 12),
        ...page.sources.flatMap(({ work }) => [work.authors, work.title]),
        ...page.cautions.flatMap((caution) => [caution.title, caution.text]),
        ...page.examples.map(({ shows }) => shows),
      ];
      expect(explains.filter((words) => script.includes(words))).toEqual([]);
    }
    const texts = Object.entries(chineseTexts).filter(([english]) => english.length > 12);
    expect(texts.flat().filter((words) => script.includes(words))).toEqual([]);
  });

  test("stays within its size", () => {
    expect(gzipSync(text("functions.js"), { level: 9 }).length).toBeLessThanOrEqual(mostFunctionsBytes);
  });

  test("calls nothing and touches no page", () => {
    expect(text("functions.js")).not.toMatch(
      /\b(fetch|XMLHttpRequest|WebSocket|sendBeacon|importScripts|document|window|localStorage|eval)\b/,
    );
  });

  test("needs nothing but CustomFunctions, and associates every function of functions.json", () => {
    const associated = new Map<string, (...given: unknown[]) => unknown>();
    const context = createContext({
      CustomFunctions: { associate: (id: string, call: () => unknown) => associated.set(id, call) },
    });
    runInContext(text("functions.js"), context);
    const ids = (JSON.parse(text("functions.json")) as { functions: { id: string }[] }).functions.map(({ id }) => id);
    expect([...associated.keys()]).toEqual(ids);
    const answer = associated.get("TARGETWEIGHT")?.([[320]], [[0.75]], [[0.6]], {});
    expect(JSON.parse(JSON.stringify(answer))).toEqual([[expect.closeTo(200, 9)]]);
  });
});

describe("the manifest", () => {
  const manifest = readFileSync("manifest.xml", "utf8");

  test("stands at the root for the local server and in a build for its host", () => {
    expect(addresses(manifest).every((address) => address.startsWith(`${localOrigin}/`))).toBe(true);
    expect(text("manifest.xml")).toBe(manifestFor(origin));
    expect(text("manifest.xml")).not.toContain("localhost");
  });

  test("takes an address with letters that XML or a replacement would read", () => {
    const odd = "https://example.org/leaf&bud/$&/it's";
    const named = addressesIn(parseXml(manifestFor(odd)));
    expect(named).toHaveLength(addresses(manifest).length);
    expect(named.filter((address) => !address.startsWith(`${odd}/`))).toEqual([]);
  });

  test("has no problem that a release looks for", () => {
    const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
    expect(manifestProblems(text("manifest.xml"), { version, origin, folder })).toEqual([]);
    expect(addresses(manifest).length).toBeGreaterThan(8);
  });

  test("holds what Excel asks for", () => {
    expect(manifest).toContain('<DisplayName DefaultValue="Tea Mass Balance"/>');
    expect(manifest).toContain("<DefaultLocale>en-US</DefaultLocale>");
    expect(manifest).toContain('<Host Name="Workbook"/>');
    for (const part of ["Script", "Page", "Metadata"]) {
      expect(manifest).toMatch(new RegExp(`<${part}>\\s*<SourceLocation resid="Functions.${part}"/>`));
    }
  });
});

describe("the pages", () => {
  const pages = () =>
    readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".html"));

  test("run no script but their own and Microsoft's, under a policy that allows no other", () => {
    expect(pages().length).toBeGreaterThan(catalogue.length + 2);
    for (const name of pages()) {
      const page = text(name);
      expect(page, name).toMatch(/Content-Security-Policy/);
      expect(page, name).not.toMatch(/unsafe-|<style|<script>| on\w+=| style=/);
      for (const [, address] of page.matchAll(/(?:src|href)="?([^"\s>]+)/g)) {
        if (address === "data:," || address?.startsWith("https://appsforoffice.microsoft.com/")) continue;
        expect(
          existsSync(join(folder, name, "..", (address as string).split("#")[0] as string)),
          `${address} in ${name}`,
        ).toBe(true);
      }
    }
  });

  test("stand where functions.json sends the reader for help", () => {
    const { functions } = JSON.parse(text("functions.json")) as { functions: { id: string; helpUrl: string }[] };
    for (const { id, helpUrl } of functions) {
      expect(helpUrl.startsWith(`${origin}/docs/functions/`)).toBe(true);
      expect(text(helpUrl.slice(origin.length + 1))).toContain(`<h1>TEA.${id}</h1>`);
    }
  });

  test("come with the licence", () => {
    expect(text("LICENSE")).toBe(readFileSync("LICENSE", "utf8"));
  });
});

test("a build names the packages that it holds code of", () => {
  // The bundler makes one module of the last two and many others.
  expect(packages).toEqual(
    expect.arrayContaining(["react-dom", "d3-array", "@observablehq/plot"].map((name) => `node_modules/${name}`)),
  );
  // Taken for types alone, and for other pages.
  for (const other of ["exceljs", "@types/office-js", "terser"])
    expect(packages).not.toContain(`node_modules/${other}`);
});

describe("the local server", () => {
  let server: Server;
  let authority: Buffer;
  const certificates = join(workplace, "certificate");

  beforeAll(async () => {
    const certificate = await localCertificate(certificates);
    authority = readFileSync(certificate.authorityFile);
    server = await serveAddIn(folder, certificate, 0);
  });
  afterAll(() => server.close());

  /** As a system that trusts the authority: a wrong certificate fails. */
  const request = (path: string) =>
    new Promise<Record<"status" | "type" | "origin", string | number | undefined> & { body: string }>(
      (done, failed) => {
        const { port } = server.address() as AddressInfo;
        get({ host: "localhost", port, path, ca: authority, agent: false }, (response) => {
          const parts: Buffer[] = [];
          response.on("data", (part: Buffer) => parts.push(part));
          response.on("end", () =>
            done({
              status: response.statusCode,
              type: response.headers["content-type"],
              origin: response.headers["access-control-allow-origin"],
              body: Buffer.concat(parts).toString("utf8"),
            }),
          );
        }).on("error", failed);
      },
    );

  test("serves every address of the manifest over https that a system can be told to trust", async () => {
    for (const address of addresses(readFileSync("manifest.xml", "utf8"))) {
      const answer = await request(new URL(address).pathname);
      expect(answer.status, address).toBe(200);
      expect(answer.body.length, address).toBeGreaterThan(0);
    }
  });

  test("lets Excel on the web read the list of functions", async () => {
    const answer = await request("/functions.json");
    expect([answer.type, answer.origin]).toEqual(["application/json; charset=utf-8", "*"]);
  });

  test("serves nothing beside the build", async () => {
    for (const path of ["/../certificate/localhost.key", "/%2e%2e/certificate/localhost.key", "/nothing.html"]) {
      expect((await request(path)).status, path).toBe(404);
    }
  });

  test("keeps its certificate, and keeps no key that could sign another", async () => {
    const again = await localCertificate(certificates);
    expect(readFileSync(again.authorityFile)).toEqual(authority);
    const keys = readdirSync(certificates).filter((name) =>
      /PRIVATE KEY/.test(readFileSync(join(certificates, name), "utf8")),
    );
    expect(keys).toEqual(["localhost.key"]);
  });
});
