import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { mkdir } from "node:fs/promises";
import { homedir } from "node:os";
import { delimiter, join, resolve } from "node:path";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";

/** What a user would install; also said in the README. */
const advice =
  "No browser was found for the browser tests: install Chromium, Chrome or Edge, or name one in CHROME_PATH " +
  "(on Debian and Ubuntu: apt-get install chromium).";

const flags = [
  "--headless",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost",
];

interface FoundBrowser {
  readonly path: string;
  readonly environment?: Readonly<Record<string, string>>;
}

/**
 * The browser that the tests drive; undefined when there is none, which a line on the screen says. Where every test
 * has to run (CI=true) that is an error instead.
 */
export async function findBrowser(): Promise<FoundBrowser | undefined> {
  const { CHROME_PATH, CI } = process.env;
  if (CHROME_PATH) return { path: CHROME_PATH };
  const installed = installedBrowsers().find(existsSync);
  if (installed) return { path: installed };
  const fetched = await fetchedBrowser();
  if (fetched) return fetched;
  if (CI === "true") throw new Error(advice);
  console.warn(advice);
  return undefined;
}

/**
 * Opens the browser. Its pages may ask this computer, and the origins that a test names because it answers for them
 * itself; whatever else a page asks for makes the closing of its visit fail, and so the test. No name but this
 * computer's leads anywhere, so that nothing is asked of the network even by mistake.
 */
export async function openBrowser(found: FoundBrowser, answered: readonly string[] = []): Promise<Browser> {
  const browser = await chromium.launch(launchOptions(found));
  policeRequests(browser, answered);
  return browser;
}

/** The same with the folder of a visitor, where it keeps what it has fetched and compiled until the next visit. */
export async function openProfile(found: FoundBrowser, folder: string): Promise<BrowserContext> {
  const visitor = await chromium.launchPersistentContext(folder, {
    ...launchOptions(found),
    viewport: { width: 1280, height: 800 },
  });
  policeVisitor(visitor, [], () => undefined);
  return visitor;
}

function launchOptions({ path, environment }: FoundBrowser) {
  // The sandbox does not work for root, which is who runs tests in a container.
  const asRoot = process.getuid?.() === 0;
  return {
    executablePath: path,
    args: asRoot ? [...flags, "--no-sandbox"] : flags,
    chromiumSandbox: !asRoot,
    env: { ...process.env, ...environment } as Record<string, string>,
  };
}

/** What the pages of a visitor have asked for and may not. */
const strangersOf = new WeakMap<BrowserContext, string[]>();

/** Fails, as the closing of the visit would, when a page has asked for what it may not; the visitor may come again. */
export function endVisit(visitor: BrowserContext): void {
  failFor(strangersOf.get(visitor)?.splice(0) ?? []);
}

/** Leaves the page; nothing stays in the window of what it has kept there. */
export async function forget(page: Page, address: string): Promise<void> {
  await page.goto("about:blank");
  const session = await page.context().newCDPSession(page);
  await session.send("Storage.clearDataForOrigin", { origin: new URL(address).origin, storageTypes: "all" });
  await session.detach();
}

/** Makes the closing of a visit, and of the browser, fail when a page has asked for what it may not. */
function policeRequests(browser: Browser, answered: readonly string[]): void {
  const unreported = new Set<string[]>();
  browser.on("context", (context) => {
    const strangers = policeVisitor(context, answered, () => unreported.delete(strangers));
    unreported.add(strangers);
  });
  const close = browser.close.bind(browser);
  browser.close = async (options) => {
    await close(options);
    failFor([...unreported].flat());
  };
}

