// The front page: whose tablet this is, and the one-time code that makes it so. A link
// /enrol#CODE fills the code in; the part after # never leaves the tablet.
import { html, nothing } from "lit";
import { Page } from "../parts/page.js";
import { say, code as codeWords } from "../lib/say.js";
import { ROLES, HOME, badge, wear, giveBack } from "../lib/badge.js";
import { enrol } from "../lib/ask-gateway.js";
import { store } from "../lib/outbox-store.js";
import { codeFrom, wrongEntry } from "./front-entry.js";

const PAGES = {
  coordinator: ["control", "crew", "watch", "bench", "leaderboard"],
  safety: ["watch", "control", "leaderboard"],
  proctor: ["post"],
  crew: ["crew"],
  technician: ["bench", "leaderboard"],
};

class Front extends Page {
  job = { name: "front", roles: [], stream: null };
  role = null;
  wrong = null;
  code = codeFrom(location.hash);
  person = "";

  middle() {
    const held = ROLES.map(badge).filter(Boolean);
    return html`
      <p class="large">${say("front.lead")}</p>
      ${held.length > 0 ? this.#held(held) : nothing} ${this.#form()}
      <p><a class="button wide" href="/board">${say("front.board")}</a></p>
    `;
  }

  #held(held) {
    return html`<section class="card">
      <h2>${say("front.held")}</h2>
      ${held.map((worn) => html`<div class="row worn">
        ${PAGES[worn.role].map((page, index) => html`<a
          class="button ${index === 0 ? "strong" : ""}"
          href="/${page}?as=${worn.role}"
        >${index === 0
          ? say("front.open-as", {
            page: say(`page.${page}`),
            role: say(`role.${worn.role}`),
            person: worn.person ?? "",
          })
          : say("front.open", { page: say(`page.${page}`) })}</a>`)}
        <button type="button" class="button" @click=${() => this.#giveBack(worn.role)}>
          ${say("front.give-back", { role: say(`role.${worn.role}`) })}
        </button>
      </div>`)}
    </section>`;
  }

  #form() {
    return html`<form class="card" @submit=${this.#submit} novalidate>
      <fieldset class="row">
        <legend>${say("front.who")}</legend>
        ${ROLES.map((role) => html`<button
          type="button"
          class="button role"
          aria-pressed=${this.role === role}
          data-role=${role}
          @click=${() => this.#set({ role })}
        >${say(`role.${role}`)}</button>`)}
      </fieldset>
      <label class="field"><span>${say("front.code")}</span>
        <input
          name="code"
          class="code"
          autocomplete="off"
          autocapitalize="characters"
          spellcheck="false"
          maxlength="16"
          aria-describedby="code-help"
          .value=${this.code}
          @input=${(typed) => (this.code = typed.target.value)}
        />
        <span id="code-help">${say("front.code-help")}</span>
      </label>
      <label class="field"><span>${say("front.person")}</span>
        <input
          name="person"
          autocomplete="name"
          maxlength="60"
          .value=${this.person}
          @input=${(typed) => (this.person = typed.target.value)}
        />
      </label>
      ${this.wrong ? html`<p class="wrong" role="alert">! ${this.wrong}</p>` : nothing}
      <button type="submit" class="button strong wide" data-act="enrol" aria-busy=${this.busy ?? false}>
        ${say("front.enrol")}
      </button>
    </form>`;
  }

  #set(change) {
    Object.assign(this, change);
    this.requestUpdate();
  }

  async #giveBack(role) {
    if (role === "proctor" && !(await this.#mayErase())) return;
    giveBack(role);
    this.requestUpdate();
  }

  /** What the proctor's page kept goes with its badge; presses never sent only if somebody says so. */
  async #mayErase() {
    const waiting = await store.waiting().catch(() => []);
    if (waiting.length > 0) {
      const title = say("front.unsent", { count: waiting.length });
      if (!(await this.ask.put({ title, yes: say("front.unsent-erase") }))) return false;
    }
    await store.erase().catch(() => {});
    return true;
  }

  #submit = async (submit) => {
    submit.preventDefault();
    if (this.busy) return;
    const wrong = wrongEntry(this.code, this.person);
    if (wrong) return this.#set({ wrong: say(wrong) });
    if (badge("proctor") && !(await this.#mayErase())) return;
    this.#set({ busy: true, wrong: null });
    const answer = await enrol(codeFrom(this.code), this.person.trim());
    this.#set({ busy: false });
    if (answer.kind === "accepted") return this.#enrolled(answer);
    this.#set({
      wrong: answer.kind === "unsent"
        ? say("act.unsent")
        : codeWords("refusal", answer.code, answer.words),
    });
  };

  async #enrolled(answer) {
    wear(answer, this.person.trim());
    history.replaceState(null, "", "/");
    if (this.role && this.role !== answer.role) {
      const said = say("front.other-role", {
        role: say(`role.${answer.role}`),
      });
      await this.ask.put({ title: said, yes: say("front.open", { page: say(
        `page.${PAGES[answer.role][0]}`,
      ) }) });
    }
    location.assign(`${HOME[answer.role]}?as=${answer.role}`);
  }
}

customElements.define("yc-front", Front);
