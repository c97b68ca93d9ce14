// A unit's clock in words: what the gateway says of it, each with the figures it speaks of.
import { html, nothing } from "lit";
import { say, code } from "../lib/say.js";
import { milliseconds, waited, minutes } from "../lib/times.js";

/** The first of these touch the marks of now and stand out; the others are for the record. */
const PRESSING = ["no-bound-yet", "edges-wait", "bound-too-wide", "rate-too-far", "not-answering"];

/** The units whose clocks touch the marks of now, each a way down to its card. */
export function clocksToLookAt(units) {
  const found = units.filter((unit) => unit.clockTroubles.some((one) => PRESSING.includes(one)));
  if (found.length === 0) return nothing;
  return html`<section aria-labelledby="to-look-at" class="to-look-at">
    <h2 id="to-look-at">${say("bench.clocks-to-look-at")}</h2>
    ${found.map((unit) => html`<button
      type="button"
      class="button"
      data-act="to-${unit.id}"
      @click=${() => goTo(unit.id)}
    >${unit.id}</button>`)}
  </section>`;
}

function goTo(id) {
  const heading = document.querySelector(`#unit-${id}`);
  heading?.scrollIntoView({ block: "start" });
  heading?.focus({ preventScroll: true });
}

export function clockTroubles(unit, nowMicros) {
  if (unit.clockTroubles.length === 0) return nothing;
  const values = figuresOf(unit, nowMicros);
  return html`<ul class="clock-troubles">${unit.clockTroubles.map((trouble) =>
    html`<li class=${PRESSING.includes(trouble) ? "pressing" : ""}>
      <span aria-hidden="true">${PRESSING.includes(trouble) ? "!" : "·"} </span>${
        code("clock-trouble", trouble, trouble, values)}
    </li>`)}</ul>`;
}

function figuresOf({ clock, answers, waiting }, nowMicros) {
  return {
    ...clock,
    ...answers,
    waiting,
    width: milliseconds(clock.boundWidthMicros),
    rate: ppm(clock.ratePartsPerBillion),
    ago: waited(clock.lastFaultMicros, nowMicros),
    age: minutes(clock.lastExchangeAgeMicros / 1e6),
  };
}

/** Parts per million with their sign, one digit. */
export function ppm(partsPerBillion) {
  const sign = partsPerBillion > 0 ? "+" : partsPerBillion < 0 ? "−" : "";
  return sign + (Math.abs(partsPerBillion) / 1000).toFixed(1);
}
