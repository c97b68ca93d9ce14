// The base of every page: one live stream, one redraw, the header, the stop, the notes. A job adds
// its own middle with `middle(frame)` and the big action beside the stop with `beside(frame)`.
//
// Mental model: the frame is the whole truth and is drawn as it came; a page keeps only what its
// person is in the middle of doing. Everything runs on the browser's one thread.
import { LitElement, html, nothing } from "lit";
import { say } from "../lib/say.js";
import { onLookChange } from "../lib/look.js";
import { badgeFor } from "../lib/badge.js";
import { Stream } from "../lib/stream.js";
import * as linkState from "../lib/link.js";
import { examNow } from "../lib/exam-clock.js";
import { answerClock, rule, wantClock } from "../lib/ask-gateway.js";
import { ownClock } from "../lib/own-clock.js";
import * as sound from "../lib/sound.js";
import { Notes } from "./notes.js";
import { Ask } from "./ask.js";
import { Stop } from "./stop.js";
import { Menu, header, heatNote } from "./header.js";

const REDRAW_MS = 200;

// Common practice, no source: two taps closer than this are one finger bouncing.
const DOUBLE_MS = 400;

export class Page extends LitElement {
  /**
   * What a job says of itself; `maybePublic` asks the gateway also without a badge.
   *
   * @type {{name: string, roles: string[], stream: string, maybePublic?: boolean}}
   */
  job = { name: "front", roles: [], stream: null };

  constructor() {
    super();
    this.link = linkState.noLink(performance.now());
    this.pending = new Set();
    this.pressedMs = new Map();
    const redraw = () => this.requestUpdate();
    this.notes = new Notes(redraw);
    this.ask = new Ask(this, redraw);
    this.menu = new Menu(redraw);
    this.stop = new Stop(this, redraw);
  }

  /** Light DOM: one set of style sheets for all, and labels that reach across parts. */
  createRenderRoot() {
    return this;
  }

  connectedCallback() {
    super.connectedCallback();
    this.badge = this.job.roles.length > 0 ? badgeFor(this.job.roles) : null;
    this.forgetLook = onLookChange(() => this.requestUpdate());
    if (!this.job.stream) return;
    this.beat = setInterval(() => this.requestUpdate(), REDRAW_MS);
    if (this.job.roles.length > 0 && !this.badge && !this.job.maybePublic) {
      this.link = linkState.refused(this.link, 401);
    } else {
      this.#listen();
    }
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.forgetLook();
    clearInterval(this.beat);
    this.stream?.close();
  }

