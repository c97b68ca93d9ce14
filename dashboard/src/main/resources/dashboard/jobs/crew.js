// The station crew: what has to be put back, longest wait first, and one press when it is.
import { html, nothing } from "lit";
import { Page } from "../parts/page.js";
import { ownStandBy } from "../parts/stand-by.js";
import { stationList } from "../parts/stations.js";
import { say, text } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import { waited } from "../lib/times.js";

class Crew extends Page {
  job = { name: "crew", roles: ["crew", "coordinator"], stream: "crew" };

  middle(frame) {
    return html`
      <section aria-labelledby="resets">
        <h2 id="resets">${say("crew.resets")}</h2>
        ${frame.resets.length === 0
          ? html`<p class="large calm"><span aria-hidden="true">✓ </span>${say("crew.nothing")}</p>`
          : html`<ul class="resets">${frame.resets.map((reset) => this.#reset(reset))}</ul>`}
      </section>
      ${ownStandBy(this, frame.head)}
      <section aria-labelledby="all">
        <h2 id="all">${say("crew.all-stations")}</h2>
        ${stationList(frame.stations, this.now())}
      </section>
    `;
  }

  #reset(reset) {
    const open = reset.openContacts.map(text);
    return html`<li class="card reset ${open.length > 0 ? "open" : ""}">
      <div>
        <h3>${text(reset.name)}</h3>
        <p class="number-line">${say("crew.waits", { time: waited(reset.sinceMicros, this.now()) })}</p>
        <p>${open.length > 0
          ? html`<span aria-hidden="true">✕ </span><strong>${say("crew.open", {
            names: open.join(", "),
          })}</strong>`
          : html`<span aria-hidden="true">✓ </span>${say("crew.all-home")}`}</p>
      </div>
      ${this.button(
        `ready-${reset.station}`,
        say("crew.ready"),
        () => this.#ready(reset),
        {
          kind: open.length > 0 ? "huge" : "huge strong",
          off: open.length > 0,
          aria: say("crew.ready-of", { station: text(reset.name) }),
        },
      )}
    </li>`;
  }

  #ready(reset) {
    this.act(`ready-${reset.station}`, acts.stationReady(reset.station), {
      done: "crew.done",
      values: { station: text(reset.name) },
    });
  }

  beside() {
    return nothing;
  }
}

customElements.define("yc-crew", Crew);
