import { addressOf } from "../../workbook/addresses";
import { isErrorAnswer } from "../../workbook/workbook";
import { away, type CellMessage, showBubbles } from "./bubbles";
import { fillLine, type Sentence } from "./fitted-line";
import type { Grid } from "./grid";
import type { Hindrance } from "./hindrances";
import type { Spot } from "./known-workbook";
import { markProblems } from "./problem-marks";
import { linkTo, Problems } from "./problems";
import { sheetView } from "./sheet-view";
import { byId } from "./show";
import { hindranceAfterAddress, hindranceAtCell, hindranceInShort, sameCell, waitsFor, words } from "./words";

export interface CellMessages {
  readonly problems: Problems;
  /** Has the line say something, such as how a number was read, until the next such sentence or "". */
  remark(...parts: readonly (string | Node)[]): void;
  /** Tells for some steps how the keyboard leaves the sheet, where there is room for it. */
  tellWayOut(): void;
}

/** A sentence of the line, and what is said over the sheet where the line has no room for it. */
type Told = Sentence & { readonly over?: CellMessage };

/**
 * Shows what is wrong, what is waited for, and notes, in three places: as a corner of the cell; in a bubble beside the
 * cell that is wrong, if it is selected, under the pointer, or was just typed into; and in the line above the grid,
 * which names the cause first. `said` is read out by screen readers and cannot be seen.
 */
export function showCellMessages(grid: Grid, line: HTMLElement, said: HTMLElement): CellMessages {
  const { api } = grid;
  const bubbles = showBubbles(sheetView(grid, byId("grid")));
  const problems = new Problems(grid);
  /** The cell that was typed into and is refused: it keeps its bubble until it is mended, wherever the keys go. */
  let held: Spot | undefined;
  /** The cell that was typed into last. */
  let typed: Spot | undefined;
  let remark: readonly (string | Node)[] = [];
  let stepsWithWayOut = 0;
  const nameOf = (sheetId: string) => api.getActiveWorkbook()?.getSheetBySheetId(sheetId)?.getSheetName() ?? "";
  const idOf = (sheet: string) => api.getActiveWorkbook()?.getSheetByName(sheet)?.getSheetId();

  markProblems(grid.injector, (sheetId, row, column) => isMistake({ sheet: nameOf(sheetId), row, column }));
  const isMistake = (spot: Spot): boolean => (problems.at(spot)?.is ?? "blank") !== "blank";
  const errorIn = ({ sheet, row, column }: Spot): string | undefined => {
    const id = idOf(sheet);
    const value = id === undefined ? undefined : grid.value(id, row, column);
    return isErrorAnswer(value) ? value : undefined;
  };

  const messageAt = (spot: Spot): CellMessage | undefined => {
    const problem = problems.at(spot);
    if (problem && problem.is !== "blank") return { text: hindranceAtCell(problem), isError: true };
    const before = problems.before(spot);
    const error = errorIn(spot);
    const texts = [
      before && waitsFor(before, spot),
      problems.reasonAt(spot) ?? (before || error === undefined ? undefined : problems.meaningOf(error, spot)),
      noteAt(grid, spot),
      problem && hindranceAtCell(problem),
    ].filter((text) => text !== undefined);
    return texts.length > 0 ? { text: texts.join("\n"), isError: error !== undefined } : undefined;
  };

  const show = () => {
    const sheet = api.getActiveWorkbook()?.getActiveSheet();
    const place = sheet?.getSelection()?.getCurrentCell();
    if (!sheet || !place) return;
    const spot = { sheet: sheet.getSheetName(), row: place.actualRow, column: place.actualColumn };
    const message = messageAt(spot);
    const standing = held && !sameCell(held, spot) ? held : undefined;
    const heldMessage = standing && messageAt(standing);
    const mistakes = problems.mistakes(spot.sheet);
    const cause = (held && problems.at(held)) ?? problems.before(spot) ?? mistakes[0];
    const mistake = cause && cause.is !== "blank" ? cause : mistakes[0];
    const isHeldTold = standing === undefined || isMistake(standing);
    const hasBubble = message?.isError === true && standing?.sheet !== spot.sheet;
    const sentences: Told[] = [];
    if (remark.length > 0) sentences.push({ ways: [remark], over: { text: plainText(remark), isError: false } });
    if (standing && heldMessage && !isHeldTold) {
      sentences.push({
        ways: [[linkTo(grid, standing, spot.sheet), words().colon + onOneLine(heldMessage.text)]],
        over: heldMessage,
      });
    }
    if (mistake) {
      const ways = waysToTell(grid, mistake, mistakes.length - 1, spot.sheet);
      const hasOwnBubble = standing?.sheet === spot.sheet && sameCell(mistake, standing);
      sentences.push({ ways, ...(!hasOwnBubble && { over: { text: plain(mistake), isError: true } }) });
    }
    if (message && !(mistake && sameCell(mistake, spot))) {
      const ways = [[addressOf(spot.row, spot.column) + words().colon, onOneLine(message.text)]];
      sentences.push({ ways, ...(!hasBubble && { over: away({ ...spot, message }) }) });
    }
    const blank = problems.blank(spot.sheet);
    if (!mistake && blank && !sameCell(blank, spot) && problems.before(spot) !== blank) {
      sentences.push({ ways: [[linkTo(grid, blank, spot.sheet), hindranceAfterAddress(blank)]] });
    }
    if (stepsWithWayOut > 0) sentences.push({ ways: [[words().parts.keyHint]] });
    const leftOut = fillLine(line, sentences);
    if (line.childElementCount === 0) fillLine(line, [{ ways: [[words().hint]] }]);
    line.classList.toggle(
      "has-error",
      mistake !== undefined || message?.isError === true || (standing !== undefined && errorIn(standing) !== undefined),
    );
    // After the line, which may have moved the grid.
    const speaking = standing?.sheet === spot.sheet ? standing : spot;
    const saidThere = standing?.sheet === spot.sheet ? heldMessage : hasBubble ? message : undefined;
    bubbles.tell({
      selected: spot,
      said: saidThere && { ...speaking, message: saidThere },
      docked: leftOut.flatMap(({ over }) => (over && over !== saidThere ? [over] : [])),
    });
    const reason = mistake && held && sameCell(mistake, held) && !sameCell(mistake, spot) ? plain(mistake) : "";
    const heldError = isHeldTold
      ? ""
      : standing && addressOf(standing.row, standing.column) + words().colon + heldMessage?.text;
    const content = grid.shown(spot.sheet, spot.row, spot.column) || words().blankCell;
    const here = `${addressOf(spot.row, spot.column)}, ${content}`;
    say(said, [reason, heldError ?? "", here, message?.text ?? ""]);
  };

  grid.onSelect(() => {
    stepsWithWayOut -= 1;
    bubbles.hover(undefined);
    show();
  });
  api.addEvent(api.Event.ActiveSheetChanged, show);
  api.addEvent(api.Event.SheetEditEnded, ({ worksheet, row, column }) => {
    typed = { sheet: worksheet.getSheetName(), row, column };
    // Who types elsewhere has seen an error of the spreadsheet's own; a mistake is kept in sight.
    if (held && !sameCell(held, typed) && !isMistake(held)) held = undefined;
  });
  problems.subscribe((newest) => {
    // What was just typed matters most, whatever else went wrong because of it.
    if (typed && isMistake(typed)) held = typed;
    else if (newest) held = newest;
    else if (typed && errorIn(typed) !== undefined) held = typed;
    else if (held && !isMistake(held) && errorIn(held) === undefined) held = undefined;
    show();
    api.getActiveWorkbook()?.getActiveSheet().refreshCanvas();
  });
  api.addEvent(api.Event.CellHover, ({ worksheet, row, column }) => {
    const spot = { sheet: worksheet.getSheetName(), row, column };
    const selected = worksheet.getSelection()?.getCurrentCell();
    const isSelected = selected?.actualRow === row && selected.actualColumn === column;
    const isSaid = isSelected || (held !== undefined && sameCell(held, spot));
    const message = isSaid ? undefined : messageAt(spot);
    bubbles.hover(message && { row, column, message });
  });
  show();
  return {
    problems,
    remark: (...parts) => {
      remark = parts.filter((part) => part !== "");
      show();
    },
    tellWayOut: () => {
      stepsWithWayOut = 6;
      show();
    },
  };
}

