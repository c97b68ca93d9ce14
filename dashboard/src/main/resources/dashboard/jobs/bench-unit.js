// One field unit: its health in words, its counts, its clock's figures, each with its unit.
import { html, nothing } from "lit";
import { say, text, code } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import { milliseconds, waited } from "../lib/times.js";
import { clockTroubles, ppm } from "./bench-clock.js";

const BLINK_SECONDS = 10;
const MARKS = { up: "✓", silent: "!", "off-line": "✕", "never-seen": "○" };

export function unitCard(page, unit) {
  const isOpen = page.plots.unit === unit.id;
  return html`<li class="card unit unit-${unit.status} ${isOpen ? "wide" : ""}">
    <h3 id="unit-${unit.id}" tabindex="-1">${unit.id} <span class="quiet">${text(unit.place)}</span></h3>
    <p><strong><span aria-hidden="true">${MARKS[unit.status] ?? "?"} </span>${code("unit", unit.status)}</strong>
      ${unit.sinceMicros >= 0 && unit.status !== "never-seen"
        ? say("bench.since", { time: waited(unit.sinceMicros, page.now()) })
        : nothing}</p>
    ${clockTroubles(unit, page.now())}
    <button
      type="button"
      class="button"
      data-act="clock-${unit.id}"
      aria-expanded=${isOpen}
      aria-controls=${isOpen ? `clock-of-${unit.id}` : nothing}
      @click=${() => page.plots.toggle(unit.id)}
    >${say(isOpen ? "plot.close" : "plot.open", { unit: unit.id })}</button>
    ${page.plots.view(unit)}
    <dl class="figures">${figures(unit)}</dl>
    ${page.badge.role === "technician" ? page.button(
      `identify-${unit.id}`,
      say("bench.identify", { unit: unit.id }),
      () => page.act(`identify-${unit.id}`, acts.identify(unit.id, BLINK_SECONDS), {
        done: "bench.identified",
        values: { unit: unit.id, seconds: BLINK_SECONDS },
      }),
    ) : nothing}
  </li>`;
}

function figures(unit) {
  const { clock, answers } = unit;
  return [
    ["edges", unit.edges],
    ["duplicates", unit.duplicates],
    ["gaps", unit.gaps.length > 0 ? unit.gaps.join(", ") : say("bench.no-gaps")],
    ["conflicts", unit.conflicts],
    ["refused", unit.refused],
    ["bound", clock.boundWidthMicros >= 0
      ? `${milliseconds(clock.boundWidthMicros)} ms`
      : say("bench.no-bound")],
    ["rate", clock.exchanges > 0 ? `${ppm(clock.ratePartsPerBillion)} ppm` : say("bench.unknown")],
    ["trip", known(clock.floorRoundTripMicros, (micros) => `${milliseconds(micros)} ms`)],
    ["loss", answers.asked > 0 ? say("bench.lost", answers) : say("bench.unknown")],
    ["exchange", known(clock.lastExchangeAgeMicros, (micros) =>
      say("bench.ago", { seconds: Math.floor(micros / 1e6) }))],
    ["jumps", clock.faults > 0 ? clock.faults : say("bench.none")],
    ["battery", known(unit.batteryMillivolts, (mv) => `${(mv / 1000).toFixed(2)} V`)],
    ["signal", unit.rssiDbm ? `${unit.rssiDbm} dBm` : say("bench.unknown")],
    ["buffer", known(unit.bufferFill, String)],
    ["firmware", unit.firmware || say("bench.unknown")],
  ].map(([name, value]) => html`<div><dt>${say(`bench.${name}`)}</dt><dd>${value}</dd></div>`);
}

function known(value, words) {
  return value === undefined || value === null || value < 0 ? say("bench.unknown") : words(value);
}
