import { useState } from "react";
import type { Entry } from "../core/entry";
import { findFunctions } from "./find-functions";
import { FunctionEntry } from "./function-entry";

/** All functions by group, narrowed by a search. */
export function FunctionReference({ catalogue }: { readonly catalogue: readonly Entry[] }) {
  const [query, search] = useState("");
  const found = findFunctions(catalogue, query);
  const count = found.reduce((sum, { entries }) => sum + entries.length, 0);
  return (
    <>
      <h1>Functions</h1>
      <label className="search">
        Search names, summaries and arguments
        <input type="search" value={query} onChange={(event) => search(event.target.value)} />
      </label>
      <p role="status">
        {count === 0
          ? "No function holds all of these words. Try a single one, such as weight."
          : `${count} ${count === 1 ? "function" : "functions"}`}
      </p>
      {found.map(({ group, entries }) => (
        <section key={group}>
          <h2 className="group">{group}</h2>
          {entries.map((entry) => (
            <FunctionEntry key={entry.spec.id} entry={entry} />
          ))}
        </section>
      ))}
    </>
  );
}
