// The public board: numbers, places, call times. It holds nothing from which an outcome follows,
// because its frame holds none.
import { html, nothing } from "lit";
import { Page } from "../parts/page.js";
import { patch } from "../parts/stations.js";
import { say } from "../lib/say.js";
import { wallAt } from "../lib/exam-clock.js";
import { wallClock } from "../lib/times.js";

class Board extends Page {
  job = { name: "board", roles: [], stream: "board" };

  middle(frame) {
    const with_ = (status) => frame.lines.filter((line) => line.status === status);
    const waiting = with_("waiting").sort((a, b) => a.place - b.place);
    return html`
      ${this.#numbers("board.called", with_("called"), "board.nobody-called", "giant")}
      ${this.#numbers("board.on-course", with_("on-course"), "board.none", "big")}
      <section aria-labelledby="waiting">
        <h2 id="waiting">${say("board.waiting")}</h2>
        <p>${say("board.more")}</p>
        <ol class="queue">${waiting.map((line) => this.#queued(frame.head, line))}</ol>
      </section>
      ${this.#numbers("board.course-done", with_("course-done"), "board.none", "")}
      ${frame.times.length > 0 ? this.#times(frame.times) : nothing}
    `;
  }

  #numbers(title, lines, none, size) {
    return html`<section aria-labelledby=${title}>
      <h2 id=${title}>${say(title)}</h2>
      ${lines.length === 0
        ? html`<p>${say(none)}</p>`
        : html`<ul class="patches">${lines.map((line) => html`<li>${patch(line.number, size)}</li>`)}</ul>`}
    </section>`;
  }

  #queued(head, line) {
    const from = wallClock(wallAt(head, line.earliestMicros));
    const to = wallClock(wallAt(head, line.latestMicros));
    return html`<li class="queued">
      ${patch(line.number, "big")}
      <span>${say("board.place", { place: line.place })}<br />
        ${line.earliestMicros >= 0 ? say("board.call", { from, to }) : nothing}</span>
    </li>`;
  }

  #times(times) {
    return html`<section aria-labelledby="times">
      <h2 id="times">${say("board.times")}</h2>
      <ul class="queue">${times.map((time) => html`<li class="queued">
        ${patch(time.number)} <span class="time">${time.display}</span>
        ${time.provisional ? html`<span>${say("board.provisional")}</span>` : nothing}
      </li>`)}</ul>
    </section>`;
  }
}

customElements.define("yc-board", Board);
