// One question at a time, over the middle of the page: a title, something to choose, perhaps
// words, and one button that does it. Header and stop stay in reach, so this is no modal dialog;
// what lies beneath is inert meanwhile, and the focus comes back to where it was. What is wrong
// with an answer is said beside the buttons: a long question scrolls, and they stay in sight.
import { html, nothing } from "lit";
import { say } from "../lib/say.js";

export class Ask {
  question = null;

  constructor(page, redraw) {
    this.page = page;
    this.redraw = redraw;
  }

  /**
   * @param question {title, body?(answer), choices?: [[value, label]], chosen?, words? (true, or
   *     the key of another label), typed? (what the answer begins with), yes?, more? (a button of
   *     its own), check?(answer) → words of what is wrong, or null}
   * @returns {choice, words, …} or null when the person went back
   */
  async put(question) {
    this.close(null);
    this.question = question;
    this.answer = { choice: question.chosen ?? null, words: "", ...question.typed };
    this.wrong = null;
    this.before = document.activeElement;
    this.beforeAct = this.before?.dataset.act;
    const answered = new Promise((resolve) => (this.resolve = resolve));
    this.redraw();
    await this.page.updateComplete;
    this.page.querySelector(".ask")?.focus();
    return answered;
  }

  async close(answer = null) {
    if (!this.question) return;
    this.question = null;
    this.redraw();
    this.resolve(answer);
    await this.page.updateComplete;
    if (!this.question) this.#giveFocusBack();
  }

  /** The button may have been drawn anew meanwhile; it is known by its act. */
  #giveFocusBack() {
    if (this.before?.isConnected) this.before.focus();
    else if (this.beforeAct) this.page.querySelector(`[data-act="${this.beforeAct}"]`)?.focus();
  }

  #yes() {
    if (this.question.choices && !this.answer.choice) return;
    this.wrong = this.question.check?.(this.answer) ?? null;
    if (this.wrong) this.redraw();
    else this.close(this.answer);
  }

  #key = (press) => {
    if (press.key === "Escape") this.close(null);
  };

  view() {
    if (!this.question) return nothing;
    return html`<div class="scrim">
      <section class="ask" role="dialog" aria-labelledby="ask-title" tabindex="-1" @keydown=${this.#key}>
        ${this.#inside()}
      </section>
    </div>`;
  }

  #inside() {
    const { title, body, choices, words } = this.question;
    return html`<h2 id="ask-title">${title}</h2>
      ${choices ? this.#choices(choices) : nothing}
      ${body ? body(this.answer) : nothing}
      ${words ? this.#words(words) : nothing}
      ${this.#end()}`;
  }

  #end() {
    const { choices, yes, more } = this.question;
    return html`<div class="row ask-end">
      ${this.wrong ? html`<p class="wrong" role="alert">! ${this.wrong}</p>` : nothing}
      <button type="button" class="button" data-ask="back" @click=${() => this.close(null)}>
        ${say("ask.cancel")}
      </button>
      ${more ?? nothing}
      ${yes ? html`<button
        type="button"
        class="button strong"
        data-ask="yes"
        aria-disabled=${Boolean(choices && !this.answer.choice)}
        @click=${() => this.#yes()}
      >${yes}</button>` : nothing}
    </div>`;
  }

  #choices(choices) {
    return html`<fieldset class="choices">
      <legend>${this.question.legend ?? say("ask.reason")}</legend>
      ${choices.map(([value, label]) => html`<label class="choice">
        <input
          type="radio"
          name="ask"
          value=${value}
          .checked=${this.answer.choice === value}
          @change=${() => {
            this.answer.choice = value;
            this.redraw();
          }}
        /><span>${label}</span>
      </label>`)}
    </fieldset>`;
  }

  #words(label) {
    return html`<label class="field"><span>${say(label === true ? "ask.words" : label)}</span>
      <textarea
        rows="2"
        maxlength="500"
        .value=${this.answer.words}
        @input=${(typed) => (this.answer.words = typed.target.value)}
      ></textarea>
    </label>`;
  }
}
