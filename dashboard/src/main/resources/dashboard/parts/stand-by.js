// The teams that stand by: here or called away, and the press that says so.
import { html, nothing } from "lit";
import { say } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import { waited } from "../lib/times.js";

export function standBy(page, teams) {
  return html`<section class="card" aria-labelledby="stand-by">
    <h2 id="stand-by">${say("team.name")}</h2>
    <ul class="plain">${teams.map((one) => line(page, one))}</ul>
  </section>`;
}

/** Only the course crew, as their own page knows of it. */
export function ownStandBy(page, { holds }) {
  const away = holds.some((hold) => hold.about === "course-crew");
  return standBy(page, [{ team: "course-crew", away, holds: true, words: "", person: "" }]);
}

/** Whether somebody is away without whom nobody is released. */
export function isNeeded(teams) {
  return teams.some((one) => one.away && one.holds);
}

function line(page, one) {
  const name = say(`team.${one.team}`);
  const [label, press] = one.away
    ? [say("team.back"), () => back(page, one, name)]
    : [say("team.away"), () => leave(page, one, name)];
  return html`<li class="team" data-team=${one.team}>
    <div>
      <p><strong>${name}</strong>: <span aria-hidden="true">${one.away ? "✕" : "✓"} </span>${one.away
        ? html`<strong>${say("team.is-away")}</strong>`
        : say("team.is-here")}</p>
      ${one.away && one.person ? why(page, one) : nothing}
    </div>
    ${page.button(`team-${one.team}`, label, press, {
      kind: one.away ? "strong" : "", aria: `${label}: ${name}`,
    })}
  </li>`;
}

function why(page, one) {
  return html`<p>${waited(one.sinceMicros, page.now())}, ${one.person}${one.words
    ? `: ${one.words}`
    : nothing}</p>`;
}

async function leave(page, { team }, name) {
  const isClimb = team === "climb-crew";
  const answer = await page.ask.put({
    title: say("team.away-title", { name }),
    body: () => html`<p>${say(isClimb ? "team.away-climb" : "team.away-what")}</p>`,
    words: true,
    yes: say("team.away"),
  });
  if (answer) page.act(`team-${team}`, acts.teamAway(team, answer.words), { quiet: true });
}

async function back(page, { team }, name) {
  const answer = await page.ask.put({
    title: say("team.back-title", { name }),
    body: () => html`<p>${say("team.back-what")}</p>`,
    words: true,
    yes: say("team.back-do"),
  });
  if (answer) page.act(`team-${team}`, acts.teamBack(team, answer.words), { quiet: true });
}
