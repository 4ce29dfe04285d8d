import { useCallback, useEffect, useRef, useState } from "react";
import { type Kept, newerLots, newUnread } from "../../lots/kept-file";
import { inOrder, type Lot } from "../../lots/lot";
import { keepLot, keepUnread, readLots } from "./kept-lots";

export interface Lots {
  /** Newest first. */
  readonly all: readonly Lot[];
  readonly unread: readonly unknown[];
  /** Puts lots in the place of those with the same id, or adds them, and keeps them at once. */
  readonly put: (...lots: readonly Lot[]) => void;
  /** Takes in what is not here yet, or changed since; gives how many lots that are. */
  readonly takeIn: (read: Kept) => number;
  /** As it is now, before anything is drawn anew. */
  readonly find: (id: string | undefined) => Lot | undefined;
  readonly isKept: boolean;
  /** Whether the browser has agreed not to remove what is kept; undefined before it was asked. */
  readonly stays: boolean | undefined;
}

/** The lots of this phone; `kept` is what it had when the page was opened. */
export function useLots(kept: Kept): Lots {
  const now = useRef<readonly Lot[]>(kept.lots);
  const [all, setAll] = useState(kept.lots);
  const [unread, setUnread] = useState(kept.unread);
  const [isKept, setKept] = useState(true);
  const [stays, setStays] = useState<boolean>();

  const show = useCallback((changed: readonly Lot[]) => {
    const ids = new Set(changed.map(({ id }) => id));
    now.current = inOrder([...changed, ...now.current.filter(({ id }) => !ids.has(id))]);
    setAll(now.current);
  }, []);
  const told = useCallback((keeping: Promise<unknown>) => {
    keeping.then(
      () => setKept(true),
      () => setKept(false),
    );
    void askToStay().then(setStays);
  }, []);
  const put = useCallback(
    (...changed: readonly Lot[]) => {
      show(changed);
      told(Promise.all(changed.map(keepLot)));
    },
    [show, told],
  );
  const takeIn = ({ lots, unread: others }: Kept): number => {
    const newer = newerLots(now.current, lots);
    const fresh = newUnread(unread, others);
    show(newer);
    setUnread([...unread, ...fresh]);
    told(Promise.all([...newer.map(keepLot), keepUnread(fresh)]));
    return newer.length;
  };
  const find = useCallback((id: string | undefined) => now.current.find((lot) => lot.id === id), []);

  // Another tab may have changed a lot meanwhile.
  useEffect(() => {
    const look = () => {
      if (document.visibilityState !== "visible") return;
      readLots().then(
        (found) => {
          show(newerLots(now.current, found.lots));
          setUnread(found.unread);
        },
        () => undefined,
      );
    };
    document.addEventListener("visibilitychange", look);
    return () => document.removeEventListener("visibilitychange", look);
  }, [show]);
  useEffect(() => {
    navigator.storage?.persisted?.().then(setStays, () => undefined);
  }, []);

  return { all, unread, put, takeIn, find, isKept, stays };
}

let asked: Promise<boolean> | undefined;

/** Asked once a visit, with the first entry: before that there is nothing to keep. */
function askToStay(): Promise<boolean> {
  asked ??= (navigator.storage?.persist?.() ?? Promise.resolve(false)).catch(() => false);
  return asked;
}
