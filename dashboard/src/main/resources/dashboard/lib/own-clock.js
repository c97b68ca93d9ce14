// This page's clock: what a press reads, and how a question of the gateway's is answered. A page
// loaded, back in view, or whose clocks have jumped counts anew, under another boot. One a page.
import { newKey } from "./key.js";
import * as clocks from "./tablet-clock.js";

/** Browsers round their clock down, some to a whole millisecond: so much later is not too early. */
const ROUNDING_MS = 1;

export class OwnClock {
  /** Called with each new boot but the first: the gateway should ask soon. */
  onBoot = () => {};

  /**
   * @param sources now() steady and wall() in milliseconds, newId()
   */
  constructor({ now = () => performance.now(), wall = () => Date.now(), newId = newKey } = {}) {
    this.now = now;
    this.wall = wall;
    this.newId = newId;
    this.clock = clocks.newClock(newId(), now(), wall());
  }

  /** Starts to count anew whenever the page comes back into view. */
  watch(page) {
    page.addEventListener("visibilitychange", () => {
      if (page.visibilityState === "visible") this.restart();
    });
    page.defaultView.addEventListener("pageshow", (shown) => {
      if (shown.persisted) this.restart();
    });
  }

  restart(speed = this.clock.speed) {
    this.clock = clocks.newClock(this.newId(), this.now(), this.wall(), speed);
    this.onBoot();
  }

  /** What a press that happens now carries. */
  press() {
    this.#look();
    return { boot: this.clock.boot, deviceMicros: clocks.tickAt(this.clock, this.now()) };
  }

  /**
   * Answers a question of the gateway's.
   *
   * @param question {id, speed}
   * @param heardMs steady clock when it was received
   * @param send takes the answer, {id, boot, received, sent}, and gives what the gateway said
   */
  async answer({ id, speed }, heardMs, send) {
    this.#look();
    if (speed !== this.clock.speed) this.restart(speed);
    const { boot } = this.clock;
    const received = clocks.tickAt(this.clock, heardMs + ROUNDING_MS);
    await new Promise((resolve) => setTimeout(resolve, 2 * ROUNDING_MS));
    if (this.clock.boot !== boot) return;
    const sent = Math.max(received, clocks.tickAt(this.clock, this.now()));
    const said = await send({ id, boot, received, sent });
    if (said.compared) this.clock = clocks.compared(this.clock, boot);
  }

  isTimeless() {
    return clocks.isTimeless(this.clock, this.now());
  }

  #look() {
    const nowMs = this.now();
    const wallMs = this.wall();
    if (clocks.hasShifted(this.clock, nowMs, wallMs)) this.restart();
    else this.clock = clocks.looked(this.clock, nowMs, wallMs);
  }
}

export const ownClock = new OwnClock();
ownClock.watch(document);
