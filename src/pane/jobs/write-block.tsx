import { useEffect, useRef, useState } from "react";
import { placesOf } from "../../host/block-cells";
import type { Block, CellArea, CellPlace, WorkbookHost } from "../../host/workbook-host";
import { type BlockOfJob, blockAt, type Filled } from "../../jobs/job-block";
import type { Says } from "../../words/messages";
import { addressOf } from "../../workbook/addresses";
import { referenceTo } from "../../workbook/references";
import { Choice } from "../choice";
import { useMessages } from "../use-messages";
import { inWords } from "./use-picked";

export interface WriteBlockProps {
  readonly host: WorkbookHost;
  /** What the block is made of, or why there is none. */
  readonly filled: () => Filled | Says;
  /** What a new sheet for it is called. */
  readonly title: string;
  /** Whether the block has a chart that can be written with it. */
  readonly hasChart: boolean;
  /** Cells that formulas of the block read. */
  readonly picked: readonly CellArea[];
}

interface Question {
  readonly block: BlockOfJob;
  readonly at: CellPlace;
  readonly filled: readonly string[];
}

/** How many addresses a question names. */
const mostNamed = 12;

/** The button that writes a block at the selected cell. Filled cells are not touched before someone says so. */
export function WriteBlock({ host, filled, title, hasChart, picked }: WriteBlockProps) {
  const messages = useMessages();
  const { write } = messages;
  const selected = useSelectedCell(host);
  const [said, say] = useState<{ readonly says: Says; readonly isProblem: boolean }>();
  const [question, ask] = useState<Question>();
  const [isBusy, setBusy] = useState(false);
  const [withChart, chooseChart] = useState(false);

  const writeAt = async (block: BlockOfJob, at: CellPlace, over: boolean) => {
    const outcome = await host.write(block, at, { over });
    if ("filled" in outcome) return ask({ block, at, filled: outcome.filled });
    const place = referenceTo(outcome.written);
    return finish(block, ({ write }) => write.written(place));
  };
  /** The chart, and what is then said. */
  const finish = async (block: BlockOfJob, written: Says) => {
    try {
      if (withChart && block.chart) await host.addChart(block.chart);
      say({ says: written, isProblem: false });
    } catch (thrown) {
      const says: Says = (all) => `${written(all)} ${all.write.noChart} ${inWords(thrown)(all)}`;
      say({ says, isProblem: true });
    }
  };
  /** Whatever goes wrong is said, and the form keeps all that was typed. */
  const attempt = async (work: () => Promise<void>) => {
    if (isBusy) return;
    say(undefined);
    setBusy(true);
    try {
      await work();
    } catch (thrown) {
      say({ says: inWords(thrown), isProblem: true });
    } finally {
      setBusy(false);
    }
  };
  const start = () =>
    attempt(async () => {
      const { sheet, row, column } = await host.selection();
      const at = { sheet, row, column };
      const parts = filled();
      if (typeof parts === "function") return say({ says: parts, isProblem: true });
      const block = blockAt(parts, at);
      if (liesOver(block, at, picked)) return say({ says: ({ problems }) => problems.overPicked, isProblem: true });
      return writeAt(block, at, false);
    });
  const startOnNewSheet = () =>
    attempt(async () => {
      // No sheet is added for a block that there is none of.
      const parts = filled();
      if (typeof parts === "function") return say({ says: parts, isProblem: true });
      const at = { sheet: await host.addSheet(title), row: 0, column: 0 };
      const block = blockAt(parts, at);
      await host.write(block, at);
      await host.goTo(at);
      return finish(block, ({ write }) => write.writtenOnNewSheet(at.sheet));
    });

  return (
    <div className="write">
      {hasChart && host.drawsCharts ? (
        <Choice id="with-chart" label={write.chart} help={write.chartHelp} isChosen={withChart} choose={chooseChart} />
      ) : null}
      <button type="button" className="primary" onClick={start} aria-disabled={isBusy}>
        {write.button}
      </button>
      <button type="button" className="plain" onClick={startOnNewSheet} aria-disabled={isBusy}>
        {write.newSheet}
      </button>
      <p className="notes">{selected === undefined ? "" : write.where(selected)}</p>
      <p role="status" className={said?.isProblem ? "problem" : "done"}>
        {said?.says(messages)}
      </p>
      {question === undefined ? null : (
        <FilledQuestion
          filled={question.filled}
          answer={(isOver) => {
            ask(undefined);
            if (isOver) void attempt(() => writeAt(question.block, question.at, true));
          }}
        />
      )}
    </div>
  );
}

const over = "over";

/**
 * Asks, in a dialog of the browser's own, whether filled cells may be written over. It is closed before it goes, which
 * gives the keyboard back to the button that it came from.
 */
function FilledQuestion(props: { readonly filled: readonly string[]; readonly answer: (isOver: boolean) => void }) {
  const { filled, answer } = props;
  const { write, joined } = useMessages();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  const named = joined.list(filled.slice(0, mostNamed));
  const rest = filled.length - mostNamed;
  return (
    <dialog
      ref={dialog}
      aria-labelledby="filled-title"
      aria-describedby="filled-cells"
      onClose={() => answer(dialog.current?.returnValue === over)}
    >
      <h2 id="filled-title">{write.filledTitle}</h2>
      <p id="filled-cells">{write.filled(rest > 0 ? joined.sentences([named, write.more(rest)]) : named)}</p>
      <div className="line">
        <button type="button" className="primary" onClick={() => dialog.current?.close()}>
          {write.keep}
        </button>
        <button type="button" className="plain" onClick={() => dialog.current?.close(over)}>
          {write.over}
        </button>
      </div>
    </dialog>
  );
}

/** The first cell of the selection, as it is now. */
function useSelectedCell(host: WorkbookHost): string | undefined {
  const [selected, setSelected] = useState<string>();
  useEffect(() => {
    let isHere = true;
    const read = () =>
      host.selection().then(
        ({ sheet, row, column }) => isHere && setSelected(referenceTo({ sheet, row, column, rows: 1, columns: 1 })),
        () => isHere && setSelected(undefined),
      );
    void read();
    const stop = host.onSelection(() => void read());
    return () => {
      isHere = false;
      stop();
    };
  }, [host]);
  return selected;
}

/** Whether a block would lie over cells that it reads, which would end in a circle. */
export function liesOver(block: Block, at: CellPlace, picked: readonly CellArea[]): boolean {
  const own = new Set(placesOf(block, at).map(({ row, column }) => addressOf(row, column)));
  return picked.some(({ sheet, row, column, rows, columns }) => {
    if (sheet !== at.sheet) return false;
    return Array.from({ length: rows * columns }, (_, index) =>
      addressOf(row + Math.floor(index / columns), column + (index % columns)),
    ).some((address) => own.has(address));
  });
}
