// The coordinator's page, and the safety officer's view of it: who is where, who is next and what
// stands against a release, and the rulings on all of it.
import { html, nothing } from "lit";
import { Page } from "../parts/page.js";
import { courseMap } from "../parts/course-map.js";
import { courseRulings } from "../parts/course-rulings.js";
import { heatCard } from "../parts/heat-card.js";
import { groundRead } from "../parts/ground.js";
import { standBy } from "../parts/stand-by.js";
import { warnings } from "../parts/sentences.js";
import { tray } from "../parts/tray.js";
import { patch } from "../parts/stations.js";
import { say, text } from "../lib/say.js";
import { acts, reasonsFor } from "../lib/acts.js";
import { againstRelease, chosenProctor } from "./control-state.js";
import { nextUp } from "./control-next.js";
import { onCourse } from "./control-course.js";
import { doneList } from "./control-done.js";
import { codeMaker } from "./control-codes.js";

class Control extends Page {
  job = { name: "control", roles: ["coordinator", "safety"], stream: "control" };
  wantedProctor = null;
  madeCode = null;

  get leads() {
    return this.badge.role === "coordinator";
  }

  middle(frame) {
    return html`
      <div class="control-next">
        ${nextUp(this, frame)} ${courseRulings(this, frame.head)}
      </div>
      <div class="control-wide">
        ${this.#alarms(frame.alarms)} ${this.#held(frame.stations)}
        <section aria-labelledby="course">
          <h2 id="course" class="aside">${say("control.course")}</h2>
          ${courseMap(frame.stations, frame.onCourse, this.now())}
        </section>
        ${onCourse(this, frame)} ${tray(this, frame)} ${doneList(this, frame.done)}
        ${this.leads ? codeMaker(this) : nothing}
      </div>
      <div class="control-rest">
        ${standBy(this, frame.teams)} ${groundRead(this, frame.surfaces)} ${waiting(frame.waiting)}
        ${proctors(frame.proctors)} ${heatCard(frame.head.heat)}
      </div>
    `;
  }

  #alarms(alarms) {
    if (alarms.length === 0) return nothing;
    return html`<section aria-labelledby="alarms">
      <h2 id="alarms" class="aside">${say("control.alarms")}</h2>
      ${warnings(alarms)}
    </section>`;
  }

  /** Stations that a sensor's trouble keeps out of releases, and the way on without it. */
  #held(stations) {
    const held = stations.filter((station) => station.held);
    if (held.length === 0) return nothing;
    return html`<section aria-labelledby="held">
      <h2 id="held">${say("control.held")}</h2>
      ${held.map((station) => html`<div data-held=${station.id}>
        <h3>${text(station.name)}</h3>
        ${warnings([station.trouble])}
        ${this.leads
          ? this.button(`by-hand-${station.id}`, say("control.by-hand"), () =>
              this.#byHand(station))
          : nothing}
      </div>`)}
    </section>`;
  }

  async #byHand(station) {
    const answer = await this.ask.put({
      title: say("control.by-hand-title", { station: text(station.name) }),
      choices: reasonsFor.byHand.map((reason) => [reason, say(`reason.${reason}`)]),
      words: true,
      yes: say("control.by-hand-do"),
    });
    if (!answer) return;
    const act = acts.goOnByHand(station.id, answer.choice, answer.words);
    this.act(`by-hand-${station.id}`, act, { quiet: true });
  }

  beside(frame) {
    if (!this.leads) return html`<p class="zone still">${say("control.watching")}</p>`;
    const { next } = frame;
    const device = chosenProctor(frame, this.wantedProctor);
    const person = frame.proctors.find((proctor) => proctor.device === device)?.person;
    const against = againstRelease(next, device);
    const off = next.number === 0 || against.length > 0;
    const busy = this.pending.has("release");
    return html`<button
      type="button"
      class="zone go"
      data-act="release"
      aria-busy=${busy}
      aria-disabled=${off || busy}
      @click=${() => !off && this.#release(next.number, device)}
    >
      <span class="zone-name">${next.number === 0
        ? say("control.release-none")
        : say("control.release", { number: next.number })}</span>
      <span class="zone-how">${off
        ? say("control.release-not")
        : say("control.with", { person: person ?? device })}</span>
    </button>`;
  }

  async #release(number, device) {
    const answer = await this.act("release", acts.release(number, device), { quiet: true });
    if (answer?.kind === "accepted") this.wantedProctor = null;
  }
}

function waiting(list) {
  return html`<section aria-labelledby="waiting">
    <h2 id="waiting">${say("control.waiting")} (${list.length})</h2>
    <ol class="patches">${list.map((line) => html`<li>
      ${patch(line.number)} <span>${say("control.group", { group: line.group })}</span>
    </li>`)}</ol>
  </section>`;
}

function proctors(list) {
  return html`<section aria-labelledby="proctors">
    <h2 id="proctors">${say("control.proctors")}</h2>
    <ul class="plain">${list.map((proctor) => html`<li>
      <strong>${proctor.person}</strong>:
      ${proctor.number > 0
        ? say("control.with-number", { number: proctor.number })
        : say("control.free")}
    </li>`)}</ul>
  </section>`;
}

customElements.define("yc-control", Control);
