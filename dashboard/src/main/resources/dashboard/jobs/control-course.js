// The candidates between release and course done, each with its clock and what can be ruled.
import { html, nothing } from "lit";
import { patch } from "../parts/stations.js";
import { say } from "../lib/say.js";
import { acts, reasonsFor } from "../lib/acts.js";
import { minutesTenths, waited } from "../lib/times.js";
import { hold, withdraw } from "./post-call.js";
import { freeProctors } from "./control-state.js";

export function onCourse(page, frame) {
  return html`<section aria-labelledby="on-course">
    <h2 id="on-course">${say("control.on-course")} (${frame.onCourse.length})</h2>
    ${frame.onCourse.length === 0 ? html`<p>${say("control.nobody-on-course")}</p>` : nothing}
    <ul class="plain">${frame.onCourse.map((one) => line(page, frame, one))}</ul>
  </section>`;
}

function line(page, frame, one) {
  return html`<li class="card on-course ${one.phase}">
    ${patch(one.number, "big")}
    <div class="on-course-what">
      <p><strong>${say(`phase.${one.phase}`, { index: one.stationIndex + 1 })}</strong></p>
      <p>${clock(page, one)}${personOf(frame, one)}</p>
      ${notes(page, one)}
    </div>
    ${page.leads ? html`<div class="row">${holdButton(page, one)}
      <button
        type="button"
        class="button"
        data-act="more-${one.number}"
        aria-label="${say("control.more")}: ${one.number}"
        @click=${() => more(page, frame, one)}
      >${say("control.more")}</button>
    </div>` : nothing}
  </li>`;
}

function clock(page, one) {
  if (one.startedMicros < 0 || one.phase === "finished") return nothing;
  return html`<span class="time">${minutesTenths(page.now() - one.startedMicros)}</span> `;
}

function personOf(frame, one) {
  const proctor = frame.proctors.find((each) => each.device === one.proctor);
  const person = proctor?.person ?? one.proctor;
  return person ? say("control.with", { person }) : "";
}

function notes(page, one) {
  const said = [];
  if (one.warnings + one.faults > 0) said.push(say("control.calls", one));
  if (one.heldSinceMicros >= 0) {
    said.push(say("control.held-for", { time: waited(one.heldSinceMicros, page.now()) }));
  }
  if (one.startsAgain) said.push(say("control.starts-again"));
  if (one.splitsToRule > 0) said.push(say("control.to-rule", { count: one.splitsToRule }));
  return said.length > 0 ? html`<p>${said.join(", ")}</p>` : nothing;
}

function holdButton(page, one) {
  const name = `hold-${one.number}`;
  if (one.startsAgain) return nothing;
  if (one.heldSinceMicros >= 0) {
    return page.button(name, say("control.resume-one"), () =>
      page.act(name, acts.resumeCandidate(one.number), { quiet: true }), {
      kind: "strong", aria: `${say("control.resume-one")}: ${one.number}`,
    });
  }
  if (one.phase === "finished") return nothing;
  return page.button(name, say("control.hold-one"), () => hold(page, one.number), {
    aria: `${say("control.hold-one")}: ${one.number}`,
  });
}

async function more(page, frame, one) {
  const others = freeProctors(frame);
  await page.ask.put({
    title: say("control.more-title", { number: one.number }),
    body: () => html`<div class="row">
      ${others.map((proctor) => html`<button
        type="button"
        class="button"
        @click=${() => {
          page.ask.close();
          page.act("hand-over", acts.handOver(one.number, proctor.device));
        }}
      >${say("control.hand-over", { person: proctor.person })}</button>`)}
      <button type="button" class="button" data-act="withdraw" @click=${() => withdraw(page, one.number)}>
        ${say("call.withdraw")}
      </button>
      ${one.canRunAgain ? html`<button
        type="button"
        class="button"
        data-act="station-again"
        @click=${() => stationAgain(page, frame, one)}
      >${say("control.station-again")}</button>` : nothing}
    </div>`,
  });
}

async function stationAgain(page, frame, one) {
  const index = frame.stations.findIndex((each) => each.id === one.canRunAgain) + 1;
  const answer = await page.ask.put({
    title: say("control.station-again-why", { number: one.number, index }),
    body: () => html`<p>${say("control.station-again-what")}</p>`,
    choices: reasonsFor.runAgain.map((reason) => [reason, say(`reason.${reason}`)]),
    words: true,
    yes: say("control.station-again-yes"),
  });
  if (!answer) return;
  const act = acts.runStationAgain(one.number, one.canRunAgain, answer.choice, answer.words);
  page.act(`again-${one.number}`, act, { quiet: true });
}
