// The last frame, kept on the tablet so that the page can open without the gateway. Written every
// two seconds at most, and when the page is hidden: a memory card wears out.
import { store } from "./outbox-store.js";

const EVERY_MS = 2000;

export class LastFrame {
  #frame = null;
  #timer = 0;

  /** @param owner the device the frame is for; another one's is not shown */
  constructor(owner) {
    this.owner = owner;
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState === "hidden") this.#write();
    });
  }

  keep(frame) {
    this.#frame = { owner: this.owner, frame, wallMs: Date.now() };
    this.#timer ||= setTimeout(() => this.#write(), EVERY_MS);
  }

  async #write() {
    clearTimeout(this.#timer);
    this.#timer = 0;
    const kept = this.#frame;
    this.#frame = null;
    // A browser that keeps nothing opens without a picture, and says that it looks for the gateway.
    if (kept) await store.keepFrame(kept).catch(() => {});
  }

  /** The kept frame and its age by the tablet's wall clock, or null. */
  async recall() {
    const kept = await store.lastFrame().catch(() => null);
    if (!kept || kept.owner !== this.owner) return null;
    return { frame: kept.frame, ageMs: Math.max(0, Date.now() - kept.wallMs) };
  }

  async forget() {
    clearTimeout(this.#timer);
    this.#timer = 0;
    this.#frame = null;
    await store.forgetFrame().catch(() => {});
  }
}
