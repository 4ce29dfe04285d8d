/** The rooms of src, as their tsconfig.json state them and as their files import: a folder with a tsconfig is a room. */
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";

interface SourceFile {
  /** From src on, with slashes. */
  readonly path: string;
  readonly room: string;
  readonly text: string;
  readonly imports: readonly string[];
}

export interface Room {
  readonly name: string;
  /** The rooms that it may import from, and the packages. */
  readonly references: readonly string[];
  readonly packages: readonly string[];
  readonly mayName: { readonly page: boolean; readonly node: boolean; readonly worker: boolean };
  readonly files: readonly SourceFile[];
}

interface Settings {
  readonly compilerOptions: { readonly lib: readonly string[]; readonly types: readonly string[] };
  readonly references: readonly { readonly path: string }[];
  readonly packages: readonly string[];
}

export function roomsOf(project: string): Room[] {
  const source = join(project, "src");
  const paths = readdirSync(source, { recursive: true, encoding: "utf8" }).map((path) => path.replaceAll("\\", "/"));
  const names = paths.flatMap((path) => (/^(.*)\/tsconfig\.json$/.exec(path)?.[1] ?? []) as string | []);
  const files = paths
    .filter((path) => /(?<!\.d)\.tsx?$/.test(path))
    .map((path) => {
      const text = readFileSync(join(source, path), "utf8");
      return { path, room: roomAt(path, names), text, imports: importsOf(text) };
    });
  return names.sort().map((name) => {
    const { compilerOptions, references, packages } = JSON.parse(
      readFileSync(join(source, name, "tsconfig.json"), "utf8"),
    ) as Settings;
    const { lib, types } = compilerOptions;
    return {
      name,
      references: references.map(({ path }) => normalize(join(name, path)).replaceAll("\\", "/")),
      packages,
      mayName: { page: lib.includes("DOM"), node: types.includes("node"), worker: lib.includes("WebWorker") },
      files: files.filter(({ room }) => room === name),
    };
  });
}

/** The innermost room that a path lies in; an empty text outside of all. */
const roomAt = (path: string, names: readonly string[]): string =>
  names.filter((name) => path.startsWith(`${name}/`)).sort((one, other) => other.length - one.length)[0] ?? "";

/** Static imports and exports, which end a line, and imports inside the code. */
const importsOf = (text: string): string[] =>
  [
    ...text.matchAll(/^(?:import|export|\}).*? from "([^"]+)";$/gm),
    ...text.matchAll(/^import "([^"]+)";$/gm),
    ...text.matchAll(/\bimport\("([^"]+)"\)/g),
  ].map((match) => match[1] as string);

/** The other rooms that a file imports from. */
export const roomsImportedBy = ({ path, room, imports }: SourceFile, rooms: readonly Room[]): string[] => [
  ...new Set(
    imports
      .filter((name) => name.startsWith("."))
      .map((name) =>
        roomAt(
          normalize(join(dirname(path), name)).replaceAll("\\", "/"),
          rooms.map((each) => each.name),
        ),
      )
      .filter((name) => name !== room),
  ),
];

/** The packages that a file imports, without the parts of Node. */
export const packagesImportedBy = ({ imports }: SourceFile): string[] =>
  imports
    .filter((name) => !/^(?:\.|node:)/.test(name))
    .map((name) =>
      name
        .split("/")
        .slice(0, name.startsWith("@") ? 2 : 1)
        .join("/"),
    );
