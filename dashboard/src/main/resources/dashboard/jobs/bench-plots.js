// The chosen unit's clock drawn: the legs of its exchanges around the fitted line with the limits,
// and its Allan deviation. It is asked for when it is opened, and again when a frame says that the
// unit answered since; with one unit open at a time that is one small answer in five seconds.
import { html, svg, nothing } from "lit";
import { say } from "../lib/say.js";
import { read } from "../lib/ask-gateway.js";
import { milliseconds, waited } from "../lib/times.js";
import { legsPicture, legsInFigures, steadinessPicture } from "./clock-state.js";

/** At a demonstration's speed exchanges come faster than a picture can be looked at. */
const ASK_AGAIN_MS = 1000;
const AFTER_FAILURE_MS = 4000;

/** What a picture is of: another boot or another exchange, and it is out of date. */
function state(unit) {
  return `${unit.boot} ${unit.clock.exchanges}`;
}

export class ClockPlots {
  unit = "";
  #page;
  #sheet = null;
  #failed = false;
  #asking = false;
  #askedMs = -Infinity;
  #drawnOf = "";

  constructor(page) {
    this.#page = page;
  }

  toggle(id) {
    this.unit = this.unit === id ? "" : id;
    this.#sheet = null;
    this.#failed = false;
    this.#drawnOf = "";
    this.#askedMs = -Infinity;
    this.framed(this.#page.link.frame);
    this.#page.requestUpdate();
  }

  /** Asks when the newest frame knows more than the picture; too soon, and it waits for its turn. */
  framed(frame) {
    const unit = frame?.units.find((one) => one.id === this.unit);
    if (!unit || this.#asking || state(unit) === this.#drawnOf) return;
    this.#asking = true;
    const pauseMs = this.#failed ? AFTER_FAILURE_MS : ASK_AGAIN_MS;
    const dueMs = this.#askedMs + pauseMs - performance.now();
    setTimeout(() => this.#ask(unit), Math.max(0, dueMs));
  }

  async #ask(unit) {
    this.#askedMs = performance.now();
    const answer = await read(`/api/clock/${unit.id}`, this.#page.badge?.token);
    const sheet = await answer?.json().catch(() => null);
    this.#asking = false;
    if (unit.id === this.unit) {
      this.#failed = !sheet;
      this.#sheet = sheet ?? this.#sheet;
      this.#drawnOf = sheet ? state(unit) : "";
      this.#page.requestUpdate();
    }
    this.framed(this.#page.link.frame);
  }

  view(unit) {
    if (unit.id !== this.unit) return nothing;
    return html`<div class="plots" id="clock-of-${unit.id}">
      ${this.#failed ? html`<p role="status">${say("plot.failed")}</p>` : nothing}
      ${this.#sheet ? this.#drawn(this.#sheet) : this.#failed ? nothing : html`<p>${say("plot.asking")}</p>`}
    </div>`;
  }

  #drawn({ trace, gatewayMicros }) {
    if (trace.envelope.length === 0) return html`<p>${say("plot.nothing")}</p>`;
    return html`
      <p class="quiet">${say("plot.drawn", { age: waited(gatewayMicros, this.#page.now()) })}</p>
      ${legsFigure(trace)} ${steadinessFigure(trace.steadiness)} ${legsTable(trace.exchanges)}
    `;
  }
}

function legsFigure(trace) {
  const picture = legsPicture(trace);
  const reach = picture.reachMicros / 1000;
  return html`<figure class="plot">
    <h4>${say("plot.legs")}</h4>
    <ul class="plot-key">
      <li><span class="spot up" aria-hidden="true"></span>${say("plot.up")}</li>
      <li><span class="spot down" aria-hidden="true"></span>${say("plot.down")}</li>
      <li><span class="spot band" aria-hidden="true"></span>${say("plot.band")}</li>
    </ul>
    <div class="plot-field" aria-hidden="true">
      <p class="plot-y"><span>+${reach} ms</span><span>0 ms</span><span>−${reach} ms</span></p>
      <svg viewBox="0 0 1000 1000" preserveAspectRatio="none">
        ${svg`<path class="band" d=${picture.band} />
          <path class="zero" d="M0 500H1000" />
          <path class="leg up" d=${picture.ups} />
          <path class="leg down" d=${picture.downs} />
          <path class="leg beyond" d=${picture.beyond} />`}
      </svg>
      <p class="plot-x"><span>${say("plot.ago", { seconds: Math.round(picture.spanMicros / 1e6) })}</span>
        <span>${say("plot.now")}</span></p>
    </div>
    <figcaption>${legsWords(trace)}
      ${picture.beyondCount > 0 ? say("plot.beyond", { count: picture.beyondCount }) : nothing}</figcaption>
  </figure>`;
}

function legsWords(trace) {
  const figures = legsInFigures(trace);
  const limits = {
    lower: signed(figures.lowerMicros),
    upper: signed(figures.upperMicros),
  };
  if (figures.count === 0) return say("plot.no-legs", limits);
  return say("plot.says", {
    ...limits,
    count: figures.count,
    down: milliseconds(figures.downMicros),
    up: milliseconds(figures.upMicros),
  });
}

function signed(micros) {
  return (micros < 0 ? "−" : "+") + milliseconds(Math.abs(micros));
}

function steadinessFigure(steadiness) {
  const picture = steadinessPicture(steadiness);
  if (!picture) return html`<p>${say("plot.not-steady-yet")}</p>`;
  return html`<figure class="plot">
    <h4>${say("plot.steadiness")}</h4>
    <div class="plot-field" aria-hidden="true">
      <p class="plot-y">${picture.decades.map((one) => html`<span>${perMillion(one.partsPerBillion)} ppm</span>`)}</p>
      <svg viewBox="0 0 1000 1000" preserveAspectRatio="none">
        ${svg`<path class="grid" d=${picture.decades.map((one) => `M0 ${one.y}H1000`).join("")} />
          <path class="course" d=${picture.line} />
          <path class="leg down" d=${picture.spots} />`}
      </svg>
      <p class="plot-x even">${picture.spans.map((one, index) =>
        html`<span>${one.seconds}${index === picture.spans.length - 1 ? " s" : nothing}</span>`)}</p>
    </div>
    <figcaption>${say("plot.steadiness-how")}</figcaption>
    <table class="plot-table">
      <thead><tr><th scope="col">${say("plot.over")}</th><th scope="col">${say("plot.deviation")}</th></tr></thead>
      <tbody>${steadiness.map((one) => html`<tr>
        <td>${one.spanMicros / 1e6} s</td><td>${perMillion(one.partsPerBillion)} ppm</td>
      </tr>`)}</tbody>
    </table>
  </figure>`;
}

/** Parts per billion as parts per million, without digits that say nothing. */
function perMillion(partsPerBillion) {
  return String(Number((partsPerBillion / 1000).toPrecision(3)));
}

function legsTable(exchanges) {
  if (exchanges.length === 0) return nothing;
  return html`<details class="plot-details">
    <summary class="button">${say("plot.table", { count: exchanges.length })}</summary>
    <table class="plot-table">
      <thead><tr>
        <th scope="col">${say("plot.age")}</th><th scope="col">${say("plot.down-short")}</th>
        <th scope="col">${say("plot.up-short")}</th>
      </tr></thead>
      <tbody>${[...exchanges].reverse().map((one) => html`<tr>
        <td>${(one.ageMicros / 1e6).toFixed(0)} s</td>
        <td>${signed(one.downMicros)} ms</td><td>${signed(one.upMicros)} ms</td>
      </tr>`)}</tbody>
    </table>
  </details>`;
}
