// The course as it lies in the yard: stations along a measuring tape that turns back at the end of
// each row. On a narrow screen the tape runs straight down.
import { html, nothing } from "lit";
import { say, text } from "../lib/say.js";
import { waited } from "../lib/times.js";
import { warning } from "./sentences.js";
import { placesOf } from "../jobs/control-state.js";
import { patch, stationState } from "./stations.js";

const PER_ROW = 3;

export function courseMap(stations, onCourse, now) {
  const places = placesOf(onCourse);
  const rows = [];
  for (let from = 0; from < stations.length; from += PER_ROW) {
    rows.push({ from, stations: stations.slice(from, from + PER_ROW) });
  }
  return html`<div class="course">
    ${rows.map((row, index) => html`<ol
      class="course-row ${index % 2 === 1 ? "back" : ""}"
      start=${row.from + 1}
    >${row.stations.map((station, at) =>
      stop(station, row.from + at, places.get(row.from + at), now))}</ol>`)}
  </div>`;
}

function stop(station, index, place = { at: [], to: [] }, now) {
  return html`<li class="stop-at ${station.trouble ? "troubled" : ""}">
    <span class="stop-name"><span class="stop-index">${index + 1}</span> ${text(station.name)}</span>
    <span class="stop-state">${stationState(station)}${station.state === "ready"
      ? nothing
      : html` ${waited(station.sinceMicros, now)}`}</span>
    ${station.trouble ? html`<span class="stop-trouble">${warning(station.trouble)}</span>` : nothing}
    <span class="stop-here">
      ${place.to.map((one) => html`<span aria-hidden="true">→</span>${who(one)}`)}
      ${place.at.map(who)}
    </span>
  </li>`;
}

function who(one) {
  return html`${patch(one.number)}<span class="aside">${say(`phase.${one.phase}`, {
    index: one.stationIndex + 1,
  })}</span>`;
}
