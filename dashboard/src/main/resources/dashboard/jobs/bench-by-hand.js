// The proctors' taps beside the automatic marks over the day: a trigger that drifts shows here.
import { html, nothing } from "lit";
import { say } from "../lib/say.js";

const millis = (micros) => Math.round(micros / 1000);

export function byHand(frame) {
  const lines = [...frame.pointsByHand, ...frame.proctorsByHand];
  if (lines.length === 0) return nothing;
  return html`<section aria-labelledby="by-hand">
    <h2 id="by-hand">${say("bench.by-hand")}</h2>
    <p>${say("bench.by-hand-how")}</p>
    <ul class="plain">${lines.map((line) => html`<li>
      ${line.drifts ? html`<strong>! ${say("bench.drifts")}</strong> ` : nothing}
      <strong>${line.device || `${line.station}, ${say(`bench.point-${line.point}`)}`}</strong>:
      ${say("bench.by-hand-line", {
        count: line.count,
        bias: millis(line.biasMicros),
        spread: millis(line.spreadMicros),
        newest: millis(line.newestMicros),
      })}
    </li>`)}</ul>
  </section>`;
}
