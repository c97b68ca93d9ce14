// Who is next, what stands against a release in words, and which free proctor goes along.
import { html, nothing } from "lit";
import { patch } from "../parts/stations.js";
import { openItems } from "../parts/start-of-day.js";
import { say, code } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import { minutes } from "../lib/times.js";
import { againstRelease, chosenProctor, freeProctors } from "./control-state.js";

export function nextUp(page, frame) {
  const { next } = frame;
  const device = chosenProctor(frame, page.wantedProctor);
  return html`<section class="card next" aria-labelledby="next">
    <h2 id="next">${say("control.next")}</h2>
    ${next.number === 0
      ? html`<p class="large">${say("control.nobody")}</p>`
      : html`<div class="next-who">${patch(next.number, "huge")} ${against(page, frame, device)}</div>
        ${page.leads ? choice(page, frame, device) : nothing}
        ${page.leads ? page.button("no-show", say("control.no-show"), () => noShow(page, next.number)) : nothing}`}
  </section>`;
}

function against(page, { next, startOfDay }, device) {
  const list = againstRelease(next, device);
  if (list.length === 0) {
    return html`<p role="status"><span aria-hidden="true">✓ </span>${say("control.nothing-against")}</p>`;
  }
  return html`<div role="status">
    <p>${say("control.against")}:</p>
    <ul class="blockers">${list.map((blocker) => html`<li>
      <span aria-hidden="true">✕ </span>${code("refusal", blocker)}
      ${blocker === "checklist-open" ? openItems(startOfDay) : nothing}
      ${blocker === "interval-not-over" ? when(page, next) : nothing}
    </li>`)}</ul>
  </div>`;
}

/** The wait in exam time; the countdown itself is hidden from screen readers, it changes too often. */
function when(page, next) {
  const seconds = (next.notBeforeMicros - page.now()) / 1e6;
  if (seconds <= 0) return nothing;
  return html`<span aria-hidden="true">${say("control.in", { time: minutes(Math.ceil(seconds)) })}</span>`;
}

function choice(page, frame, device) {
  const free = freeProctors(frame);
  if (free.length === 0) return html`<p>${say("control.no-proctor")}</p>`;
  return html`<fieldset class="choices">
    <legend>${say("control.choose-proctor")}</legend>
    ${free.map((proctor) => html`<label class="choice">
      <input
        type="radio"
        name="proctor"
        value=${proctor.device}
        .checked=${proctor.device === device}
        @change=${() => {
          page.wantedProctor = proctor.device;
          page.requestUpdate();
        }}
      /><span>${proctor.person}</span>
    </label>`)}
  </fieldset>`;
}

async function noShow(page, number) {
  const answer = await page.ask.put({
    title: say("control.no-show-title", { number }),
    yes: say("control.no-show-do"),
  });
  if (answer) page.act("no-show", acts.noShow(number));
}
