// The strip of edges: one row per sensor, drawn like a logic trace.
import { html, svg, nothing } from "lit";
import { say, text, code } from "../lib/say.js";
import { tracePath } from "./trace-state.js";

const WIDTH = 1000;
const HEIGHT = 36;

export function strip(units, traces, nowMicros, spanMicros) {
  return html`<div class="strip">${units.map((unit) => unit.sensors.map((sensor) =>
    row(unit, sensor, traces.get(`${unit.id}/${sensor.number}`) ?? [], nowMicros, spanMicros)))}</div>`;
}

function row(unit, sensor, edges, nowMicros, spanMicros) {
  const name = text(sensor.name);
  const state = stateOf(sensor, edges);
  const path = tracePath(edges, sensor.state, { nowMicros, spanMicros, width: WIDTH, height: HEIGHT });
  const label = say("bench.trace-of", { unit: unit.id, number: sensor.number, name });
  return html`<div class="strip-row">
    <p class="strip-name"><strong>${unit.id}/${sensor.number}</strong> ${name}</p>
    <svg class="strip-trace" viewBox="0 0 ${WIDTH} ${HEIGHT}" preserveAspectRatio="none" role="img"
        aria-label="${label}: ${stateWords(sensor, state)}">
      ${path ? svg`<path d=${path} vector-effect="non-scaling-stroke" />` : nothing}
    </svg>
    <p class="strip-state">${stateWords(sensor, state)}</p>
  </div>`;
}

function stateOf(sensor, edges) {
  return edges.length > 0 ? edges.at(-1).state : sensor.state;
}

export function stateWords(sensor, state) {
  return state < 0 ? say("state.unknown") : code("state", `${sensor.kind}.${state}`, String(state));
}
