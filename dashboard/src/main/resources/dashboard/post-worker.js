// Keeps the proctor's page on the tablet, so that it opens without the gateway: this page's own
// files and nothing else. What is asked of the gateway (/api/…) passes by untouched, always.
//
// The gateway fills in the files with the hash of each, so this script is another one whenever any of
// them is. A version is fetched whole, checked by the hashes, or not at all.
const FILES = /*files*/ {};
const VERSION = "/*version*/";
const OURS = "yardclock-post-";

// What the shell does not name itself: the gateway reads the addresses from here.
const MORE = [
  "/ui/post.webmanifest",
  "/ui/jobs/post.js",
  "/ui/jobs/post-state.js",
  "/ui/jobs/post-zones.js",
  "/ui/jobs/post-splits.js",
  "/ui/jobs/post-rule.js",
  "/ui/jobs/post-call.js",
  "/ui/jobs/post-lock.js",
  "/ui/jobs/post-link.js",
  "/ui/jobs/post-start.js",
  "/ui/jobs/post-second-clock.js",
  "/ui/jobs/post-alone.js",
  "/ui/jobs/post-waiting.js",
  "/ui/jobs/post-install.js",
  "/ui/lib/outbox.js",
  "/ui/lib/outbox-store.js",
  "/ui/lib/last-frame.js",
  "/ui/lib/times.js",
  "/ui/words/of-post.js",
  "/ui/words/on-gap.js",
  "/ui/parts/sheet.js",
  "/ui/parts/stations.js",
  "/ui/parts/tray.js",
  "/ui/parts/fields.js",
];

async function keepAll() {
  const cache = await caches.open(OURS + VERSION);
  await Promise.all(Object.entries(FILES).map(([address, hash]) => keep(cache, address, hash)));
  if (MORE.some((address) => !Object.hasOwn(FILES, address))) throw new Error("a file is missing");
}

/** A file of another version fails its hash, and with it this whole version. */
async function keep(cache, address, integrity) {
  const answer = await fetch(new Request(address, { cache: "reload", integrity }));
  if (!answer.ok) throw new Error(`${address} ${answer.status}`);
  await cache.put(address, answer);
}

async function forgetOthers() {
  const names = await caches.keys();
  const others = names.filter((name) => name.startsWith(OURS) && name !== OURS + VERSION);
  await Promise.all(others.map((name) => caches.delete(name)));
}

async function kept(address, request) {
  const cache = await caches.open(OURS + VERSION);
  return (await cache.match(address)) ?? fetch(request);
}

self.addEventListener("install", (install) => install.waitUntil(keepAll()));
self.addEventListener("activate", (activate) => activate.waitUntil(forgetOthers()));

self.addEventListener("message", (message) => {
  if (message.data === "take-over") self.skipWaiting();
});

self.addEventListener("fetch", (asked) => {
  const { request } = asked;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== "GET" || origin !== location.origin) return;
  const address = request.mode === "navigate" ? "/post" : pathname;
  if (Object.hasOwn(FILES, address)) asked.respondWith(kept(address, request));
});
