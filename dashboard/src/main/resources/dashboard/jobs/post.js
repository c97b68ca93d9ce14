// The proctor's page. Under way: the number, the station's words, four zones and no time at all.
// After the finish: every split with its interval and why, to be ruled on.
import { html, nothing } from "lit";
import { patch } from "../parts/stations.js";
import { sheet } from "../parts/sheet.js";
import { say, text, code } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import { ownClock } from "../lib/own-clock.js";
import { callZone, markAndFinish, resumeZone, startZone } from "./post-zones.js";
import { missing } from "./post-state.js";
import { splits } from "./post-splits.js";
import { tray } from "../parts/tray.js";
import { openCall } from "./post-call.js";
import { WaterLock } from "./post-lock.js";
import { LinkedPost } from "./post-link.js";
import { gapNotes } from "./post-waiting.js";
import { install } from "./post-install.js";

/** What the station just left still wants, while the candidate can go back. */
function leftBehind(candidate, at) {
  const left = (candidate.missing ?? []).filter((each) => each.station !== at.id);
  if (left.length === 0) return nothing;
  return html`<p class="put-right" role="alert"><span aria-hidden="true">! </span>${say("missing.title")}: ${
    left.map((each) => text(each.words)).join(", ")
  }</p>`;
}

class Post extends LinkedPost {
  job = { name: "post", roles: ["proctor"], stream: "post" };
  lock = new WaterLock(() => this.requestUpdate());

  connectedCallback() {
    super.connectedCallback();
    install(this);
  }

  isLocked() {
    return this.lock.on;
  }

  cover() {
    return this.lock.cover(this.link.frame?.candidate?.number);
  }

  middle(frame) {
    const candidate = this.candidate();
    if (!candidate) return html`${gapNotes(this)} ${free(this, frame)}`;
    if (["through", "gone"].includes(candidate.phase)) return html`${gapNotes(this)} ${through(candidate)}`;
    const under = !["finished", "done"].includes(candidate.phase);
    return html`
      <div class="over">${gapNotes(this)} ${this.#who(candidate, under)}</div>
      ${under ? this.#zones(candidate) : nothing}
      ${candidate.phase === "finished" ? html`${splits(this, candidate)} ${tray(this, frame, candidate)}` : nothing}
      ${candidate.phase === "done" ? this.#done(candidate) : nothing}
    `;
  }

  #who(candidate, under) {
    const at = candidate.station;
    const alone = this.isAlone();
    return html`<section class="who">
      <h2 class="who-number"><span class=${alone ? "aside" : "quiet"}>${say("post.number")}</span>
        ${patch(candidate.number, under && !alone ? "giant" : "huge")}</h2>
      ${under ? this.lock.view() : nothing}
      ${under && !alone && ownClock.isTimeless() ? html`<p class="put-right" role="status" data-clock="none"><span
        aria-hidden="true">! </span>${say("post.clock-not-compared")}</p>` : nothing}
      ${at ? this.#station(candidate, at) : nothing}
    </section>`;
  }

  #station(candidate, at) {
    const place = { index: at.index + 1, of: at.of };
    // Alone, what is said of the link needs the room; the zones name what was not seen.
    const alone = this.isAlone();
    const unseen = at.started ? missing(at) : [];
    return html`<div class="who-station">
      <p>${candidate.phase === "walking" ? say("post.walking", place) : say("post.station-of", place)}</p>
      <h3>${text(at.name)}</h3>
      ${alone ? nothing : html`<p>${text(at.task)}</p>`}
      ${leftBehind(candidate, at)}
      ${candidate.startsAgain ? html`<p class="put-right" role="status"><span aria-hidden="true">↻ </span>${say(
        "post.starts-again",
      )}</p>` : nothing}
      ${at.started ? nothing : this.#readiness(at)}
      ${at.started && unseen.length === 0 ? html`<p>${at.finishJudged
        ? say("post.finish-judged")
        : say("post.finish-when", { words: text(at.finishWords) })}</p>` : nothing}
      ${unseen.length > 0 && !alone ? html`<p class="put-right" role="status"><span aria-hidden="true">○ </span>${say(
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
    const isHeld = candidate.phase === "held" && !candidate.startsAgain;
    if (isHeld) return html`<div class="zones">${resumeZone(this, candidate)}</div>`;
    // Without a link nobody sounds the horn: the start is given by voice, and tapped.
    const before = candidate.phase === "released" && !this.isAlone();
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
    </section>
    ${candidate.told ? nothing : splits(this, candidate)}`;
  }

  beside() {
    const candidate = this.candidate();
    if (!candidate?.station) return nothing;
    return callZone(candidate, () => openCall(this));
  }
}

/** The course is over by this page's own presses; what follows, only the gateway can say. */
function through(candidate) {
  return html`<section class="card stack">
    <h2 class="who-number"><span class="quiet">${say("post.number")}</span> ${patch(candidate.number, "huge")}</h2>
    <p class="large">${say(candidate.phase === "gone" ? "gap.gone" : "gap.through")}</p>
    <p>${say("gap.through-how")}</p>
  </section>`;
}

function free(page, frame) {
  return html`<section class="card stack">
    <h2>${say("post.free")}</h2>
    <p class="large">${frame.person}</p>
    <p>${say("post.free-how")}</p>
    <p data-installed=${page.installed}>${say(`installed.${page.installed}`)}</p>
  </section>`;
}

customElements.define("yc-post", Post);
