// The ground and the weather at each station and at the climb: what was noted, by whom and when,
// and the press that notes it. What nobody has noted is not known, and never shown as dry.
import { html, nothing } from "lit";
import { say, text } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import { wallAt } from "../lib/exam-clock.js";
import { wallClock } from "../lib/times.js";

const GROUNDS = ["dry", "wet", "ice"];
const BESIDES = ["glare", "gust"];

/** For whoever notes: every spot with its button, the whole yard first. */
export function groundNotes(page, surfaces) {
  const yard = { where: "yard", name: null, conditions: [] };
  return card(html`<ul class="plain">
    ${[yard, ...surfaces].map((spot) => html`<li class="team" data-spot=${spot.where}>
      <div>${what(page, spot)}</div>
      ${page.button(`ground-${spot.where}`, say("ground.note"), () => note(page, spot), {
        aria: `${say("ground.note")}: ${nameOf(spot)}`,
      })}
    </li>`)}
  </ul>`);
}

/** For whoever reads: only the spots somebody has said something about. */
export function groundRead(page, surfaces) {
  const noted = surfaces.filter((spot) => spot.conditions.length > 0);
  return card(noted.length === 0
    ? html`<p>${say("ground.none")}</p>`
    : html`<ul class="plain">${noted.map((spot) => html`<li class="team" data-spot=${spot.where}>
        <div>${what(page, spot)}</div>
      </li>`)}</ul>`);
}

function card(inside) {
  return html`<section class="card" aria-labelledby="ground">
    <h2 id="ground">${say("ground.name")}</h2>
    ${inside}
  </section>`;
}

function nameOf({ where, name }) {
  return where === "yard" ? say("ground.yard") : text(name);
}

function what(page, spot) {
  if (spot.where === "yard") return html`<p><strong>${nameOf(spot)}</strong></p>`;
  const is = spot.conditions.length > 0
    ? spot.conditions.map((one) => say(`ground.${one}`)).join(", ")
    : say("ground.unknown");
  return html`<p><strong>${nameOf(spot)}</strong>: ${is}${spot.holds
      ? html` <strong><span aria-hidden="true">‖ </span>${say("ground.holds")}</strong>`
      : nothing}</p>
    ${spot.person ? html`<p>${who(page, spot)}</p>` : nothing}`;
}

function who(page, { person, atMicros, words }) {
  const at = wallClock(wallAt(page.link.frame.head, atMicros));
  return `${person}, ${at}${words ? `: ${words}` : ""}`;
}

/** The question begins with what stands, so that one change is one touch. */
async function note(page, spot) {
  const answer = await page.ask.put({
    title: say("ground.title", { name: nameOf(spot) }),
    legend: say("ground.legend"),
    choices: GROUNDS.map((one) => [one, say(`ground.${one}`)]),
    chosen: GROUNDS.find((one) => spot.conditions.includes(one)),
    body: (so) => besides(so, spot),
    words: true,
    yes: say("ground.do"),
  });
  if (!answer) return;
  const [glare, gust] = BESIDES.map((one) => answer[one] ?? spot.conditions.includes(one));
  const act = acts.noteSurface(spot.where, answer.choice, glare, gust, answer.words);
  page.act(`ground-${spot.where}`, act, { quiet: true });
}

function besides(answer, spot) {
  return html`<div class="choices">${BESIDES.map((one) => html`<label class="choice">
      <input
        type="checkbox"
        name=${one}
        .checked=${answer[one] ?? spot.conditions.includes(one)}
        @change=${(change) => (answer[one] = change.target.checked)}
      /><span>${say(`ground.${one}`)}</span>
    </label>`)}</div>
    ${spot.where === "yard" ? html`<p>${say("ground.yard-what")}</p>` : nothing}`;
}
