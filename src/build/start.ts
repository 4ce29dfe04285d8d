/** `npm start`: builds the workbook page when the sources have changed, serves it and opens it. */
import { openInBrowser } from "./open-in-browser";
import { addressAt, serve, serverName } from "./serve";
import { buildPageOnce, pageFolder } from "./workbook-page-build";

/** The browser keeps a maker's work by address: the port should stay the same. */
const usualPort = 8017;

const wantsBrowser = !process.env.NO_OPEN && !process.argv.includes("--no-open");

async function start(): Promise<void> {
  const began = Date.now();
  console.log("Tea Mass Balance: looking whether the workbook page has to be built …");
  if (await buildPageOnce()) console.log(`Built in ${Math.round((Date.now() - began) / 1000)} s.`);
  const address = await serveOrFind();
  console.log(
    `\n  The workbook is at ${address}\n  The phone page is at ${address}phone/ (to try it here; see the README for a phone)\n`,
  );
  if (wantsBrowser) openInBrowser(address);
}

/** Serves at the usual port; when that is taken, finds out by whom. */
async function serveOrFind(): Promise<string> {
  try {
    const { address } = await serve(pageFolder, usualPort);
    console.log("Press Ctrl+C to stop.");
    return address;
  } catch (problem) {
    if ((problem as NodeJS.ErrnoException).code !== "EADDRINUSE") throw problem;
  }
  if (await isOurs(addressAt(usualPort))) {
    console.log("It is running already, in another terminal.");
    return addressAt(usualPort);
  }
  const { address } = await serve(pageFolder, 0);
  console.log(
    `Another program uses port ${usualPort}, so the workbook has another address this time. The browser keeps`,
  );
  console.log("work by address: what was kept at the usual one will be there again when that port is free.");
  console.log("Press Ctrl+C to stop.");
  return address;
}

async function isOurs(address: string): Promise<boolean> {
  try {
    const { headers } = await fetch(address, { method: "HEAD", signal: AbortSignal.timeout(2000) });
    return headers.get("server") === serverName;
  } catch {
    return false;
  }
}

start().catch((problem: unknown) => {
  console.error(problem);
  process.exitCode = 1;
});
