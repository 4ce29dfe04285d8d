import { useEffect } from "react";

/** Keeps the screen awake while `isWanted`, where the browser can. It lets go whenever the page is hidden. */
export function useScreenAwake(isWanted: boolean): void {
  useEffect(() => {
    if (!isWanted || !("wakeLock" in navigator)) return;
    let lock: WakeLockSentinel | undefined;
    let isOver = false;
    const hold = async () => {
      if (document.visibilityState !== "visible") return;
      try {
        lock = await navigator.wakeLock.request("screen");
        if (isOver) await lock.release();
      } catch {
        // The phone saves its battery: the screen goes out as it always does.
      }
    };
    void hold();
    document.addEventListener("visibilitychange", hold);
    return () => {
      isOver = true;
      document.removeEventListener("visibilitychange", hold);
      void lock?.release();
    };
  }, [isWanted]);
}
