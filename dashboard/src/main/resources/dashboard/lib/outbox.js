// Presses on their way to the gateway: written down before they are sent, sent in the order they
// were made, one at a time, each taken out only by its answer. A page that was loaded anew, or a
// tablet that was charged again, goes on where the last one stopped; the key of each press lets the
// gateway do it once, however often it arrives.
//
// Invariant: a press is in `waiting` until it was answered; a refusal nobody stood by for is in
// `answered` until the person takes note of it.
import { backoffMs } from "./stream.js";

/** Waiting and refused together. The gateway dates so many presses of a tablet later, not more. */
export const OUTBOX_MAX = 200;

const HELD_UP_MS = 2000;

/** Refusals of a moment: the same press under the same key is worth another try. */
const MOMENTARY = ["busy", "no-answer", "journal-trouble"];

/** The gateway does not know this tablet: nothing is lost by waiting for a person to mend that. */
const BLOCKING = ["unknown-device"];

export class Outbox {
  waiting = [];
  answered = [];

  /** False in a browser that keeps nothing: presses then live as long as the page. */
  durable = true;

  /** Why nothing goes out: a refusal's code, or null. */
  blocked = null;

  /** The newest journal entry that one of these presses became. */
  lastEntry = -1;

  #standingBy = new Map();
  #running = false;
  #tries = 0;
  #wake = () => {};

  /**
   * @param store see outbox-store.js
   * @param send takes an entry and gives the gateway's answer, or {kind: "unsent"}
   * @param onChange called after each change; @param wallNow milliseconds
   */
  constructor({ store, send, onChange = () => {}, wallNow = () => Date.now() }) {
    Object.assign(this, { store, send, onChange, wallNow });
    this.loaded = this.#load();
  }

  async #load() {
    try {
      [this.waiting, this.answered] = await Promise.all([
        this.store.waiting(),
        this.store.answered(),
      ]);
    } catch {
      this.durable = false;
    }
    this.#changed();
  }

  #changed() {
    this.onChange();
    this.#run();
  }

  isFull() {
    return this.waiting.length + this.answered.length >= OUTBOX_MAX;
  }

  /** Whether the first in line was tried in vain, and for longer than a hiccup. */
  isHeldUp() {
    const [first] = this.waiting;
    return first !== undefined && this.#tries > 0 && this.wallNow() - first.wallMs >= HELD_UP_MS;
  }

  /**
   * Keeps a press and sends it when its turn comes.
   *
   * @returns false when no more fit, and then it was not taken
   */
  async take(entry) {
    await this.loaded;
    if (this.isFull()) return false;
    let seq = -1;
    try {
      seq = await this.store.keep(entry);
    } catch {
      this.durable = false;
    }
    this.waiting.push(seq < 0 ? entry : { ...entry, seq });
    this.wake();
    this.#changed();
    return true;
  }

  /** The answer to a press, while somebody stands by for it; see `leave`. */
  answerOf(key) {
    return new Promise((resolve) => this.#standingBy.set(key, resolve));
  }

  /** Nobody stands by any more: a refusal will be kept until it is noted. */
  leave(key) {
    this.#standingBy.delete(key);
  }

  /** A sign of life of the gateway: what waits for another try is tried now. */
  wake() {
    this.#wake();
  }

  async takeNote(key) {
    this.answered = this.answered.filter((one) => one.key !== key);
    this.onChange();
    await this.store.noted(key).catch(() => (this.durable = false));
  }

  async #run() {
    if (this.#running) return;
    this.#running = true;
    while (this.waiting.length > 0) {
      const [entry] = this.waiting;
      const answer = await this.send(entry);
      if (isLater(answer)) await this.#later(answer);
      else await this.#settle(entry, answer);
    }
    this.#running = false;
  }

  async #later(answer) {
    this.blocked = BLOCKING.includes(answer.code) ? answer.code : null;
    this.#tries++;
    this.onChange();
    await new Promise((resolve) => {
      this.#wake = resolve;
      setTimeout(resolve, backoffMs(this.#tries));
    });
  }

  /** First on the disk, then in mind: dying between the two repeats a press, and loses none. */
  async #settle(entry, answer) {
    this.#tries = 0;
    this.blocked = null;
    const standingBy = this.#standingBy.get(entry.key);
    this.#standingBy.delete(entry.key);
    const keeps = answer.kind === "refused" && (!standingBy || answer.standing);
    const refusal = keeps ? { key: entry.key, entry, answer, wallMs: this.wallNow() } : null;
    if (entry.seq !== undefined) {
      await this.store.settle(entry.seq, refusal).catch(() => (this.durable = false));
    }
    this.waiting = this.waiting.filter((one) => one !== entry);
    if (refusal) this.answered = [...this.answered.filter((one) => one.key !== entry.key), refusal];
    if (answer.kind === "accepted") this.lastEntry = Math.max(this.lastEntry, answer.entry ?? -1);
    this.onChange(refusal);
    standingBy?.({ ...answer, kept: refusal !== null });
  }
}

function isLater({ kind, code }) {
  return kind === "unsent" || MOMENTARY.includes(code) || BLOCKING.includes(code);
}
