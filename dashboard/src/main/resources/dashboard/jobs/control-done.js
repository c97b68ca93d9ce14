// Candidates who are done, newest first, and whether each has been told.
import { html, nothing } from "lit";
import { patch } from "../parts/stations.js";
import { dossier, dossierFile, sheet } from "../parts/sheet.js";
import { say, code } from "../lib/say.js";
import { acts, reasonsFor } from "../lib/acts.js";
import { minutesTenths } from "../lib/times.js";

export function doneList(page, done) {
  return html`<section aria-labelledby="done">
    <h2 id="done">${say("control.done")} (${done.length})</h2>
    ${done.length === 0 ? html`<p>${say("control.nobody-done")}</p>` : nothing}
    <ul class="plain">${done.toReversed().map((one) => line(page, one))}</ul>
  </section>`;
}

function line(page, one) {
  const name = `tell-${one.number}`;
  return html`<li class="card done">
    ${patch(one.number)}
    <div class="on-course-what">
      <p><strong>${code("outcome", one.outcome, one.outcomeWords)}</strong>
        ${one.officialMicros >= 0
          ? html`<span class="time">${minutesTenths(one.officialMicros)}</span>`
          : nothing}</p>
      <p>${one.told
        ? html`<span aria-hidden="true">✓ </span>${say("control.told")}`
        : html`<span aria-hidden="true">○ </span>${say("control.not-told")}`}</p>
    </div>
    ${page.leads ? html`<div class="row">
      ${one.told ? nothing : page.button(name, say("control.tell"), () =>
        page.act(name, acts.tell(one.number), { quiet: true }), {
        aria: `${say("control.tell")}: ${one.number}`,
      })}
      <button
        type="button"
        class="button"
        aria-label="${say("done.sheet")}: ${one.number}"
        @click=${() => sheet(page, one.number)}
      >${say("done.sheet")}</button>
      ${page.button(`dossier-${one.number}`, say("done.dossier"), () => dossier(page, one.number), {
        aria: `${say("done.dossier")}: ${one.number}`,
      })}
      ${page.button(`dossier-file-${one.number}`, say("done.dossier-file"), () =>
        dossierFile(page, one.number), {
        aria: `${say("done.dossier-file")}: ${one.number}`,
      })}
      ${page.button(`again-${one.number}`, say("control.run-again"), () => runAgain(page, one.number), {
        aria: `${say("control.run-again")}: ${one.number}`,
      })}
    </div>` : nothing}
  </li>`;
}

async function runAgain(page, number) {
  const answer = await page.ask.put({
    title: say("control.run-again-why", { number }),
    body: () => html`<p>${say("control.run-again-what")}</p>`,
    choices: reasonsFor.runAgain.map((reason) => [reason, say(`reason.${reason}`)]),
    words: true,
    yes: say("control.run-again-yes"),
  });
  if (!answer) return;
  const act = acts.runAgain(number, answer.choice, answer.words);
  page.act(`again-${number}`, act, { quiet: true });
}
