// Makes the proctor's page one that opens without the gateway: a manifest for the home screen and a
// service worker that keeps the page's own files. Asked for once the page has shown its frame, so
// that it costs no loading time.
//
// A new version is fetched whole beside the old one and takes over only while nobody is with the
// proctor: the page then loads anew, once, from the new files.
const WORKER = "/post-worker.js";
const AFTER_MS = 1000;

export function install(page) {
  page.installed = navigator.serviceWorker ? "asked" : "insecure";
  const link = document.createElement("link");
  Object.assign(link, { rel: "manifest", href: "/ui/post.webmanifest" });
  document.head.append(link);
  if (navigator.serviceWorker) setTimeout(() => register(page), AFTER_MS);
}

async function register(page) {
  const controlled = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (controlled) location.reload();
  });
  try {
    const how = { scope: "/post", updateViaCache: "none" };
    const worker = await navigator.serviceWorker.register(WORKER, how);
    follow(page, worker);
    await navigator.serviceWorker.ready;
    settle(page, worker);
  } catch {
    // Offline this fails too; what is kept already still serves.
    settle(page, null, controlled ? "ready" : "failed");
  }
}

function follow(page, worker) {
  worker.addEventListener("updatefound", () => {
    const { installing } = worker;
    installing?.addEventListener("statechange", () => settle(page, worker));
  });
  // A gateway that went away may come back with other files.
  page.whenLinkIsBack = () => worker.update().catch(() => {});
  page.whenFree = () => worker.waiting?.postMessage("take-over");
}

function settle(page, worker, state) {
  page.installed = state ?? (worker.waiting ? "newer" : worker.active ? "ready" : page.installed);
  page.requestUpdate();
}