const plainText = (parts: readonly (string | Node)[]): string =>
  parts.map((part) => (typeof part === "string" ? part : (part.textContent ?? ""))).join("");

function noteAt({ api }: Grid, { sheet, row, column }: Spot): string | undefined {
  const cell = api.getActiveWorkbook()?.getSheetByName(sheet)?.getSheet().getCellRaw(row, column);
  const note: unknown = cell?.custom?.note;
  return typeof note === "string" ? note : undefined;
}

/** The mistake, with a button that goes there, and how many more there are. In short, its cell tells the rest. */
function waysToTell(grid: Grid, mistake: Hindrance, others: number, sheet: string): Sentence["ways"] {
  const more = others > 0 ? words().moreWrong(others) : "";
  const link = linkTo(grid, mistake, sheet);
  return [
    [link, hindranceAfterAddress(mistake), more],
    ...(mistake.reason === undefined ? [] : [[link, words().colon + mistake.reason, more]]),
    [link, hindranceInShort(mistake), more],
  ];
}

const plain = (hindrance: Hindrance): string =>
  addressOf(hindrance.row, hindrance.column) + hindranceAfterAddress(hindrance);

/** Once: the same words are not put there again. */
function say(place: HTMLElement, parts: readonly string[]): void {
  const text = parts
    .filter((part) => part !== "")
    .map((part) => onOneLine(part).replace(/[.\s]*$/, "."))
    .join(" ");
  if (place.textContent !== text) place.textContent = text;
}

const onOneLine = (text: string): string => text.replaceAll(/[.\s]*\n/g, ". ");
