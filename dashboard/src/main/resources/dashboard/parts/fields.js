// Fields of a question: what is typed or chosen goes straight into its answer.
import { html } from "lit";
import { say } from "../lib/say.js";

/** A line to type in. */
export function field(name, label, answer, mode = "decimal") {
  return html`<label class="field"><span>${say(label)}</span>
    <input
      name=${name}
      inputmode=${mode}
      maxlength="12"
      .value=${answer[name] ?? ""}
      @input=${(typed) => (answer[name] = typed.target.value)}
    />
  </label>`;
}

/** The first one is chosen until the person says otherwise, as the browser shows it. */
export function choice(name, label, answer, options) {
  answer[name] ??= options[0][0];
  return html`<label class="field"><span>${say(label)}</span>
    <select name=${name} @change=${(chosen) => (answer[name] = chosen.target.value)}>
      ${options.map(([value, words]) => html`<option
        value=${value}
        ?selected=${answer[name] === value}
      >${words}</option>`)}
    </select>
  </label>`;
}
