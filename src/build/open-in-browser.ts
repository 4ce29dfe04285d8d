import { spawn } from "node:child_process";

/** Opens the address in the browser that the system prefers. When that fails, the printed address has to do. */
export function openInBrowser(address: string): void {
  const [command, ...rest] = opener[process.platform] ?? ["xdg-open"];
  const child = spawn(command as string, [...rest, address], { stdio: "ignore", detached: true });
  child.on("error", () => {});
  child.unref();
}

const opener: Partial<Record<NodeJS.Platform, readonly string[]>> = {
  darwin: ["open"],
  // `start` is a word of the command prompt; its first argument is a window title.
  win32: ["cmd", "/c", "start", ""],
};
