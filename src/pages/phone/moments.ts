import { useEffect, useState } from "react";

/** The moment, every second, while the page is shown; at once when it is shown again. */
export function useNow(): number {
  const [now, setNow] = useState(Date.now);
  useEffect(() => {
    const look = () => {
      if (document.visibilityState === "visible") setNow(Date.now());
    };
    const ticking = setInterval(look, 1000);
    document.addEventListener("visibilitychange", look);
    return () => {
      clearInterval(ticking);
      document.removeEventListener("visibilitychange", look);
    };
  }, []);
  return now;
}

/** A time of day, with the day where it is not today's. */
export function momentInWords(moment: number, tag: string): string {
  const at = new Date(moment);
  const time = at.toLocaleTimeString(tag, { hour: "2-digit", minute: "2-digit", hourCycle: "h23" });
  return at.toDateString() === new Date().toDateString() ? time : `${dayInWords(moment, tag)}, ${time}`;
}

export const dayInWords = (moment: number, tag: string): string =>
  new Date(moment).toLocaleDateString(tag, { day: "numeric", month: "short" });
