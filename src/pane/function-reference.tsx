import { useState } from "react";
import type { Entry } from "../core/entry";
import { findFunctions } from "./find-functions";
import { FunctionEntry } from "./function-entry";
import { useMessages } from "./use-messages";

/** All functions by group, narrowed by a search. */
export function FunctionReference({ catalogue }: { readonly catalogue: readonly Entry[] }) {
  const { reference, says, tabs } = useMessages();
  const [query, search] = useState("");
  const found = findFunctions(catalogue, query, says);
  const count = found.reduce((sum, { entries }) => sum + entries.length, 0);
  return (
    <>
      <h1>{tabs.functions}</h1>
      <label className="search">
        {reference.search}
        <input type="search" value={query} onChange={(event) => search(event.target.value)} />
      </label>
      <p role="status">{count === 0 ? reference.none : reference.count(count)}</p>
      {found.map(({ group, entries }) => (
        <section key={group}>
          <h2 className="group">{reference.groups[group]}</h2>
          {entries.map((entry) => (
            <FunctionEntry key={entry.spec.id} entry={entry} />
          ))}
        </section>
      ))}
    </>
  );
}