  #listen() {
    const now = () => performance.now();
    this.stream = new Stream(`/api/live/${this.job.stream}`, this.badge?.token, {
      onBytes: () => {
        this.link = linkState.heard(this.link, now());
        this.stop.linkIsBack();
        this.heard();
      },
      onMessage: ({ event, data }) => {
        if (event === "clock") return this.#compare(JSON.parse(data));
        this.link = linkState.framed(this.link, JSON.parse(data), now());
        this.framed(this.link.frame);
        this.requestUpdate();
      },
      onLost: () => (this.link = linkState.lost(this.link)),
      onRefused: (status) => {
        this.link = linkState.refused(this.link, status);
        this.turnedAway();
      },
    });
    if (this.badge) ownClock.onBoot = () => wantClock(this.badge.token);
    this.stream.open();
  }

  /** The gateway compares this tablet's clock with its own, so that presses have a time. */
  #compare(question) {
    if (!this.badge) return;
    const send = (answer) => answerClock(this.badge.token, answer);
    ownClock.answer(question, this.link.heardMs, send);
  }

  /** The first drawn frame leaves a mark, by which a test knows how long a page takes to load. */
  updated() {
    if (this.link.frame && !this.drawn) performance.mark("yc-first-frame");
    this.drawn ||= this.link.frame !== null;
  }

  /** A job that follows frames over time overrides this; it runs before the redraw. */
  framed(_frame) {}

  /** A sign of life of the gateway, also without a frame. */
  heard() {}

  /** The gateway does not let this tablet listen. */
  turnedAway() {}

  /** How an act goes out; a job that must not lose one overrides this. */
  send(act, { basis }) {
    return rule(this.badge.token, act, { basis });
  }

  /** Exam time now, running on between frames; on a link gone silent the clocks stand still. */
  now() {
    const nowMs = performance.now();
    const untilMs = linkState.isStale(this.link, nowMs) ? this.link.heardMs : nowMs;
    return examNow(this.link.frame.head, this.link.framedMs, untilMs);
  }

  /** The newest frame once `entry` is in it; null when it does not come while a person waits. */
  async frameAfter(entry, patienceMs = 3000) {
    const until = performance.now() + patienceMs;
    while (performance.now() < until) {
      if (this.link.frame && this.link.frame.head.frame >= entry) return this.link.frame;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    return null;
  }

  /** A double tap is one press, also where the first one's answer came in between. */
  #isSecondOfTwo(name) {
    const nowMs = performance.now();
    const isSecond = nowMs - (this.pressedMs.get(name) ?? -Infinity) < DOUBLE_MS;
    if (!isSecond) this.pressedMs.set(name, nowMs);
    return isSecond;
  }

  /**
   * Sends an act once, however often its button is pressed meanwhile, and shows the answer.
   *
   * @param name what the act is pending under; buttons ask `pending.has(name)`
   * @param quiet no note when it is accepted: the frame will show it
   * @param seen what of the frame the act is about, for a job that may send it late
   */
  async act(name, act, { basis = -1, done = "act.done", values, quiet = false, seen } = {}) {
    if (this.pending.has(name) || this.#isSecondOfTwo(name)) return null;
    this.pending.add(name);
    this.requestUpdate();
    const answer = await this.send(act, { basis, seen });
    this.pending.delete(name);
    this.show(answer, quiet ? null : say(done, values));
    return answer;
  }

  show(answer, doneWords) {
    if (answer.kind === "accepted") {
      sound.play("taken");
      if (doneWords) this.notes.done(doneWords);
    } else {
      sound.play("refused");
      this.notes.answer(answer);
    }
    this.requestUpdate();
  }

  /** A button that knows its act may be under way. */
  button(name, label, press, { kind = "", off = false, aria = null } = {}) {
    const busy = this.pending.has(name);
    return html`<button
      type="button"
      class="button ${kind}"
      aria-busy=${busy}
      aria-disabled=${off || busy}
      aria-label=${aria ?? nothing}
      data-act=${name}
      @click=${() => !busy && !off && press()}
    >
      ${label}
    </button>`;
  }

  render() {
    const now = performance.now();
    const stale = linkState.isStale(this.link, now);
    document.documentElement.dataset.stale = stale;
    document.documentElement.dataset.link = this.link.phase;
    document.title = `${say(`page.${this.job.name}`)} · Yardclock`;
    const asking = this.ask.question !== null || this.isLocked();
    return html`
      ${header(this, stale, linkState.ageSeconds(this.link, now))}
      <div class="stage">
        <main class="middle job-${this.job.name}" tabindex="0" ?inert=${asking}>
          ${this.#middle()}
        </main>
        ${this.ask.view()} ${this.cover()} ${this.notes.view()}
      </div>
      ${this.badge ? this.#dock(asking) : nothing} ${this.stop.overlay()}
    `;
  }

  #dock(asking) {
    const { frame } = this.link;
    return html`<div class="dock">
      ${this.stop.view()}
      <div class="dock-beside">${frame && !asking ? this.beside(frame) : nothing}</div>
    </div>`;
  }

  #middle() {
    const { phase, frame } = this.link;
    if (phase === "not-enrolled" || phase === "wrong-role") {
      return html`<section class="card">
        <p class="large">${say(`link.${phase}`)}</p>
        <a class="button strong" href="/">${say("link.to-front")}</a>
      </section>`;
    }
    if (this.job.stream && !frame) return html`<p class="large">${say("link.never")}</p>`;
    return html`${this.middle(frame)} ${frame ? heatNote(frame.head.heat) : nothing}`;
  }

  middle(_frame) {
    return nothing;
  }

  /** Whether the middle takes no presses for now; what says so lies over it. */
  isLocked() {
    return false;
  }

  cover() {
    return nothing;
  }

  beside(_frame) {
    return nothing;
  }
}
