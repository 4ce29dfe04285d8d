/** The very file on the maker's disk, in browsers that give access to it (the File System Access API). */

import { xlsxMediaType } from "../../xlsx/media-type";

/** What a file was opened from: the way back into it is there where the browser gives one. */
export interface Chosen {
  readonly file: File;
  readonly handle?: FileSystemFileHandle;
}

// The type library of the compiler does not know these yet.
interface Picker {
  showOpenFilePicker?(options: object): Promise<FileSystemFileHandle[]>;
}
interface Permission {
  queryPermission?(wanted: { mode: "readwrite" }): Promise<PermissionState>;
  requestPermission?(wanted: { mode: "readwrite" }): Promise<PermissionState>;
}
interface Dropped {
  getAsFileSystemHandle?(): Promise<FileSystemHandle | null>;
}

export const picksFiles = (): boolean => "showOpenFilePicker" in globalThis;

const workbooks = {
  accept: { [xlsxMediaType]: [".xlsx", ".xlsm"] },
};

/** undefined where the maker chose none. */
export async function pickFile(): Promise<Chosen | undefined> {
  try {
    const [handle] = (await (globalThis as Picker).showOpenFilePicker?.({ types: [workbooks] })) ?? [];
    return handle && { file: await handle.getFile(), handle };
  } catch (problem) {
    if (problem instanceof DOMException && problem.name === "AbortError") return undefined;
    throw problem;
  }
}

/** To be called while the drop is told of: the browser takes the file back afterwards. */
export function droppedFile(items: DataTransferItemList | undefined): Promise<Chosen | undefined> {
  const item = [...(items ?? [])].find(({ kind }) => kind === "file");
  const file = item?.getAsFile();
  if (!item || !file) return Promise.resolve(undefined);
  const handle = (item as Dropped).getAsFileSystemHandle?.() ?? Promise.resolve(null);
  return handle.then(
    (found) => (found?.kind === "file" ? { file, handle: found as FileSystemFileHandle } : { file }),
    () => ({ file }),
  );
}

export async function checksumOf(bytes: Uint8Array): Promise<string> {
  const digest = await crypto.subtle.digest("SHA-256", new Uint8Array(bytes));
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** What became of saving into the file. The browser writes beside it and exchanges the two at the end. */
type Written = "written" | "not allowed" | "no room" | "changed" | "gone";

/** Writes it unless the file is another than the one with this checksum. Needs a click shortly before, to ask. */
export async function writeInto(handle: FileSystemFileHandle, bytes: Uint8Array, before: string): Promise<Written> {
  const wanted = { mode: "readwrite" } as const;
  const asked = handle as Permission;
  const granted = async (answer: Promise<PermissionState> | undefined) => ((await answer) ?? "granted") === "granted";
  if (!(await granted(asked.queryPermission?.(wanted))) && !(await granted(asked.requestPermission?.(wanted)))) {
    return "not allowed";
  }
  try {
    const there = new Uint8Array(await (await handle.getFile()).arrayBuffer());
    if ((await checksumOf(there)) !== before) return "changed";
    const writing = await handle.createWritable();
    try {
      await writing.write(new Uint8Array(bytes));
      await writing.close();
    } catch (problem) {
      // What was written beside the file is taken away again.
      await writing.abort().catch(() => undefined);
      throw problem;
    }
    return "written";
  } catch (problem) {
    if (!(problem instanceof DOMException)) throw problem;
    if (problem.name === "NotAllowedError") return "not allowed";
    if (problem.name === "NotFoundError") return "gone";
    if (problem.name === "QuotaExceededError") return "no room";
    throw problem;
  }
}
