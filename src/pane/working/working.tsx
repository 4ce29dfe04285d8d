import { useCallback, useEffect, useRef, useState } from "react";
import { catalogue } from "../../core/catalogue";
import { addressOf } from "../../workbook-files/addresses";
import { HostProblem, type WorkbookHost } from "../host/workbook-host";
import { useMessages } from "../messages/messages";
import { ShownCellWorking } from "./shown-cell-working";
import { type CellWorking, workingOf } from "./working-of";

/** How the selected cell is worked out; follows the selection. */
export function Working({ host }: { readonly host: WorkbookHost }) {
  const { working, problems } = useMessages();
  const [found, setFound] = useState<CellWorking | undefined>();
  const [problem, setProblem] = useState<string | undefined>();
  const asked = useRef(0);

  const look = useCallback(async () => {
    // The selection may move on while the cells of the one before are being read.
    asked.current += 1;
    const own = asked.current;
    const show = (cell: CellWorking | undefined, trouble?: string) => {
      if (own !== asked.current) return;
      setFound(cell);
      setProblem(trouble);
    };
    try {
      show(await workingOf(host, catalogue));
    } catch (trouble) {
      show(undefined, trouble instanceof HostProblem ? problems.host(trouble) : problems.unknown);
    }
  }, [host, problems]);

  useEffect(() => {
    void look();
    const stop = host.onSelection(() => void look());
    return () => {
      asked.current += 1;
      stop();
    };
  }, [host, look]);

  const address = found === undefined ? "" : addressOf(found.place.row, found.place.column);
  return (
    <div className="working">
      <p role="status">{problem ?? (found === undefined ? working.none : working.title(address))}</p>
      {found === undefined ? null : <ShownCellWorking found={found} />}
    </div>
  );
}
