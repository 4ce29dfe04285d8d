import { useSyncExternalStore } from "react";
import { offline } from "./install-worker";
import { usePhone } from "./phone-context";

/** Whether the page opens without a connection. */
export function OfflineNote() {
  const { speech } = usePhone();
  const state = useSyncExternalStore(offline.onChange, offline.now);
  return <p className="help">{speech.phone.offline[state]}</p>;
}
