// The safety officer's page: how hot it is, how sure that is, who is out in it, and what to do.
import { html, svg, nothing } from "lit";
import { Page } from "../parts/page.js";
import { courseRulings } from "../parts/course-rulings.js";
import { groundNotes } from "../parts/ground.js";
import { isNeeded, standBy } from "../parts/stand-by.js";
import { isOpen, startOfDay } from "../parts/start-of-day.js";
import { say } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import { wallAt } from "../lib/exam-clock.js";
import { wallClock } from "../lib/times.js";
import "../words/of-watch.js";
import { centi, dayPicture, deci, minutesOf } from "./watch-state.js";
import { movingList } from "./watch-moving.js";
import { tellings } from "./watch-told.js";

class Watch extends Page {
  job = { name: "watch", roles: ["safety", "coordinator"], stream: "watch" };

  /** Whom the safety officer has decided to let finish; the page's own, sent to nobody. */
  letFinish = new Set();

  framed({ teams, moving }) {
    const out = isNeeded(teams) ? moving.map((one) => one.number) : [];
    this.letFinish = new Set(out.filter((number) => this.letFinish.has(number)));
  }

  /**
   * While a team is away who is out comes first: each of them waits for a decision. Then what has
   * to be signed before anybody is released.
   */
  middle(frame) {
    const first = isNeeded(frame.teams);
    const people = html`${movingList(this, frame)} ${standBy(this, frame.teams)}`;
    const list = startOfDay(this, frame.startOfDay);
    const early = isOpen(frame.startOfDay);
    return html`
      ${first ? people : nothing}
      ${early ? list : nothing} ${this.#level(frame)} ${tellings(this)} ${courseRulings(this, frame.head)}
      ${first ? nothing : people} ${groundNotes(this, frame.surfaces)}
      ${early ? nothing : list} ${day(frame)} ${emergency()}
    `;
  }

  #level({ head, heat }) {
    return html`<section class="card" aria-labelledby="heat">
      <h2 id="heat">${say("heat.name")}</h2>
      <p class="large" data-level=${head.heat.level}>${levelWords(head.heat, heat)}</p>
      ${head.heat.readingAgeMicros < 0 ? html`<p>${say("heat.no-reading")}</p>` : figures(head.heat, heat)}
      ${this.#state(heat)} ${reasons(heat)}
      ${heat.likelyLevel >= 0 ? html`<p>${say("watch.likely", {
        level: say(`heat.${heat.likelyLevel}`),
        at: wallClock(wallAt(head, heat.likelyMicros)),
      })}</p>` : nothing}
      ${heat.acknowledgedBy
        ? html`<p><span aria-hidden="true">✓ </span>${say("watch.seen-by", { person: heat.acknowledgedBy })}</p>`
        : this.button("acknowledge", say("watch.acknowledge"), () =>
          this.act("acknowledge", acts.acknowledgeHeat(), { quiet: true }))}
      ${cautions(heat)}
    </section>`;
  }

  #state(heat) {
    const lines = [];
    if (heat.lightningOverMicros >= 0) {
      lines.push(say("watch.lightning-over", { minutes: minutesOf(heat.lightningOverMicros - this.now()) }));
    }
    if (heat.freshness !== "fresh" && heat.freshness !== "none") lines.push(say(`watch.${heat.freshness}`));
    if (heat.confirmation !== "none") lines.push(say(`watch.${heat.confirmation}`));
    for (const one of heat.suspicions) lines.push(say(`watch.${one}`));
    return lines.map((line) => html`<p>
      <span aria-hidden="true">! </span><strong>${line}</strong>
    </p>`);
  }

  beside() {
    return nothing;
  }
}

function levelWords(head, heat) {
  if (head.level >= 0) return say(`heat.${head.level}`);
  return heat.was >= 0 ? say("watch.unknown-was", { was: say(`heat.${heat.was}`) }) : say("heat.unknown");
}

function figures(head, heat) {
  return html`
    <p>${say("watch.index", {
      index: deci(heat.indexDeciF),
      more: deci(heat.indexHighDeciF - heat.indexDeciF),
    })}</p>
    <p>${say("watch.wbgt", {
      wbgt: centi(heat.wbgtCentiC),
      low: centi(heat.wbgtLowCentiC),
      high: centi(heat.wbgtHighCentiC),
    })}</p>
    <p>${say("watch.air-now", { air: centi(head.centiCelsius), humid: Math.round(head.centiPercent / 100) })}
      ${say("watch.age", { age: Math.floor(head.readingAgeMicros / 60_000_000) })}</p>
    <p class="quiet">${say("watch.method", { method: heat.method })}
      ${heat.by ? say("watch.by", { by: heat.by }) : nothing}</p>
  `;
}

function reasons(heat) {
  if (heat.reasons.length === 0) return nothing;
  return html`<ul>${heat.reasons.map((reason) => html`<li>${say(
    `watch.reason-${reason.kind}`,
    { level: reason.level, value: deci(reason.valueDeci), bound: deci(reason.boundDeci) },
  )}</li>`)}</ul>`;
}

function cautions(heat) {
  return html`
    <p>${say("watch.defer")}</p>
    <p class="quiet">${heat.signedBy
      ? say("watch.signed", { version: heat.boundsVersion, by: heat.signedBy })
      : say("watch.unsigned", { version: heat.boundsVersion })}
      ${heat.turnoutSet ? nothing : say("watch.no-turnout")}
      ${heat.plateSet ? nothing : say("watch.no-plate")}</p>
  `;
}

function day({ day: points, heat }) {
  const picture = dayPicture(points, heat.indexBoundsDeciF);
  if (!picture) return nothing;
  return html`<section aria-labelledby="day">
    <h2 id="day">${say("watch.day")}</h2>
    <figure class="plot">
      <div class="plot-field" aria-hidden="true">
        <p class="plot-y"><span>${deci(picture.high)} °F</span><span>${deci(picture.low)} °F</span></p>
        <svg viewBox="0 0 1000 1000" preserveAspectRatio="none">
          ${svg`<path class="grid" d=${picture.bounds.map((bound) => `M0 ${bound.y}H1000`).join("")} />
            <path class="grid" d=${picture.upper} />
            <path class="course" d=${picture.line} />`}
        </svg>
        <p class="plot-x"><span>${say("plot.ago-minutes", { minutes: minutesOf(picture.spanMicros) })}</span>
          <span>${say("watch.newest")}</span></p>
      </div>
      <figcaption>${say("watch.plot", {
        bounds: heat.indexBoundsDeciF.map((value, index) => `${index + 1}: ${deci(value)} °F`).join(", "),
      })}</figcaption>
    </figure>
  </section>`;
}

function emergency() {
  return html`<section class="card" aria-labelledby="emergency">
    <h2 id="emergency">${say("watch.emergency")}</h2>
    <p class="large">${say("watch.emergency-signs")}</p>
    <p>${say("watch.emergency-do")}</p>
  </section>`;
}

customElements.define("yc-watch", Watch);
