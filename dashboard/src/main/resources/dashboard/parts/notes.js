// Short answers above the dock: what was done, what was refused, what was not sent. A good answer
// goes by itself; a bad one stays until it is read away.
import { html, nothing } from "lit";
import { say, code, text } from "../lib/say.js";

const GOOD_MS = 4000;

export class Notes {
  list = [];
  next = 1;

  constructor(redraw) {
    this.redraw = redraw;
  }

  done(words) {
    const id = this.#add("done", words);
    setTimeout(() => this.dismiss(id), GOOD_MS);
  }

  /** An answer that is not "accepted", in the tablet's language. */
  answer({ kind, code: refusal, words, named = [] }) {
    if (kind === "unsent") return this.warn(say("act.unsent"));
    const why = [code("refusal", refusal, words ?? refusal), named.map(text).join("; ")].join(" ").trim();
    this.warn(say("act.refused", { words: why }));
  }

  warn(words) {
    this.#add("warn", words);
  }

  dismiss(id) {
    this.list = this.list.filter((note) => note.id !== id);
    this.redraw();
  }

  #add(tone, words) {
    const id = this.next++;
    // Two at most: more would cover what the person has to press next.
    this.list = [...this.list.filter((note) => note.words !== words), { id, tone, words }].slice(-2);
    this.redraw();
    return id;
  }

  view() {
    return html`<div class="notes" aria-live="assertive">
      ${this.list.map((note) => html`<div class="note ${note.tone}">
        <p><span aria-hidden="true">${note.tone === "done" ? "✓" : "!"} </span>${note.words}</p>
        ${note.tone === "warn" ? html`<button
          type="button"
          class="button"
          @click=${() => this.dismiss(note.id)}
        >${say("act.dismiss")}</button>` : nothing}
      </div>`)}
    </div>`;
  }
}
