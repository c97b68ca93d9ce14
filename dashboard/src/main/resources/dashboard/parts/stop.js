// Stop: the same place on every staff page, one hold of 0.6 s, never queued. If the gateway has
// not acknowledged within one second the page says so over everything and sounds; the radio is
// faster than any retry. When the link is back, the press becomes a note in the journal.
import { html, nothing } from "lit";
import { say } from "../lib/say.js";
import { keep } from "../lib/look.js";
import { Hold } from "../lib/hold.js";
import { rule } from "../lib/ask-gateway.js";
import { acts } from "../lib/acts.js";
import { newKey } from "../lib/key.js";
import * as sound from "../lib/sound.js";

const ANSWER_MS = 1000;
const ALARM_EVERY_MS = 1500;
const UNSENT = "yc-stop-unsent";

export class Stop {
  sending = false;
  unsentAt = null;

  constructor(page, redraw) {
    this.page = page;
    this.redraw = redraw;
    this.hold = new Hold(() => this.#press(), redraw);
  }

  async #press() {
    if (this.sending) return;
    this.sending = true;
    this.redraw();
    const at = new Date().toTimeString().slice(0, 8);
    const answer = await rule(this.page.badge.token, acts.stopAll(), {
      patienceMs: ANSWER_MS,
      tries: 1,
    });
    this.sending = false;
    if (answer.kind === "accepted" || answer.code === "stopped") {
      sound.play("taken");
      this.page.notes.done(say("stop.sent"));
    } else {
      this.#notSent(at);
    }
    this.redraw();
  }

  #notSent(at) {
    this.unsentAt = at;
    keep.set(UNSENT, JSON.stringify({ at, key: newKey() }));
    sound.play("alarm");
    this.alarm = setInterval(() => sound.play("alarm"), ALARM_EVERY_MS);
  }

  #didThat = () => {
    clearInterval(this.alarm);
    this.page.notes.warn(say("stop.waits", { at: this.unsentAt }));
    this.unsentAt = null;
    this.redraw();
  };

  /** Called with each sign of life; writes the note once, also after the page was loaded anew. */
  async linkIsBack() {
    const unsent = keep.get(UNSENT);
    if (!unsent || this.noting || !this.page.badge) return;
    this.noting = true;
    const { at, key } = JSON.parse(unsent);
    const note = acts.note(0, say("stop.note", { at }));
    const answer = await rule(this.page.badge.token, note, { key });
    if (answer.kind === "accepted" && keep.get(UNSENT) === unsent) {
      keep.set(UNSENT, null);
      this.page.notes.warn(say("stop.on-paper", { at }));
    }
    this.noting = false;
  }

  view() {
    const state = this.sending ? "sending" : this.hold.pressing ? "pressing" : "rest";
    return html`<button
      type="button"
      class="zone stop holdable"
      data-act="stop"
      data-state=${state}
      @pointerdown=${this.hold.begin}
      @pointerup=${this.hold.end}
      @pointercancel=${this.hold.end}
      @pointerleave=${this.hold.end}
      @keydown=${this.hold.keyDown}
      @keyup=${this.hold.keyUp}
      @blur=${this.hold.end}
      @contextmenu=${(menu) => menu.preventDefault()}
    >
      <span class="zone-name"><span aria-hidden="true">■ </span>${say("stop.press")}</span>
      <span class="zone-how">${say(state === "rest" ? "stop.how" : `stop.${state}`)}</span>
    </button>`;
  }

  overlay() {
    if (!this.unsentAt) return nothing;
    return html`<div class="not-sent" role="alertdialog" aria-modal="true" aria-labelledby="ns-1"
        aria-describedby="ns-2 ns-3">
      <p id="ns-1" class="not-sent-1">${say("stop.unsent")}</p>
      <p id="ns-2" class="not-sent-2">${say("stop.without")}</p>
      <p id="ns-3">${say("stop.why")}</p>
      <button type="button" class="button" data-act="did-that" @click=${this.#didThat}>
        ${say("stop.done")}
      </button>
    </div>`;
  }
}
