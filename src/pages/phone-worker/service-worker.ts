/**
 * Keeps the whole page on the phone, so that it opens without a connection after its first visit. A later version is
 * fetched beside the one in use, and takes its place when the page is next opened (install-worker.ts).
 */
import { cleanupOutdatedCaches, type PrecacheEntry, precacheAndRoute } from "workbox-precaching";

declare const self: ServiceWorkerGlobalScope;

/** Every file of the page, with what tells its versions apart. The build writes it in. */
declare const filesOfPage: PrecacheEntry[];

cleanupOutdatedCaches();
precacheAndRoute(filesOfPage, { ignoreURLParametersMatching: [/./] });

// The first visit, too, goes on when the connection goes.
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

self.addEventListener("message", ({ data }) => {
  if (data === "take over") void self.skipWaiting();
});
