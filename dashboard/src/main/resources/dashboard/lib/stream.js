// Keeps one live stream open with a bearer token, which the browser's own EventSource can't send.
// It never polls: a broken stream is opened again after a growing wait, a silent one is broken
// first. All waits are real time, whatever speed the exam runs at.
import { sseReader } from "./sse.js";

const FIRST_WAIT_MS = 300;
const LONGEST_WAIT_MS = 4000;
const SILENCE_MS = 5000;

/** The wait before the n-th attempt (from 0), spread so that tablets do not return in step. */
export function backoffMs(attempt, random = Math.random) {
  const wait = Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** attempt);
  return Math.round(wait * (0.8 + 0.4 * random()));
}

/**
 * @param hooks onBytes(), onMessage({event, id, data}), onLost(), onRefused(status)
 */
export class Stream {
  constructor(address, token, hooks) {
    this.address = address;
    this.token = token;
    this.hooks = hooks;
    this.attempt = 0;
    this.closed = false;
  }

  open() {
    this.wake = () => this.#hurry();
    addEventListener("online", this.wake);
    document.addEventListener("visibilitychange", this.wake);
    this.#run();
  }

  close() {
    this.closed = true;
    removeEventListener("online", this.wake);
    document.removeEventListener("visibilitychange", this.wake);
    this.abort?.abort();
    this.#hurry();
  }

  async #run() {
    while (!this.closed) {
      try {
        if (!(await this.#once())) return;
      } catch {
        // Every failure of a link is the same to a page: it is lost, and tried again.
      }
      if (this.closed) return;
      this.hooks.onLost();
      await this.#wait(backoffMs(this.attempt++));
    }
  }

  /** One connection from open to end; false when the gateway refused and asking again is no use. */
  async #once() {
    this.abort = new AbortController();
    this.#listen();
    try {
      const headers = { Accept: "text/event-stream" };
      if (this.token) headers.Authorization = `Bearer ${this.token}`;
      const answer = await fetch(this.address, {
        headers,
        cache: "no-store",
        signal: this.abort.signal,
      });
      if (answer.status === 401 || answer.status === 403) {
        this.hooks.onRefused(answer.status);
        return false;
      }
      if (!answer.ok) throw new Error(`stream ${answer.status}`);
      await this.#read(answer.body.getReader());
      return true;
    } finally {
      clearTimeout(this.silence);
    }
  }

  async #read(reader) {
    const decoder = new TextDecoder();
    const take = sseReader((message) => this.hooks.onMessage(message));
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      this.attempt = 0;
      this.#listen();
      this.hooks.onBytes();
      take(decoder.decode(value, { stream: true }));
    }
  }

  /** A link can die without a word: silence breaks the connection so that a new one is tried. */
  #listen() {
    clearTimeout(this.silence);
    const { abort } = this;
    this.silence = setTimeout(() => abort.abort(), SILENCE_MS);
  }

  #wait(ms) {
    return new Promise((resolve) => {
      this.resume = resolve;
      setTimeout(resolve, ms);
    });
  }

  #hurry() {
    if (document.visibilityState === "visible") this.resume?.();
  }
}
