/** Whether the page opens without a connection. */
type Offline = "getting" | "ready" | "not";

let state: Offline = "getting";
const listeners = new Set<() => void>();

function become(now: Offline): void {
  state = now;
  for (const listener of listeners) listener();
}

export const offline = {
  now: (): Offline => state,
  onChange(listener: () => void): () => void {
    listeners.add(listener);
    return () => listeners.delete(listener);
  },
};

/** Fetches the whole page for later, once the page that is shown has what it needs. */
export function installWorker(): void {
  const { serviceWorker } = navigator as { serviceWorker?: ServiceWorkerContainer };
  if (serviceWorker === undefined) return void become("not");
  // A later version that was fetched on the last visit takes over now, while nothing is typed yet.
  const hadOne = serviceWorker.controller !== null;
  let isNew = false;
  serviceWorker.addEventListener("controllerchange", () => {
    if (hadOne && isNew) location.reload();
  });
  serviceWorker
    .register("service-worker.js", { updateViaCache: "none" })
    .then(async (registration) => {
      if (registration.waiting && hadOne) {
        isNew = true;
        registration.waiting.postMessage("take over");
      }
      await serviceWorker.ready;
      become("ready");
    })
    .catch(() => become(hadOne ? "ready" : "not"));
}