/** What it has asked for and may not; `reported` is called as the closing of the visit says so. */
function policeVisitor(context: BrowserContext, answered: readonly string[], reported: () => void): string[] {
  const strangers: string[] = [];
  strangersOf.set(context, strangers);
  context.on("request", (request) => {
    if (!isAllowed(request.url(), answered)) strangers.push(request.url());
  });
  // Named, but nobody answered for it in the test: it was on its way to the network.
  context.on("requestfailed", (request) => {
    if (request.failure()?.errorText.includes("ERR_NAME_NOT_RESOLVED")) strangers.push(request.url());
  });
  context.on("page", (page) => {
    page.on("websocket", (socket) => {
      if (!isAllowed(socket.url(), answered)) strangers.push(socket.url());
    });
  });
  const close = context.close.bind(context);
  context.close = async (options) => {
    await close(options);
    reported();
    failFor(strangers);
  };
  return strangers;
}

function failFor(strangers: readonly string[]): void {
  if (strangers.length > 0) throw new Error(`a page asked for what it may not: ${strangers.join(", ")}`);
}

/** What stands in the page itself, what is on this computer, and what the test answers for. */
function isAllowed(address: string, answered: readonly string[]): boolean {
  const { protocol, hostname, origin } = new URL(address);
  if (["data:", "blob:", "about:"].includes(protocol)) return true;
  return hostname === "127.0.0.1" || hostname === "localhost" || answered.includes(origin);
}

function installedBrowsers(): string[] {
  if (process.platform === "darwin") {
    const programs = ["Google Chrome", "Chromium", "Microsoft Edge"];
    return programs.flatMap((program) =>
      ["/Applications", join(homedir(), "Applications")].map((folder) =>
        join(folder, `${program}.app`, "Contents", "MacOS", program),
      ),
    );
  }
  if (process.platform === "win32") {
    const programs = ["Google\\Chrome\\Application\\chrome.exe", "Microsoft\\Edge\\Application\\msedge.exe"];
    const { ProgramFiles, LOCALAPPDATA } = process.env;
    const folders = [ProgramFiles, process.env["ProgramFiles(x86)"], LOCALAPPDATA].filter((folder) => folder);
    return programs.flatMap((program) => folders.map((folder) => join(folder as string, program)));
  }
  const programs = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge"];
  const folders = (process.env.PATH ?? "").split(delimiter).filter((folder) => folder);
  return programs.flatMap((program) => folders.map((folder) => join(folder, program)));
}

/** Made for bare Linux servers; it brings the libraries that they lack. */
const fetchedPackage = "@sparticuz/chromium@147.0.0";

/** On Linux a browser also comes as a package; it is fetched once, beside the installed packages. */
async function fetchedBrowser(): Promise<FoundBrowser | undefined> {
  if (process.platform !== "linux" || process.arch !== "x64") return undefined;
  const folder = resolve("node_modules/.cache/browser");
  const unpacked = join(folder, "unpacked");
  await mkdir(unpacked, { recursive: true });
  if (!existsSync(join(folder, "node_modules/@sparticuz/chromium"))) {
    console.warn(`No browser is installed: fetching ${fetchedPackage} with npm, once …`);
    const options = ["--no-save", "--no-package-lock", "--no-audit", "--no-fund", "--ignore-scripts"];
    const install = spawnSync("npm", ["install", "--prefix", folder, ...options, fetchedPackage], { stdio: "inherit" });
    if (install.status !== 0) return undefined;
  }
  // It unpacks into the folder for temporary files, and its libraries only where it takes the machine for a server
  // of the kind that it was made for.
  const unpack = 'import("@sparticuz/chromium").then(({ default: chromium }) => chromium.executablePath())';
  const environment = { ...process.env, TMPDIR: unpacked, AWS_LAMBDA_JS_RUNTIME: "nodejs20.x" };
  spawnSync(process.execPath, ["-e", unpack], { cwd: folder, env: environment, stdio: "inherit" });
  const path = join(unpacked, "chromium");
  const own = { LD_LIBRARY_PATH: join(unpacked, "al2023/lib"), FONTCONFIG_PATH: join(unpacked, "fonts") };
  return [{}, own].map((environment) => ({ path, environment })).find(runs);
}

function runs({ path, environment }: FoundBrowser): boolean {
  const { status } = spawnSync(path, ["--version"], { env: { ...process.env, ...environment } });
  return status === 0;
}
