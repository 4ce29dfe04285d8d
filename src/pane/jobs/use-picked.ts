import { useEffect, useState } from "react";
import { HostProblem } from "../../host/host-problem";
import type { WorkbookHost } from "../../host/workbook-host";
import type { Entries } from "../../jobs/entries";
import type { PickedValues } from "../../jobs/job-answer";
import type { Says } from "../../words/messages";
import { referenceTo } from "../../workbook/references";

interface Picked {
  readonly values: PickedValues;
  /** Why the cells of a field could not be read, by its name. */
  readonly problems: Readonly<Record<string, Says>>;
}

/** Whatever the host throws, in plain words. */
export const inWords =
  (thrown: unknown): Says =>
  ({ problems }) =>
    thrown instanceof HostProblem ? problems.host(thrown) : problems.unknown;

const nothing: Picked = { values: {}, problems: {} };

/** The cells that fields were picked from, read again whenever the sheet changes. */
export function usePicked(host: WorkbookHost | undefined, entries: Entries): Picked {
  const [picked, setPicked] = useState(nothing);
  const areas = JSON.stringify(
    Object.entries(entries).flatMap(([name, { picked }]) => (picked ? [[name, picked] as const] : [])),
  );
  useEffect(() => {
    const wanted = JSON.parse(areas) as [string, NonNullable<Entries[string]["picked"]>][];
    if (host === undefined || wanted.length === 0) return setPicked(nothing);
    let reading = 0;
    const read = async () => {
      reading += 1;
      const own = reading;
      const values: Record<string, PickedValues[string]> = {};
      const problems: Record<string, Says> = {};
      for (const [name, area] of wanted) {
        try {
          values[name] = (await host.read(referenceTo(area), area)).values;
        } catch (thrown) {
          problems[name] = inWords(thrown);
        }
      }
      // A later reading has overtaken this one.
      if (own === reading) setPicked({ values, problems });
    };
    void read();
    const stop = host.onSelection(() => void read());
    return () => {
      reading += 1;
      stop();
    };
  }, [host, areas]);
  return picked;
}
