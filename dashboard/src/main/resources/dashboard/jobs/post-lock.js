// Water lock: rain on glass presses too. Locked, the page takes no press but stop's, until someone
// holds the key for 0.6 s, which drops do not.
import { html, nothing } from "lit";
import { say } from "../lib/say.js";
import { patch } from "../parts/stations.js";
import { Hold } from "../lib/hold.js";

export class WaterLock {
  on = false;

  constructor(redraw) {
    this.hold = new Hold(() => this.#turn(redraw), redraw);
  }

  #turn(redraw) {
    this.on = !this.on;
    redraw();
  }

  #key(name) {
    return html`<button
      type="button"
      class="button holdable"
      data-act="lock"
      data-state=${this.hold.pressing ? "pressing" : "rest"}
      @pointerdown=${this.hold.begin}
      @pointerup=${this.hold.end}
      @pointercancel=${this.hold.end}
      @pointerleave=${this.hold.end}
      @keydown=${this.hold.keyDown}
      @keyup=${this.hold.keyUp}
      @blur=${this.hold.end}
      @contextmenu=${(menu) => menu.preventDefault()}
    ><span>${name}<br />${say("lock.how")}</span></button>`;
  }

  /** The key beside the zones while unlocked. */
  view() {
    return this.on ? nothing : this.#key(say("lock.on"));
  }

  /** Over the middle of the page while locked. */
  cover(number) {
    if (!this.on) return nothing;
    return html`<div class="scrim locked" role="status">
      ${number ? patch(number, "giant") : nothing}
      <p class="large">${say("lock.title")}</p>
      <p>${say("lock.stop")}</p>
      ${this.#key(say("lock.off"))}
    </div>`;
  }
}
