import { useCallback, useEffect, useRef, useState } from "react";
import { newerLots } from "../../lots/kept-file";
import { inOrder, type Lot } from "../../lots/lot";
import { type KeptLots, keepLot, readLots } from "./kept-lots";

export interface Lots {
  /** Newest first. */
  readonly all: readonly Lot[];
  readonly unread: readonly unknown[];
  /** Puts lots in the place of those with the same id, or adds them, and keeps them at once. */
  readonly put: (...lots: readonly Lot[]) => void;
  /** As it is now, before anything is drawn anew. */
  readonly find: (id: string | undefined) => Lot | undefined;
  readonly isKept: boolean;
  /** Whether the browser has agreed not to remove what is kept; undefined before it was asked. */
  readonly stays: boolean | undefined;
}

/** The lots of this phone; `kept` is what it had when the page was opened. */
export function useLots(kept: KeptLots): Lots {
  const now = useRef<readonly Lot[]>(kept.lots);
  const [all, setAll] = useState(kept.lots);
  const [isKept, setKept] = useState(true);
  const [stays, setStays] = useState<boolean>();

  const show = useCallback((changed: readonly Lot[]) => {
    const ids = new Set(changed.map(({ id }) => id));
    now.current = inOrder([...changed, ...now.current.filter(({ id }) => !ids.has(id))]);
    setAll(now.current);
  }, []);
  const put = useCallback(
    (...changed: readonly Lot[]) => {
      show(changed);
      Promise.all(changed.map(keepLot)).then(
        () => setKept(true),
        () => setKept(false),
      );
      void askToStay().then(setStays);
    },
    [show],
  );
  const find = useCallback((id: string | undefined) => now.current.find((lot) => lot.id === id), []);

  // Another tab may have changed a lot meanwhile.
  useEffect(() => {
    const look = () => {
      if (document.visibilityState !== "visible") return;
      readLots().then(
        ({ lots }) => show(newerLots(now.current, lots)),
        () => undefined,
      );
    };
    document.addEventListener("visibilitychange", look);
    return () => document.removeEventListener("visibilitychange", look);
  }, [show]);
  useEffect(() => {
    navigator.storage?.persisted?.().then(setStays, () => undefined);
  }, []);

  return { all, unread: kept.unread, put, find, isKept, stays };
}

let asked: Promise<boolean> | undefined;

/** Asked once a visit, with the first entry: before that there is nothing to keep. */
function askToStay(): Promise<boolean> {
  asked ??= (navigator.storage?.persist?.() ?? Promise.resolve(false)).catch(() => false);
  return asked;
}
