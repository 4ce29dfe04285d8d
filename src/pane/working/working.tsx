import { useCallback, useEffect, useRef, useState } from "react";
import { catalogue } from "../../core/catalogue";
import { HostProblem } from "../../host/host-problem";
import type { WorkbookHost } from "../../host/workbook-host";
import { addressOf } from "../../workbook/addresses";
import { type CellWorking, workingOf } from "../../working/working-of";
import { useMessages } from "../use-messages";
import { ShownCellWorking } from "./shown-cell-working";

/** How the selected cell is worked out; follows the selection. */
export function Working({ host }: { readonly host: WorkbookHost }) {
  const { working, problems } = useMessages();
  const [found, setFound] = useState<CellWorking | undefined>();
  const [problem, setProblem] = useState<string | undefined>();
  const [refusal, setRefusal] = useState<string | undefined>();
  const shown = useRef<HTMLDivElement>(null);
  const asked = useRef(0);

  const inWords = useCallback(
    (trouble: unknown) => (trouble instanceof HostProblem ? problems.host(trouble) : problems.unknown),
    [problems],
  );

  const look = useCallback(async () => {
    // The selection may move on while the cells of the one before are being read.
    asked.current += 1;
    const own = asked.current;
    const show = (cell: CellWorking | undefined, trouble?: string) => {
      if (own !== asked.current) return;
      setFound(cell);
      setProblem(trouble);
      setRefusal(undefined);
    };
    try {
      show(await workingOf(host, catalogue));
    } catch (trouble) {
      show(undefined, inWords(trouble));
    }
  }, [host, inWords]);

  /** What Excel works out only when it is asked to. */
  const ask = async () => {
    asked.current += 1;
    const own = asked.current;
    setRefusal(undefined);
    try {
      const cell = await workingOf(host, catalogue, { isAsked: true });
      if (own !== asked.current) return;
      setFound(cell);
      // The button is gone, and the keyboard was on it.
      shown.current?.focus();
    } catch (trouble) {
      if (own === asked.current) setRefusal(inWords(trouble));
    }
  };

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
    <div className="working" ref={shown} tabIndex={-1}>
      <p role="status">{problem ?? (found === undefined ? working.none : working.title(address))}</p>
      {found === undefined ? null : (
        <ShownCellWorking found={found} ask={{ onAsk: () => void ask(), problem: refusal }} />
      )}
    </div>
  );
}
