// One question at a time, over the page: a title, something to choose, perhaps words, and one
// button that does it. The native dialog keeps the focus inside and gives it back.
import { html, nothing } from "lit";
import { say } from "../lib/say.js";

export class Ask {
  question = null;

  constructor(page, redraw) {
    this.page = page;
    this.redraw = redraw;
  }

  /**
   * @param question {title, body?(answer, again), choices?: [[value, label]], chosen?, words?, yes,
   *     check?(answer) → words of what is wrong, or null}
   * @returns {choice, words, …} or null when the person went back
   */
  put(question) {
    return new Promise((resolve) => {
      this.question = question;
      this.answer = { choice: question.chosen ?? null, words: "", ...question.preset };
      this.wrong = null;
      this.resolve = resolve;
      this.redraw();
      this.page.updateComplete.then(() => this.#dialog().showModal());
    });
  }

  #dialog() {
    return this.page.querySelector("dialog.ask");
  }

  again = () => this.redraw();

  #yes = () => {
    this.wrong = this.question.check?.(this.answer) ?? null;
    if (this.wrong) return this.redraw();
    this.close(this.answer);
  };

  close = (answer = null) => {
    if (!this.question) return;
    this.question = null;
    this.#dialog().close();
    this.redraw();
    this.resolve(answer);
  };

  view() {
    return html`<dialog
      class="ask"
      aria-labelledby="ask-title"
      @cancel=${() => this.close(null)}
      @close=${() => this.close(null)}
    >${this.question ? this.#inside() : nothing}</dialog>`;
  }

  #inside() {
    const { title, body, choices, words, yes } = this.question;
    return html`<h2 id="ask-title">${title}</h2>
      ${choices ? this.#choices(choices) : nothing}
      ${body ? body(this.answer, this.again) : nothing}
      ${words ? this.#words() : nothing}
      ${this.wrong ? html`<p class="wrong" role="alert">! ${this.wrong}</p>` : nothing}
      <div class="row ask-end">
        <button type="button" class="button" data-ask="back" @click=${() => this.close(null)}>
          ${say("ask.cancel")}
        </button>
        ${yes ? html`<button
          type="button"
          class="button strong"
          data-ask="yes"
          aria-disabled=${Boolean(choices && !this.answer.choice)}
          @click=${() => (!choices || this.answer.choice) && this.#yes()}
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

  #words() {
    return html`<label class="field"><span>${say("ask.words")}</span>
      <textarea
        rows="2"
        maxlength="500"
        .value=${this.answer.words}
        @input=${(typed) => (this.answer.words = typed.target.value)}
      ></textarea>
    </label>`;
  }
}
