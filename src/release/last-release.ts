import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { type Correction, corrections } from "../generate/corrections";
import { breaches, type Signature, unusedCorrections } from "../generate/signatures";

/** What the last release promised to workbooks that were saved with it. Committed, and written by a release. */
export interface Release {
  readonly version: string;
  readonly signatures: readonly Signature[];
}

const lastReleaseFile = "last-release.json";

export const lastRelease = (file = lastReleaseFile): Release | undefined =>
  existsSync(file) ? (JSON.parse(readFileSync(file, "utf8")) as Release) : undefined;

export const recordRelease = (release: Release, file = lastReleaseFile): void =>
  writeFileSync(file, `${JSON.stringify(release, null, 1)}\n`);

/**
 * Why a release may not follow the last one, one line each. The same version may be built again while its signatures
 * are the same; nothing else of it is compared.
 */
export function reasonsAgainst(
  next: Release,
  last: Release | undefined,
  made: readonly Correction[] = corrections,
): string[] {
  const unordered = [next, ...(last === undefined ? [] : [last])].filter(({ version }) => !isOrdered.test(version));
  if (unordered.length > 0) return unordered.map(({ version }) => `${version} is no version such as 1.2.3`);
  if (last === undefined) return [];
  const due = correctionsSince(last, made);
  const broken = [
    ...breaches(last.signatures, next.signatures, due),
    ...unusedCorrections(last.signatures, next.signatures, due),
  ];
  if (broken.length > 0) return broken;
  if (due.length > 0 && !isMinorRise(next.version, last.version)) {
    return [`${next.version} corrects what ${last.version} did: raise the minor version`];
  }
  const isSame = JSON.stringify(next.signatures) === JSON.stringify(last.signatures);
  const order = compareVersions(next.version, last.version);
  if (order < 0) return [`${next.version} is older than ${last.version}, which was released`];
  if (order === 0 && !isSame) return [`${next.version} was released with other functions: raise the version`];
  return [];
}

/** The corrections that workbooks saved with a release do not know yet. */
export const correctionsSince = (
  { version }: Release,
  made: readonly Correction[] = corrections,
): readonly Correction[] => made.filter((correction) => isLater(correction.version, version));

const isLater = (one: string, other: string): boolean => compareVersions(one, other) > 0;

/** 0.2.0 after 0.1.3, or 1.0.0. */
const isMinorRise = (one: string, other: string): boolean =>
  compareVersions(one.replace(/\d+$/, "0"), other.replace(/\d+$/, "0")) > 0;

/** Three numbers. What else may stand in a version, such as -beta, has no order here. */
const isOrdered = /^\d+\.\d+\.\d+$/;

function compareVersions(one: string, other: string): number {
  const [mine, theirs] = [one, other].map((version) => version.split(".").map(Number)) as [number[], number[]];
  const index = mine.findIndex((part, place) => part !== theirs[place]);
  return index < 0 ? 0 : (mine[index] as number) - (theirs[index] as number);
}
