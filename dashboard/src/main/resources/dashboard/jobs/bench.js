// The timing technician's page: what each sensor does, live, and how each field unit is.
import { html, nothing } from "lit";
import "../words/of-bench.js";
import { Page } from "../parts/page.js";
import { warnings } from "../parts/sentences.js";
import { say } from "../lib/say.js";
import { gather } from "./trace-state.js";
import { strip } from "./bench-strip.js";
import { unitCard } from "./bench-unit.js";
import { calibration } from "./bench-calibration.js";
import { byHand } from "./bench-by-hand.js";
import { proof } from "./bench-proof.js";
import { triggers } from "./bench-triggers.js";
import { clocksToLookAt } from "./bench-clock.js";
import { ClockPlots } from "./bench-plots.js";

const SPANS = [20, 60, 300];

class Bench extends Page {
  job = { name: "bench", roles: ["technician", "coordinator"], stream: "bench" };
  traces = new Map();
  spanSeconds = 60;
  plots = new ClockPlots(this);

  framed(frame) {
    const longest = SPANS.at(-1) * 1e6;
    this.traces = gather(this.traces, frame.edges, frame.head.gatewayMicros, longest);
    this.plots.framed(frame);
  }

  middle(frame) {
    return html`
      ${this.#alarms(frame.alarms)} ${frame.proof.run ? proof(this, frame) : nothing}
      ${clocksToLookAt(frame.units)}
      <section aria-labelledby="trace">
        <h2 id="trace">${say("bench.trace")}</h2>
        <fieldset class="row"><legend>${say("bench.span-title")}</legend>
          ${SPANS.map((seconds) => html`<button
            type="button"
            class="button"
            aria-pressed=${this.spanSeconds === seconds}
            @click=${() => {
              this.spanSeconds = seconds;
              this.requestUpdate();
            }}
          >${say("bench.span", { seconds })}</button>`)}
        </fieldset>
        <p>${say("bench.trace-how", { seconds: this.spanSeconds })}</p>
        ${strip(frame.units, this.traces, this.now(), this.spanSeconds * 1e6)}
      </section>
      ${frame.proof.run ? nothing : proof(this, frame)} ${triggers(this, frame)}
      ${calibration(this, frame)} ${byHand(frame)}
      <section aria-labelledby="units">
        <h2 id="units">${say("bench.units")}</h2>
        ${frame.units.length === 0 ? html`<p>${say("bench.no-units")}</p>` : nothing}
        <ul class="units">${frame.units.map((unit) => unitCard(this, unit))}</ul>
      </section>
    `;
  }

  #alarms(alarms) {
    return html`<section aria-labelledby="alarms">
      <h2 id="alarms" class="aside">${say("bench.alarms")}</h2>
      ${alarms.length === 0
        ? html`<p><span aria-hidden="true">✓ </span>${say("bench.no-alarms")}</p>`
        : html`<div role="status">${warnings(alarms)}</div>`}
    </section>`;
  }
}

customElements.define("yc-bench", Bench);
