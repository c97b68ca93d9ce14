// Passages that are nobody's, newest first. Each can be assigned to a candidate's turn at its station.
import { html, nothing } from "lit";
import { say, text } from "../lib/say.js";
import { acts, reasonsFor } from "../lib/acts.js";
import { choice, field } from "./fields.js";

/**
 * @param candidate the only one to assign to, with their splits; null where any number can be given
 */
export function tray(page, frame, candidate = null) {
  if (!frame.tray || frame.tray.length === 0 && frame.trayRest === 0) return nothing;
  return html`<section aria-labelledby="tray">
    <h2 id="tray" class="aside">${say("tray.title")}</h2>
    <ul class="plain">${frame.tray.map((each) => html`<li>
      ${passageWords(each)}: ${text(each.words)}
      ${canBeAssigned(each, candidate) ? assignButton(page, each, candidate) : nothing}
    </li>`)}</ul>
    ${frame.trayRest > 0 ? html`<p>${say("tray.rest", { count: frame.trayRest })}</p>` : nothing}
  </section>`;
}

function passageWords(each) {
  return `${text(each.sensor)}, ${say("tray.ago", { seconds: Math.round(each.ageMillis / 1000) })}`;
}

function canBeAssigned(each, candidate) {
  if (each.points.length === 0) return false;
  return candidate === null
    || candidate.splits.some((split) => split.station === each.station && !split.standing && !split.waits);
}

function assignButton(page, each, candidate) {
  return html`<button
    type="button"
    class="button"
    data-act="assign-${each.unit}-${each.seq}"
    aria-label="${say("tray.assign")}: ${passageWords(each)}"
    @click=${() => assign(page, each, candidate)}
  >${say("tray.assign")}</button>`;
}

async function assign(page, each, candidate) {
  const points = each.points.map(({ id, name }) => [id, text(name)]);
  const answer = await page.ask.put({
    title: candidate
      ? say("tray.assign-to", { sensor: text(each.sensor), number: candidate.number })
      : say("tray.assign-title", { sensor: text(each.sensor) }),
    choices: reasonsFor.assign.map((reason) => [reason, say(`reason.${reason}`)]),
    body: (so) => html`${candidate ? nothing : field("number", "tray.number", so, "numeric")}
      ${choice("point", "tray.point", so, points)}`,
    check: (so) => candidate || /^\d{1,5}$/.test(so.number?.trim() ?? "") ? null : say("tray.number-wrong"),
    words: true,
    yes: say("tray.assign"),
  });
  if (!answer) return;
  const number = candidate?.number ?? Number(answer.number);
  const to = { number, station: each.station, point: answer.point };
  page.act(`assign-${each.unit}-${each.seq}`, acts.assign(each, to, answer.choice, answer.words), {
    basis: candidate?.revision ?? -1,
    seen: candidate?.splits.find((split) => split.station === each.station),
  });
}
