/** The script of a page for tests: the pane beside a workbook in memory, reached as `host`; `fail` makes it refuse. */
import { HostProblem } from "../../src/pane/host/workbook-host";
import { mountPane } from "../../src/pane/mount-pane";
import { FakeWorkbookHost } from "../pane/fake-workbook-host";

const host = new FakeWorkbookHost({ Book: { B4: 1010, A8: "fresh", A9: "finished", B8: 900, B9: 225 } });
const fail = (reason: HostProblem["reason"], message: string) => {
  host.problem = new HostProblem(reason, message);
};
Object.assign(globalThis, { host, fail });
mountPane(document.getElementById("pane") as HTMLElement, host);
