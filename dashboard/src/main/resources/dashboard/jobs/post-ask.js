// The question to the proctor at the moment it matters: the finish was seen and a required act was
// not. Big, with sound, while the candidate can still go back and put it right.
import { html, nothing } from "lit";
import { say, text } from "../lib/say.js";
import * as sound from "../lib/sound.js";

/** What is missing now, named so that a change is heard once. */
function missingNow(candidate) {
  return candidate?.station?.missing ?? [];
}

export class MissingAct {
  #heard = "";

  /** Sounds when something new is missing. */
  listen(candidate) {
    const missing = missingNow(candidate);
    const name = missing.map((one) => `${candidate.number}/${candidate.station.id}/${one.id}`).join();
    if (name !== "" && name !== this.#heard) sound.play("alarm");
    this.#heard = name;
  }

  view(candidate) {
    const missing = missingNow(candidate);
    if (missing.length === 0) return nothing;
    return html`<section class="missing" role="alert" data-missing=${missing.length}>
      <h2><span aria-hidden="true">! </span>${say("missing.title")}</h2>
      <ul>${missing.map((one) => html`<li>${text(one.words ?? one.name)}</li>`)}</ul>
      <p>${say("missing.how")}</p>
    </section>`;
  }
}
