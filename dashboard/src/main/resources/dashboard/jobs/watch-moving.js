// Who is out on the course, and for how long: each is let finish or stopped. Letting finish sends
// nothing; the mark only helps the eye through the list while a team is away.
import { html, nothing } from "lit";
import { isNeeded } from "../parts/stand-by.js";
import { patch } from "../parts/stations.js";
import { say, text } from "../lib/say.js";
import { acts, reasonsFor } from "../lib/acts.js";
import { isLost, rule } from "../lib/ask-gateway.js";
import { minutesTenths, waited } from "../lib/times.js";
import * as sound from "../lib/sound.js";
import { minutesOf } from "./watch-state.js";

/** As a stop for all: what is not acknowledged in a second is done by voice, and never queued. */
const AT_ONCE = { patienceMs: 1000, tries: 1 };

export function movingList(page, { moving, teams }) {
  const asked = isNeeded(teams);
  return html`<section aria-labelledby="moving">
    <h2 id="moving">${say("watch.moving")} (${moving.length})</h2>
    ${asked && moving.length > 0 ? html`<p>${say("watch.moving-asked")}</p>` : nothing}
    ${moving.length === 0 ? html`<p>${say("control.nobody-on-course")}</p>` : nothing}
    <ul class="plain">${moving.map((one) => line(page, one, asked))}</ul>
  </section>`;
}

function line(page, one, asked) {
  return html`<li class="card on-course ${one.phase}">
    ${patch(one.number, "big")}
    <div class="on-course-what">
      <p><strong>${say(`phase.${one.phase}`, { index: one.stationIndex + 1 })}</strong>, ${text(one.station)}</p>
      <p>${one.startedMicros >= 0
        ? html`<span class="time">${minutesTenths(page.now() - one.startedMicros)}</span> `
        : nothing}${one.heldSinceMicros >= 0
        ? say("control.held-for", { time: waited(one.heldSinceMicros, page.now()) })
        : nothing}</p>
      <p>${say("watch.exposure", { minutes: minutesOf(one.exposureMicros) })}</p>
    </div>
    <div class="row">${asked ? letFinish(page, one.number) : nothing}
      ${page.button(`stop-${one.number}`, say("watch.stop-one"), () => stop(page, one.number), {
        aria: `${say("watch.stop-one")}: ${one.number}`,
      })}
    </div>
  </li>`;
}

function letFinish(page, number) {
  const press = () => {
    if (!page.letFinish.delete(number)) page.letFinish.add(number);
    page.requestUpdate();
  };
  return html`<button
    type="button"
    class="button"
    data-act="let-${number}"
    aria-label="${say("watch.let-finish")}: ${number}"
    aria-pressed=${page.letFinish.has(number)}
    @click=${press}
  >${say("watch.let-finish")}</button>`;
}

async function stop(page, number) {
  const answer = await page.ask.put({
    title: say("stop-one.title", { number }),
    choices: reasonsFor.stopOne.map((reason) => [reason, say(`reason.${reason}`)]),
    words: true,
    yes: say("stop-one.do"),
  });
  if (answer) send(page, number, acts.stopOne(number, answer.choice, answer.words));
}

async function send(page, number, act) {
  const name = `stop-${number}`;
  if (page.pending.has(name)) return;
  page.pending.add(name);
  page.requestUpdate();
  const answer = await rule(page.badge.token, act, AT_ONCE);
  page.pending.delete(name);
  if (isLost(answer)) {
    sound.play("alarm");
    page.notes.warn(say("watch.stop-unsent", { number }));
  } else {
    page.show(answer, say("watch.stop-sent", { number }));
  }
  page.requestUpdate();
}
