// Comparing two units' clocks by trips of both at once: begin, watch, accept; and what stands.
import { html, nothing } from "lit";
import { say, text, code } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import { waited } from "../lib/times.js";
import {
  atMostMilliseconds, mayBegin, sensorOf, signedMilliseconds, tripSensors,
} from "./calibration-state.js";

const MARKS = { kept: "✓", outlier: "✕", impossible: "✕" };

/** The section; what is chosen but not begun yet is kept in `page.toCalibrate`. */
export function calibration(page, frame) {
  const { sitting, standing, ended } = frame.calibrations;
  const mine = page.badge.role === "technician";
  return html`<section aria-labelledby="calibration" class="calibration">
    <h2 id="calibration">${say("calibration.title")}</h2>
    ${sitting ? underWay(page, frame.calibrations, mine) : nothing}
    ${!sitting && mine ? beginning(page, frame) : nothing}
    ${inForce(standing, page.now())}
    ${ended.length > 0 ? noLonger(ended, page.now()) : nothing}
  </section>`;
}

function beginning(page, frame) {
  page.toCalibrate ??= { reference: "", other: "" };
  const { reference, other } = page.toCalibrate;
  return html`<div class="card stack">
    <p>${say("calibration.why")}</p>
    <p>${say("calibration.how", { count: frame.calibrations.needed })}</p>
    <div class="pair-choice">
      ${chooser(page, frame.units, "reference")} ${chooser(page, frame.units, "other")}
    </div>
    ${page.button("begin-calibration", say("calibration.begin"), () => begin(page), {
      kind: "strong",
      off: !mayBegin(reference, other),
    })}
    ${mayBegin(reference, other) ? nothing : html`<p>${say("calibration.choose-two")}</p>`}
  </div>`;
}

function chooser(page, units, which) {
  return html`<label class="field"><span>${which === "reference"
      ? say("calibration.reference")
      : say("calibration.other")}</span>
    <select
      data-choose=${which}
      .value=${page.toCalibrate[which]}
      @change=${(chosen) => {
        page.toCalibrate[which] = chosen.target.value;
        page.requestUpdate();
      }}
    >
      <option value="">${say("calibration.choose")}</option>
      ${tripSensors(units).map(({ value, unit, sensor }) => html`<option
        value=${value}
        ?selected=${page.toCalibrate[which] === value}
      >${say("calibration.sensor", { unit, number: sensor.number, name: text(sensor.name) })}</option>`)}
    </select>
  </label>`;
}

function begin(page) {
  const [reference, other] = [
    sensorOf(page.toCalibrate.reference),
    sensorOf(page.toCalibrate.other),
  ];
  return page.act(
    "begin-calibration",
    acts.beginCalibration(reference.unit, reference.number, other.unit, other.number),
    { quiet: true },
  );
}

function underWay(page, { sitting, needed, revision }, mine) {
  const { reference, other, kept, objection, changedUnit } = sitting;
  return html`<div class="card stack">
    <h3>${say("calibration.under-way", { reference, other })}</h3>
    <p class="large" role="status">${say("calibration.count", { kept, needed })}</p>
    <p>${say("calibration.how", { count: needed })}</p>
    <p>${say("calibration.seen", {
      reference, other, first: sitting.referenceTrips, second: sitting.otherTrips,
    })}</p>
    ${sitting.pairs.length === 0 ? html`<p>${say("calibration.none-yet")}</p>` : figures(sitting)}
    <p>${objection === ""
      ? html`<span aria-hidden="true">✓ </span>${say("calibration.may-accept")}`
      : html`<span aria-hidden="true">! </span>${objectionWords(objection, changedUnit)}`}</p>
    ${mine ? html`<div class="row">
      ${page.button("accept-calibration", say("calibration.accept"), () => accept(page, sitting, revision), {
        kind: "strong",
        off: objection !== "",
      })}
      ${page.button("give-up-calibration", say("calibration.give-up"), () => giveUp(page))}
    </div>` : nothing}
    ${sitting.pairs.length === 0 ? nothing : differences(sitting)}
  </div>`;
}

function objectionWords(objection, unit) {
  const changed = ["boot", "access-point", "contract"].includes(objection);
  return changed ? say(`objection.${objection}`, { unit }) : code("objection", objection);
}

function figures(sitting) {
  const ms = (value) => say("calibration.ms", { value });
  return html`<dl class="figures">
    ${figure("median", ms(signedMilliseconds(sitting.medianMicros)))}
    ${figure("spread", ms(atMostMilliseconds(sitting.spreadMicros)))}
    ${figure("uncertainty", ms(atMostMilliseconds(sitting.uncertaintyMicros)))}
  </dl>`;
}

function differences({ reference, other, pairs }) {
  return html`<h4 id="differences">${say("calibration.differences", { reference, other })}</h4>
    <ol class="differences" aria-labelledby="differences">${pairs.map(difference)}</ol>`;
}

function difference({ differenceMicros, standing }) {
  const rejected = standing !== "kept";
  return html`<li class=${rejected ? "rejected" : ""}>
    <span aria-hidden="true">${MARKS[standing] ?? "?"} </span
    >${say("calibration.ms", { value: signedMilliseconds(differenceMicros) })}${rejected
      ? html` <span class="rejected-why">${code("calibration", standing)}</span>`
      : nothing}
  </li>`;
}

function figure(name, value) {
  return html`<div><dt>${say(`calibration.${name}`)}</dt><dd>${value}</dd></div>`;
}

function accept(page, sitting, revision) {
  return page.act("accept-calibration", acts.endCalibration(true), {
    basis: revision,
    done: "calibration.accepted",
    values: { unit: sensorOf(sitting.other).unit },
  });
}

function giveUp(page) {
  return page.act("give-up-calibration", acts.endCalibration(false), { done: "calibration.given-up" });
}

function inForce(standing, now) {
  return html`<h3>${say("calibration.standing")}</h3>
    ${standing.length === 0
      ? html`<p>${say("calibration.none")}</p>`
      : html`<ul class="units">${standing.map((one) => stands(one, now))}</ul>
          <p>${say("calibration.assumes")}</p>`}`;
}

function stands(one, now) {
  const { reference, other, kept, rejected } = one;
  const ms = (value) => say("calibration.ms", { value });
  return html`<li class="card">
    <h4><span aria-hidden="true">✓ </span>${say("calibration.one", { reference, other })}</h4>
    <dl class="figures">
      ${figure("correction", ms(signedMilliseconds(one.correctionMicros)))}
      ${figure("declared", `± ${ms(atMostMilliseconds(one.declaredMicros))}`)}
      ${figure("root", one.root)}
      ${figure("trips", say("calibration.trips-of", { kept, rejected }))}
      ${figure("spread", ms(atMostMilliseconds(one.spreadMicros)))}
      ${figure("since", waited(one.sinceMicros, now))}
    </dl>
  </li>`;
}

function noLonger(ended, now) {
  return html`<h3>${say("calibration.ended")}</h3>
    <ul class="plain">${ended.map((one) => html`<li>
      <p><strong><span aria-hidden="true">! </span>${say("calibration.one", one)}</strong>,
        ${say("calibration.ended-when", { time: waited(one.atMicros, now) })}</p>
      <p>${say(`ended.${one.why}`, { unit: one.unit })}</p>
    </li>`)}</ul>`;
}
