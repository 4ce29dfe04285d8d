/** The script of a page for tests: the pane beside a workbook in memory, reached as `host`; `fail` makes it refuse,
 * `fetchParts` fetches what the pane would otherwise fetch when it is wanted. */
import { HostProblem, type Trouble } from "../../src/host/host-problem";
import { mountPane } from "../../src/pane/mount-pane";
import { fetchParts } from "../../src/pane/parts";
import { FakeWorkbookHost } from "../host/fake-workbook-host";

const host = new FakeWorkbookHost({
  Book: { B4: 1010, A8: "fresh", A9: "finished", B8: 900, B9: 225 },
  // Lots of an invented farm, with slips for the sheet check, and a cell with a working.
  Slips: {
    A1: "lot",
    B1: "fresh g",
    C1: "fresh moisture",
    D1: "finished g",
    E1: "outturn",
    A2: "Well plot, first plucking",
    B2: 1200,
    C2: { value: 0.76, format: "0.0%" },
    D2: 258,
    E2: { value: 0.215, formula: "=TEA.OUTTURN(B2,D2)", format: "0.0%" },
    A3: "Wall garden",
    B3: 980,
    C3: 76,
    D3: "211 ",
    E3: { value: "#VALUE!", formula: "=TEA.OUTTURN(B3,D3)", message: 'finishedWeight must be a number; got "211 "' },
    A4: "Well plot, second plucking",
    B4: 214,
    C4: { value: 0.755, format: "0.0%" },
    D4: 1010,
    E4: { value: 4.72, formula: "=TEA.OUTTURN(B4,D4)", format: "0.0%" },
    A5: "Wall garden",
    B5: 1105,
    C5: { value: 0.75, format: "0.0%" },
    D5: 240,
    E5: 0.217,
    A6: "Wall garden",
    B6: 1100,
    C6: { value: 0.75, format: "0.0%" },
    E6: { value: "", formula: "=TEA.OUTTURN(B6,D6)", format: "0.0%" },
    G2: { value: 823.5, formula: "=TEA.TARGETWEIGHT(B2,C2,65%)" },
  },
});
const fail = (reason: HostProblem["reason"], trouble: Trouble) => {
  host.problem = new HostProblem(reason, trouble);
};
Object.assign(globalThis, { host, fail, fetchParts });
mountPane(document.getElementById("pane") as HTMLElement, host);
