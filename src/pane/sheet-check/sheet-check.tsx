import { useState } from "react";
import { catalogue } from "../../core/catalogue";
import { HostProblem } from "../../host/host-problem";
import type { WorkbookHost } from "../../host/workbook-host";
import { explainedError } from "../../sheet-check/explained-error";
import type { Finding } from "../../sheet-check/finding";
import { findingsOf } from "../../sheet-check/findings-of";
import { spillsKnownTo } from "../../sheet-check/spills";
import { useMessages } from "../use-messages";
import { FindingList } from "./finding-list";

/** Messages are asked for one by one: beyond these, a click on the cell shows the working. */
const mostMessages = 50;

interface Found {
  readonly sheet: string;
  readonly cells: number;
  readonly findings: readonly Finding[];
}

/** Reads the sheet that is shown, and lists what deserves another look. Changes nothing. */
export function SheetCheck({ host }: { readonly host: WorkbookHost }) {
  const { check, problems } = useMessages();
  const [found, setFound] = useState<Found | undefined>();
  const [isReading, setReading] = useState(false);
  const [problem, setProblem] = useState<string | undefined>();

  const guarded = async (job: () => Promise<void>) => {
    setProblem(undefined);
    try {
      await job();
    } catch (trouble) {
      setProblem(trouble instanceof HostProblem ? problems.host(trouble) : problems.unknown);
    }
  };
  const look = async () => {
    setReading(true);
    await guarded(async () => setFound(await checkedSheet(host)));
    setReading(false);
  };

  return (
    <div className="sheet-check">
      <p>{check.intro}</p>
      <button type="button" className="primary" onClick={() => void look()} disabled={isReading}>
        {check.button}
      </button>
      <div role="status">
        {isReading ? <p>{check.running}</p> : null}
        {problem === undefined ? null : <p className="problem">{problem}</p>}
        {found === undefined || isReading ? null : (
          <p>
            {found.findings.length === 0 ? check.none(found.cells) : check.found(found.findings.length, found.sheet)}
          </p>
        )}
      </div>
      {found === undefined ? null : (
        <FindingList
          findings={found.findings}
          goTo={({ row, column }) => void guarded(() => host.goTo({ sheet: found.sheet, row, column }))}
        />
      )}
      {found === undefined ? null : <p className="bounds">{check.noClaim}</p>}
    </div>
  );
}

/** Reads the sheet, and asks for the messages of the errors on it. */
export async function checkedSheet(host: WorkbookHost): Promise<Found> {
  const area = await host.usedCells();
  const findings: Finding[] = [];
  const spills = await spillsKnownTo(host, area, catalogue);
  for (const finding of findingsOf(area, catalogue, spills)) {
    const isError = finding.rule === "a TEA function with an error" && findings.length < mostMessages;
    const { row, column } = finding;
    const place = { sheet: area.sheet, row, column };
    const code = finding.details.code ?? "";
    findings.push(isError ? { ...finding, error: await explainedError(code, host, place, catalogue) } : finding);
  }
  const cells = area.values.reduce((sum, row) => sum + row.filter((value) => value !== "").length, 0);
  return { sheet: area.sheet, cells, findings };
}
