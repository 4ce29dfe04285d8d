import { useState } from "react";
import type { Lot } from "../../lots/lot";
import { handOut } from "../../pane/hand-out";
import { xlsxMediaType } from "../../xlsx/media-type";
import { usePhone } from "./phone-context";

type Said = "making" | "copied" | "cannotCopy" | "saved" | "notMade" | "nothingToSend" | "ready";

/** Sends a lot on: as rows for any spreadsheet, or as a workbook with live formulas. */
export function SendOn({ lot }: { readonly lot: Lot }) {
  const { speech, lots, tag } = usePhone();
  const { messages, phone } = speech;
  const { today } = phone;
  const [said, say] = useState<Said>();
  const [rows, showRows] = useState<string>();
  /** Made, and held until the maker taps once more: a browser shares only what was asked for just before. */
  const [held, hold] = useState<File>();
  const isEmpty = Object.keys(lot.jobs).length === 0 && lot.weighings.length === 0;
  const sent = () => {
    const now = lots.find(lot.id) ?? lot;
    lots.put({ ...now, sent: Date.now() });
  };
  const workbook = async () => {
    const { lotWorkbook } = await import("../../lots/lot-workbook");
    return lotWorkbook(lot, { messages, phone });
  };
  const attempt = async (work: () => Promise<Said>) => {
    hold(undefined);
    showRows(undefined);
    if (isEmpty) return say("nothingToSend");
    say("making");
    say(await work().catch(() => "notMade" as const));
  };
  const copy = () =>
    attempt(async () => {
      const { rowsToPaste } = await import("../../lots/rows-to-paste");
      const text = rowsToPaste(await workbook(), decimalSignOf(tag));
      try {
        await navigator.clipboard.writeText(text);
      } catch {
        showRows(text);
        return "cannotCopy";
      }
      sent();
      return "copied";
    });
  const file = async () => {
    const { writeWorkbook } = await import("../../xlsx/write-workbook");
    const bytes = new Uint8Array(await writeWorkbook(await workbook()));
    return new File([bytes], fileName(lot.name), { type: xlsxMediaType });
  };
  const save = () =>
    attempt(async () => {
      const made = await file();
      handOut(made, made.name);
      sent();
      return "saved";
    });
  const share = () =>
    attempt(async () => {
      hold(await file());
      return "ready";
    });
  const shareNow = async (made: File) => {
    try {
      await navigator.share({ files: [made], title: lot.name });
      sent();
      hold(undefined);
      say(undefined);
    } catch (thrown) {
      // Someone thought better of it; anything else is said.
      if (!(thrown instanceof DOMException && thrown.name === "AbortError")) say("notMade");
    }
  };
  return (
    <div className="send">
      <button type="button" className="plain" aria-label={today.of(today.copy, lot.name)} onClick={copy}>
        {today.copy}
      </button>
      {canShareFiles() ? (
        <button type="button" className="plain" aria-label={today.of(today.share, lot.name)} onClick={share}>
          {today.share}
        </button>
      ) : null}
      <button type="button" className="plain" aria-label={today.of(today.save, lot.name)} onClick={save}>
        {today.save}
      </button>
      <p role="status" className={said === "notMade" || said === "cannotCopy" ? "problem" : "done"}>
        {said === undefined ? "" : today[said]}
      </p>
      {held === undefined ? null : (
        <button type="button" className="primary" onClick={() => void shareNow(held)}>
          {today.shareNow}
        </button>
      )}
      {rows === undefined ? null : <textarea readOnly rows={8} aria-label={today.copy} value={rows} />}
    </div>
  );
}

/** Asked with a file of the kind that would be shared. */
const canShareFiles = (): boolean => {
  const example = new File([""], "a.xlsx", { type: xlsxMediaType });
  return navigator.canShare?.({ files: [example] }) ?? false;
};

/** A name for files may hold neither slashes nor what else a system keeps for itself. */
const fileName = (lot: string): string => `${lot.replaceAll(/[\\/:*?"<>|]/g, " ").trim() || "tea"}.xlsx`;

/** Spreadsheets read pasted numbers as their own language writes them, which is most often the phone's. */
const decimalSignOf = (tag: string): "," | "." =>
  new Intl.NumberFormat(navigator.language || tag).format(1.5).includes(",") ? "," : ".";
