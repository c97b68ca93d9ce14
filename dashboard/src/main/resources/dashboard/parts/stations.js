// Stations and numbers as every staff page draws them.
import { html, nothing } from "lit";
import { warning } from "./sentences.js";
import { say, text } from "../lib/say.js";
import { waited } from "../lib/times.js";

const MARKS = { ready: "✓", "in-use": "▶", "to-be-reset": "↺" };

/** A candidate's number as it is worn: a stitched patch. */
export function patch(number, size = "") {
  return html`<span class="patch ${size}">${number}</span>`;
}

export function stationState(station) {
  return html`<span class="state state-${station.state}"
    ><span aria-hidden="true">${MARKS[station.state]} </span>${say(`station.${station.state}`)}</span
  >`;
}

export function trouble(words) {
  return words ? html`<p class="trouble">${warning(words)}</p>` : nothing;
}

export function stationList(stations, now) {
  return html`<ol class="stations">
    ${stations.map((station, index) => html`<li class="station">
      <span class="station-index">${index + 1}</span>
      <span class="station-name">${text(station.name)}</span>
      <span>${stationState(station)}${station.number > 0
        ? html` ${say("station.by", { number: station.number })}`
        : nothing}${station.state === "ready" ? nothing : html`, ${waited(station.sinceMicros, now)}`}</span>
      ${trouble(station.trouble)}
    </li>`)}
  </ol>`;
}
