// The proctor's page. Under way: the number, the station's words, four zones and no time at all.
// After the finish: every split with its interval and why, to be ruled on.
import { html, nothing } from "lit";
import { Page } from "../parts/page.js";
import { patch } from "../parts/stations.js";
import { sheet } from "../parts/sheet.js";
import { say, text, code } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import { ownClock } from "../lib/own-clock.js";
import { callZone, markAndFinish, resumeZone, startZone } from "./post-zones.js";
import { missing } from "./post-state.js";
import { splits } from "./post-splits.js";
import { openCall } from "./post-call.js";
import { WaterLock } from "./post-lock.js";

class Post extends Page {
  job = { name: "post", roles: ["proctor"], stream: "post" };
  lock = new WaterLock(() => this.requestUpdate());

  isLocked() {
    return this.lock.on;
  }

  cover() {
    return this.lock.cover(this.link.frame?.candidate?.number);
  }

  middle(frame) {
    const candidate = frame.candidate;
    if (!candidate) return free(frame);
    const under = !["finished", "done"].includes(candidate.phase);
    return html`
      ${this.#who(candidate, under)}
      ${under ? this.#zones(candidate) : nothing}
      ${candidate.phase === "finished" ? splits(this, candidate) : nothing}
      ${candidate.phase === "done" ? this.#done(candidate) : nothing}
    `;
  }

  #who(candidate, under) {
    const at = candidate.station;
    return html`<section class="who">
      <h2 class="who-number"><span class="quiet">${say("post.number")}</span>
        ${patch(candidate.number, under ? "giant" : "huge")}</h2>
      ${under ? this.lock.view() : nothing}
      ${under && ownClock.isTimeless() ? html`<p class="put-right" role="status" data-clock="none"><span
        aria-hidden="true">! </span>${say("post.clock-not-compared")}</p>` : nothing}
      ${at ? this.#station(candidate, at) : nothing}
    </section>`;
  }

  #station(candidate, at) {
    const place = { index: at.index + 1, of: at.of };
    const unseen = at.started ? missing(at) : [];
    return html`<div class="who-station">
      <p>${candidate.phase === "walking" ? say("post.walking", place) : say("post.station-of", place)}</p>
      <h3>${text(at.name)}</h3>
      <p>${text(at.task)}</p>
      ${at.started ? nothing : this.#readiness(at)}
      ${at.started && unseen.length === 0 ? html`<p>${at.finishJudged
        ? say("post.finish-judged")
        : say("post.finish-when", { words: text(at.finishWords) })}</p>` : nothing}
      ${unseen.length > 0 ? html`<p class="put-right" role="status"><span aria-hidden="true">○ </span>${say(
        "post.put-right", { names: unseen.map((point) => text(point.name)).join(", ") },
      )}</p>` : nothing}
    </div>`;
  }

  #readiness(at) {
    if (at.state === "to-be-reset") {
      return html`<p class="put-right"><span aria-hidden="true">✕ </span>${say("post.not-ready", {
        state: say(`station.${at.state}`),
      })}</p>`;
    }
    return nothing;
  }

  #zones(candidate) {
    if (candidate.phase === "held") return html`<div class="zones">${resumeZone(this, candidate)}</div>`;
    const before = candidate.phase === "released";
    return html`<div class="zones">
      ${before ? startZone(this, candidate) : markAndFinish(this, candidate)}
    </div>`;
  }

  #done(candidate) {
    return html`<section class="card stack">
      <h2>${say("done.title")}</h2>
      <p class="large">${candidate.result
        ? code("outcome", candidate.result)
        : say("done.wait")}</p>
      ${candidate.told
        ? html`<p><span aria-hidden="true">✓ </span>${say("done.told")}</p>`
        : this.button("tell", say("done.tell"), () => this.act("tell", acts.tell(candidate.number)), {
          kind: "strong huge",
        })}
      <button type="button" class="button" data-act="sheet" @click=${() => sheet(this, candidate.number)}>
        ${say("done.sheet")}
      </button>
    </section>`;
  }

  beside(frame) {
    const candidate = frame.candidate;
    if (!candidate?.station) return nothing;
    return callZone(candidate, () => openCall(this));
  }
}

function free(frame) {
  return html`<section class="card stack">
    <h2>${say("post.free")}</h2>
    <p class="large">${frame.person}</p>
    <p>${say("post.free-how")}</p>
  </section>`;
}

customElements.define("yc-post", Post);
