import { addressOf } from "../../workbook/addresses";
import { bubbleSlot, type CellMessage, clearOf, prepareBubbles } from "./bubbles";
import type { Grid } from "./grid";
import type { Hindrance } from "./hindrances";
import type { Spot } from "./known-workbook";
import { markProblems } from "./problem-marks";
import { linkTo, Problems } from "./problems";
import { hindranceAfterAddress, hindranceAtCell, sameCell, waitsFor, words } from "./words";

export interface CellMessages {
  readonly problems: Problems;
  /** Has the line say something, such as how a number was read, until the next such sentence or "". */
  remark(...parts: readonly (string | Node)[]): void;
}

/**
 * Shows what is wrong, what is waited for, and notes, in three places: as a corner of the cell; in a bubble beside the
 * cell that is selected, under the pointer, or was just typed into and is refused; and in the line above the grid,
 * which names the cause first. `said` is read out by screen readers and cannot be seen.
 */
export function showCellMessages(grid: Grid, line: HTMLElement, said: HTMLElement): CellMessages {
  const { api } = grid;
  prepareBubbles(api);
  const problems = new Problems(grid);
  const bubbles = { selected: bubbleSlot(), hovered: bubbleSlot(), held: bubbleSlot() };
  /** The cell that was typed into and is refused: it keeps its bubble until it is mended, wherever the keys go. */
  let held: Spot | undefined;
  let remark: readonly (string | Node)[] = [];
  const nameOf = (sheetId: string) => api.getActiveWorkbook()?.getSheetBySheetId(sheetId)?.getSheetName() ?? "";

  markProblems(grid.injector, (sheetId, row, column) => {
    const problem = problems.at({ sheet: nameOf(sheetId), row, column });
    return problem !== undefined && problem.is !== "blank";
  });

  const messageAt = (sheetId: string, row: number, column: number): CellMessage | undefined => {
    const spot = { sheet: nameOf(sheetId), row, column };
    const problem = problems.at(spot);
    if (problem && problem.is !== "blank") return { text: hindranceAtCell(problem), isError: true };
    const before = problems.before(spot);
    const shown = grid.value(sheetId, row, column);
    const isError = typeof shown === "string" && shown.startsWith("#");
    const texts = [
      before && waitsFor(before, spot),
      problems.reasonAt(spot) ?? (before ? undefined : isError ? words().meanings[shown] : undefined),
      noteAt(grid, sheetId, row, column),
      problem && hindranceAtCell(problem),
    ].filter((text) => text !== undefined);
    return texts.length > 0 ? { text: texts.join("\n"), isError } : undefined;
  };

  const show = () => {
    const sheet = api.getActiveWorkbook()?.getActiveSheet();
    const place = sheet?.getSelection()?.getCurrentCell();
    if (!sheet || !place) return;
    const sheetId = sheet.getSheetId();
    const spot = { sheet: sheet.getSheetName(), row: place.actualRow, column: place.actualColumn };
    const message = messageAt(sheetId, spot.row, spot.column);
    const standing = held && held.sheet === spot.sheet && !sameCell(held, spot) ? held : undefined;
    const mistakes = problems.mistakes(spot.sheet);
    const cause = (held && problems.at(held)) ?? problems.before(spot) ?? mistakes[0];
    const mistake = cause && cause.is !== "blank" ? cause : mistakes[0];
    const sentences = [
      remark,
      mistake ? mistakeSentence(grid, mistake, mistakes.length - 1, spot.sheet) : [],
      message && !(mistake && sameCell(mistake, spot)) ? [`${addressOf(spot.row, spot.column)}: `, message.text] : [],
    ].filter((parts) => parts.length > 0);
    const blank = problems.blank(spot.sheet);
    if (!mistake && blank && !sameCell(blank, spot) && problems.before(spot) !== blank) {
      sentences.push([linkTo(grid, blank, spot.sheet), hindranceAfterAddress(blank)]);
    }
    line.replaceChildren(...(sentences.length > 0 ? sentences : [[words().hint]]).map(sentence));
    line.classList.toggle("has-error", mistake !== undefined || message?.isError === true);
    // After the line, which may have moved the grid.
    bubbles.held.show(
      standing && sheet.getRange(standing.row, standing.column),
      standing && messageAt(sheetId, standing.row, standing.column),
      standing && clearOf(standing, spot),
    );
    bubbles.selected.show(sheet.getRange(spot.row, spot.column), standing ? undefined : message);
    const reason = mistake && held && sameCell(mistake, held) && !sameCell(mistake, spot) ? plain(mistake) : "";
    const content = grid.shown(spot.sheet, spot.row, spot.column) || words().blankCell;
    say(said, [reason, `${addressOf(spot.row, spot.column)}, ${content}`, message?.text ?? ""]);
  };

  grid.onSelect(show);
  api.addEvent(api.Event.ActiveSheetChanged, show);
  problems.subscribe((newest) => {
    if (newest) held = newest;
    else if (held && (problems.at(held)?.is ?? "blank") === "blank") held = undefined;
    show();
    api.getActiveWorkbook()?.getActiveSheet().refreshCanvas();
  });
  api.addEvent(api.Event.CellHover, ({ worksheet, row, column }) => {
    const spot = { sheet: worksheet.getSheetName(), row, column };
    const selected = worksheet.getSelection()?.getCurrentCell();
    const isSelected = selected?.actualRow === row && selected.actualColumn === column;
    const isSaid = isSelected || (held !== undefined && sameCell(held, spot));
    bubbles.hovered.show(
      worksheet.getRange(row, column),
      isSaid ? undefined : messageAt(worksheet.getSheetId(), row, column),
    );
  });
  show();
  return {
    problems,
    remark: (...parts) => {
      remark = parts.filter((part) => part !== "");
      show();
    },
  };
}

function noteAt({ api }: Grid, sheetId: string, row: number, column: number): string | undefined {
  const cell = api.getActiveWorkbook()?.getSheetBySheetId(sheetId)?.getSheet().getCellRaw(row, column);
  const note: unknown = cell?.custom?.note;
  return typeof note === "string" ? note : undefined;
}

/** The mistake, with a button that goes there, and how many more there are. */
function mistakeSentence(grid: Grid, mistake: Hindrance, others: number, sheet: string): (string | Node)[] {
  const more = others > 0 ? words().moreWrong(others) : "";
  return [linkTo(grid, mistake, sheet), hindranceAfterAddress(mistake), more];
}

const plain = (hindrance: Hindrance): string =>
  addressOf(hindrance.row, hindrance.column) + hindranceAfterAddress(hindrance);

function sentence(parts: readonly (string | Node)[]): HTMLElement {
  const element = document.createElement("div");
  element.append(...parts);
  return element;
}

/** Once: the same words are not put there again. */
function say(place: HTMLElement, parts: readonly string[]): void {
  const text = parts
    .filter((part) => part !== "")
    .map((part) => part.replaceAll(/[.\s]*\n/g, ". ").replace(/[.\s]*$/, "."))
    .join(" ");
  if (place.textContent !== text) place.textContent = text;
}
