// What opens behind "warning or fault": the station's criteria as words to press, and what can
// happen to the candidate as a whole.
import { html, nothing } from "lit";
import { say, text, code } from "../lib/say.js";
import { acts, reasonsFor } from "../lib/acts.js";

export async function openCall(page) {
  const { number, station } = page.candidate();
  await page.ask.put({
    title: say("call.title", { number }),
    body: () => inside(page, number, station),
  });
}

function inside(page, number, station) {
  const callable = station.criteria.filter((criterion) => criterion.kind !== "advised");
  return html`
    <h3>${say("call.criteria")}: ${text(station.name)}</h3>
    ${callable.length === 0 ? html`<p>${say("call.none")}</p>` : nothing}
    <ul class="criteria">${callable.map((criterion) => one(page, number, station, criterion))}</ul>
    <h3>${say("call.more")}</h3>
    <div class="row">
      <button type="button" class="button" data-act="hold" @click=${() => hold(page, number)}>
        ${say("call.hold")}
      </button>
      <button type="button" class="button" data-act="equipment" @click=${() => equipment(page, number, station)}>
        ${say("call.equipment")}
      </button>
      <button type="button" class="button" data-act="withdraw" @click=${() => withdraw(page, number)}>
        ${say("call.withdraw")}
      </button>
      <button type="button" class="button" data-act="stop-one" @click=${() => stopOne(page, number)}>
        ${say("call.stop")}
      </button>
      <button type="button" class="button" data-act="note" @click=${() => note(page, number)}>
        ${say("call.note")}
      </button>
    </div>
  `;
}

function one(page, number, station, criterion) {
  const call = (fault) => {
    page.ask.close();
    page.act("call", acts.call(number, station.id, criterion.id, fault), { done: "call.given" });
  };
  const words = text(criterion.words);
  return html`<li>
    <p><strong>${words}</strong> (${code("criterion", criterion.kind)})</p>
    <p>${say("call.so-far", criterion)}</p>
    <div class="row">
      <button
        type="button"
        class="button"
        aria-label="${say("call.warning")}: ${words}"
        @click=${() => call(false)}
      >${say("call.warning")}</button>
      <button
        type="button"
        class="button"
        aria-label="${say("call.fault")}: ${words}"
        @click=${() => call(true)}
      >${say("call.fault")}</button>
    </div>
  </li>`;
}

export async function hold(page, number) {
  page.ask.close();
  const answer = await page.ask.put({
    title: say("hold.title", { number }),
    choices: reasonsFor.holdOne.map((reason) => [reason, say(`reason.${reason}`)]),
    words: true,
    yes: say("hold.do"),
  });
  if (answer) page.act("hold", acts.holdCandidate(number, answer.choice, answer.words), { quiet: true });
}

export async function withdraw(page, number) {
  page.ask.close();
  const answer = await page.ask.put({
    title: say("withdraw.title", { number }),
    words: true,
    yes: say("withdraw.do"),
  });
  if (answer) page.act("withdraw", acts.withdraw(number, answer.words));
}

async function equipment(page, number, station) {
  page.ask.close();
  const answer = await page.ask.put({
    title: say("equipment.title", { number, station: text(station.name) }),
    words: true,
    yes: say("hold.do"),
  });
  if (answer) page.act("hold", acts.equipmentFault(number, station.id, answer.words), { quiet: true });
}

/** Never kept for later: somebody who must stop is stopped by voice where the link is not there. */
async function stopOne(page, number) {
  page.ask.close();
  const why = await page.ask.put({
    title: say("stop-one.title", { number }),
    choices: reasonsFor.stopOne.map((reason) => [reason, say(`reason.${reason}`)]),
    words: true,
    yes: say("stop-one.do"),
  });
  if (!why) return;
  const answer = await page.act("stop-one", acts.stopOne(number, why.choice, why.words));
  if (answer?.kind === "unsent") page.notes.warn(say("stop-one.unsent"));
}

export async function note(page, number) {
  page.ask.close();
  const answer = await page.ask.put({
    title: say("note.title", { number }),
    words: true,
    check: ({ words }) => words.trim() === "" ? say("note.empty") : null,
    yes: say("note.do"),
  });
  if (answer) page.act("note", acts.note(number, answer.words), { done: "call.given" });
}
