// Candidates by official time: for staff, and for the public only where the plan says so.
import { html, nothing } from "lit";
import { Page } from "../parts/page.js";
import { patch } from "../parts/stations.js";
import { say, code } from "../lib/say.js";
import { halfWidth } from "../lib/times.js";

class Leaderboard extends Page {
  job = {
    name: "leaderboard",
    roles: ["coordinator", "safety", "technician"],
    stream: "leaderboard",
    maybePublic: true,
  };

  middle(frame) {
    return html`
      <p>${say("ranking.provisional")}</p>
      ${frame.rows.length === 0
        ? html`<p class="large">${say("ranking.empty")}</p>`
        : html`<table class="ranking">
            <thead><tr>
              ${["rank", "number", "time", "outcome"].map(
                (column) => html`<th scope="col" class="col-${column}">${say(`ranking.${column}`)}</th>`,
              )}
            </tr></thead>
            <tbody>${frame.rows.map(row)}</tbody>
          </table>`}
    `;
  }
}

function row(line) {
  const timed = line.officialMicros >= 0;
  return html`<tr>
    <td class="col-rank">${line.rank > 0 ? line.rank : "–"}</td>
    <th scope="row" class="col-number">${patch(line.number)}</th>
    <td class="col-time"><span class="time">${line.display || "–"}</span>
      ${timed ? html`<span class="width">± ${halfWidth(line.lowerMicros, line.upperMicros)} s</span>` : nothing}
    </td>
    <td class="col-outcome">${line.outcome ? code("outcome", line.outcome) : "–"}
      ${line.decision ? html`<span class="width">${code("decision", line.decision)}</span>` : nothing}
    </td>
  </tr>`;
}

customElements.define("yc-leaderboard", Leaderboard);
