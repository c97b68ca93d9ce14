// The proof run: somebody walks the course before a candidate does. Begin, press at each point, see
// what its sensor said, sign with a second person; and what was signed today.
import { html, nothing } from "lit";
import { say, text } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import { waited } from "../lib/times.js";
import { pointWords } from "./bench-triggers.js";
import { byStation } from "./trigger-state.js";
import {
  countSeen, isClean, lacks, pointsByStation, SHAPES, signedSeconds,
} from "./proof-state.js";

const WORDS = { seen: "proof.seen", missing: "proof.missing-point", apart: "proof.apart" };

/** The section; the station that is chosen and not begun is kept in `page.toProve`. */
export function proof(page, frame) {
  const { run, signed, asked, missing } = frame.proof;
  const mine = page.badge.role === "technician";
  const stations = byStation(frame.triggers);
  return html`<section aria-labelledby="proof" class="proof">
    <h2 id="proof">${say("proof.title")}</h2>
    ${missing ? html`<p role="status">
      <span aria-hidden="true">! </span>${say("proof.missing")}
    </p>` : nothing}
    ${asked.length > 0 ? html`<ul class="plain">${asked.map((one) => html`<li>
      <span aria-hidden="true">! </span>${say(`proof.asked-${one.cause}`, {
        station: named(stations, one.station),
      })}</li>`)}</ul>` : nothing}
    ${run ? underWay(page, frame.proof, stations, mine) : nothing}
    ${!run && mine ? beginning(page, stations) : nothing}
    <h3>${say("proof.signed")}</h3>
    ${signed.length === 0
      ? html`<p>${say("proof.none")}</p>`
      : html`<ul class="plain">${signed.map((one) => record(one, stations, page.now()))}</ul>`}
  </section>`;
}

function named(stations, id) {
  if (id === "") return say("proof.course");
  const station = stations.find((one) => one.id === id);
  return station ? text(station.name) : id;
}

function beginning(page, stations) {
  page.toProve ??= "";
  return html`<div class="card stack">
    <p>${say("proof.how")}</p>
    <label class="field"><span>${say("proof.what")}</span>
      <select
        data-choose="proof"
        .value=${page.toProve}
        @change=${(chosen) => (page.toProve = chosen.target.value)}
      >
        <option value="">${say("proof.course")}</option>
        ${stations.map(({ id }) => html`<option value=${id}>${named(stations, id)}</option>`)}
      </select>
    </label>
    ${page.button("begin-proof", say("proof.begin"), () => begin(page), { kind: "strong" })}
  </div>`;
}

function begin(page) {
  const why = page.toProve === "" ? "start-of-day" : "after-repair";
  return page.act("begin-proof", acts.beginProofRun(page.toProve, why), { quiet: true });
}

function underWay(page, { run, points, revision, signal }, stations, mine) {
  const maySign = mine || page.badge.role === "coordinator";
  return html`<div class="card stack">
    <h3>${say("proof.under-way", {
      what: named(stations, run.station),
      person: run.person,
      time: waited(run.beganMicros, page.now()),
    })}</h3>
    <p class="large" role="status">${say("proof.count", countSeen(points))}</p>
    ${mine ? html`<p>${say("proof.press")}</p>` : nothing}
    ${mine && signal
      ? page.button("proof-signal", say("proof.signal"), () =>
          page.act("proof-signal", acts.proofSignal(), { quiet: true }))
      : nothing}
    ${pointsByStation(points).map(({ station, points: its }) => html`
      <h4 id="proof-of-${station}">${named(stations, station)}</h4>
      <ul class="plain" aria-labelledby="proof-of-${station}">${
        its.map((point) => row(page, point, named(stations, station), mine))}</ul>`)}
    ${run.signedBy === "" ? nothing : html`<p>
      <span aria-hidden="true">✓ </span>${say("proof.signed-by", { person: run.signedBy })}</p>`}
    ${maySign ? html`<div class="row">
      ${page.button("sign-proof", say("proof.sign"), () => sign(page, points, revision), {
        kind: "strong",
      })}
      ${page.button("end-proof", say("proof.give-up"), () => giveUp(page))}
    </div>` : nothing}
  </div>`;
}

function row(page, point, station, mine) {
  const { state, minusHandMicros } = point;
  const apart = signedSeconds(minusHandMicros);
  const name = `proof-${point.station}-${point.point}`;
  return html`<li class="proof-point ${state}" data-point="${point.station}/${point.point}">
    <div>
      <strong>${pointWords(point)}</strong>
      <span><span aria-hidden="true">${SHAPES[state]} </span>${say(WORDS[state])}${
        state === "missing" ? `: ${say(`proof.lacks-${lacks(point)}`)}` : ""}</span>
      ${apart === null ? nothing : html`<span>${say("proof.apart-by", { apart })}</span>`}
    </div>
    ${mine ? page.button(name, say("proof.tap"), () => tap(page, point, name), {
      aria: say("proof.tap-of", { station, point: pointWords(point) }),
    }) : nothing}
  </li>`;
}

function tap(page, { station, point }, name) {
  return page.act(name, acts.proofTap(station, point), { quiet: true });
}

/** With a point missing or apart it is signed only with words. */
async function sign(page, points, revision) {
  let words = "";
  if (!isClean(points)) {
    const answer = await page.ask.put({
      title: say("proof.sign"),
      body: () => html`<p>${say("proof.not-clean", countSeen(points))}</p>`,
      words: "proof.why",
      check: (typed) => (typed.words.trim() === "" ? say("refusal.no-words") : null),
      yes: say("proof.sign"),
    });
    if (!answer) return;
    words = answer.words.trim();
  }
  await page.act("sign-proof", acts.signProofRun(words), { basis: revision, done: "proof.done" });
}

function giveUp(page) {
  return page.act("end-proof", acts.endProofRun(""), { done: "proof.given-up" });
}

function record(one, stations, now) {
  const apart = signedSeconds(one.largestMicros) ?? "–";
  const whole = one.seen === one.points;
  return html`<li>
    <p><strong><span aria-hidden="true">${whole ? "✓" : "!"} </span>${say("proof.record", {
      what: named(stations, one.station), seen: one.seen, points: one.points,
    })}</strong></p>
    <p>${say("proof.record-by", {
      time: waited(one.signedMicros, now), first: one.first, second: one.second, apart,
    })}</p>
    ${one.words === "" ? nothing : html`<p>${one.words}</p>`}
  </li>`;
}
