// The proctor's page with and without its link: a base that sends each press through the outbox,
// keeps the last frame, and knows whether it is alone with them.
import { Page } from "../parts/page.js";
import { say } from "../lib/say.js";
import * as sound from "../lib/sound.js";
import { newKey } from "../lib/key.js";
import { ownClock } from "../lib/own-clock.js";
import { deliver } from "../lib/ask-gateway.js";
import { isStale, recalled } from "../lib/link.js";
import { Outbox } from "../lib/outbox.js";
import { store } from "../lib/outbox-store.js";
import { LastFrame } from "../lib/last-frame.js";
import { aboutOf, canWait, seenSplit, shownOf, withOwn } from "./post-alone.js";
import { fullWords } from "./post-waiting.js";
import { sameSplit } from "./post-state.js";

/** A link that works answers within tens of milliseconds. */
const LATE_MS = 2000;
const LOOK_MS = 50;

export class LinkedPost extends Page {
  connectedCallback() {
    super.connectedCallback();
    if (!this.badge) return;
    this.lastFrame = new LastFrame(this.badge.device ?? "");
    this.outbox = new Outbox({
      store,
      send: (entry) => this.#deliver(entry),
      onChange: (refusal) => this.#changed(refusal),
    });
    this.#recall();
  }

  async #recall() {
    const kept = await this.lastFrame.recall();
    if (!kept || this.link.frame) return;
    this.link = recalled(this.link, kept.frame, kept.ageMs, performance.now());
    // In a demonstration presses count at its speed, also before the gateway says it again.
    if (ownClock.clock.speed !== kept.frame.head.speed) ownClock.restart(kept.frame.head.speed);
    this.requestUpdate();
  }

  framed(frame) {
    this.lastFrame?.keep(frame);
    const busy = frame.candidate || this.ask.question || this.outbox?.waiting.length > 0;
    if (!busy) this.whenFree?.();
  }

  heard() {
    this.outbox?.wake();
    if (this.wasCut) this.whenLinkIsBack?.();
    this.wasCut = false;
  }

  willUpdate() {
    this.wasCut ||= this.#isCut();
  }

  turnedAway() {
    this.lastFrame?.forget();
  }

  /** Whether the page goes by the last frame and its own presses. */
  isAlone() {
    return this.#isCut() || (this.outbox?.isHeldUp() ?? false);
  }

  #isCut() {
    return this.link.phase === "lost" || isStale(this.link, performance.now());
  }

  /** The candidate as far as this page knows. */
  candidate() {
    const candidate = this.link.frame?.candidate ?? null;
    if (!candidate || !this.outbox || !this.isAlone()) return candidate;
    return withOwn(candidate, this.outbox.waiting.map((entry) => entry.act));
  }

  /** Keeps the press, then sends it; gives up standing by when the link is lost. */
  async send(act, how) {
    if (!canWait(act)) return super.send(act, how);
    const key = newKey();
    const about = aboutOf(act, this.candidate());
    const seen = how.seen ?? seenSplit(act, this.link.frame?.candidate);
    const entry = {
      key,
      ...ownClock.press(),
      compared: ownClock.clock.compared,
      basis: how.basis,
      act,
      wallMs: Date.now(),
      about,
      seen,
    };
    const answer = this.outbox.answerOf(key);
    if (!(await this.outbox.take(entry))) {
      this.outbox.leave(key);
      return { kind: "full" };
    }
    sound.play("taken");
    return Promise.race([answer, this.#late(key)]);
  }

  async #late(key) {
    const until = performance.now() + LATE_MS;
    while (performance.now() < until && !this.isAlone()) {
      await new Promise((resolve) => setTimeout(resolve, LOOK_MS));
    }
    this.outbox.leave(key);
    return { kind: "waits" };
  }

  show(answer, doneWords) {
    if (answer.kind === "waits") {
      sound.play("kept");
      // Alone, the count of what waits says it, and no note may lie over the zones.
      if (!this.isAlone()) this.notes.done(say("gap.kept"));
    } else if (answer.kind === "full") {
      sound.play("alarm");
      this.notes.warn(fullWords());
    } else if (answer.kind === "accepted") {
      if (doneWords) this.notes.done(doneWords);
    } else if (answer.kept) {
      sound.play("refused");
    } else {
      super.show(answer, doneWords);
    }
    this.requestUpdate();
  }

  #changed(refusal) {
    if (refusal) sound.play("refused");
    this.requestUpdate();
  }

  async #deliver({ key, boot, deviceMicros, basis, act, seen }) {
    return deliver(this.badge.token, {
      key,
      boot,
      deviceMicros,
      basis: seen ? await this.#basisNow(basis, act, seen) : basis,
      ...shownOf(seen),
      act,
    });
  }

  /**
   * A ruling says which picture it was made on. While it waited, this tablet's own rulings made new
   * ones: where the split is still what the person saw, the newest picture is as good.
   */
  async #basisNow(basis, act, seen) {
    if (basis < 0 || this.#isCut()) return basis;
    const frame = this.outbox.lastEntry < 0
      ? this.link.frame
      : await this.frameAfter(this.outbox.lastEntry);
    const candidate = frame?.candidate;
    if (!candidate || act.number !== undefined && candidate.number !== act.number) return basis;
    const split = candidate.splits.find((each) => each.station === seen.station);
    return sameSplit(seen, split) ? candidate.revision : basis;
  }
}
