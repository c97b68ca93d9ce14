// After the finish: each split with its interval and why. The clean ones go with one press; each
// of the others is looked at.
import { html, nothing } from "lit";
import { say, text } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import { halfWidth, minutesTenths } from "../lib/times.js";
import { cleanOnes, isRuled, sameSplit, toRule } from "./post-state.js";
import { confirmOne, secondClock } from "./post-second-clock.js";
import { ruleOn } from "./post-rule.js";
import { ruledWords } from "./post-waiting.js";

export function splits(page, candidate) {
  const left = toRule(candidate.splits).length;
  const clean = cleanOnes(candidate.splits);
  return html`<section aria-labelledby="splits">
    <h2 id="splits">${say("splits.title")}</h2>
    <p role="status">${left > 0
      ? say("splits.left", { left, all: candidate.splits.length })
      : say("splits.none-left")}</p>
    ${clean.length > 1 ? page.button(
      "confirm-all",
      say("splits.confirm-all", { count: clean.length }),
      () => confirmAll(page),
      { kind: "strong wide" },
    ) : nothing}
    <ol class="splits">${candidate.splits.map((split) => line(page, candidate, split))}</ol>
  </section>`;
}

function line(page, candidate, split) {
  const timed = split.splitMicros >= 0;
  const other = isRuled(split) ? "splits.change" : "splits.other";
  return html`<li class="card split ${isRuled(split) ? "ruled" : ""}">
    <div class="split-what">
      <h3>${text(split.name)}</h3>
      <p><span class="time">${minutesTenths(split.splitMicros)}</span>
        ${timed ? html` <span>${say("splits.width", {
          half: halfWidth(split.lowerMicros, split.upperMicros),
        })}</span>` : nothing}</p>
      ${secondClock(split)}
      <p>${stateWords(split)}${text(split.why) ? html`: ${text(split.why)}` : nothing}</p>
      ${split.readings?.length > 0 ? readings(split.readings) : nothing}
      ${split.tie ? html`<p>${say("splits.tie")}</p>` : nothing}
      ${split.late ? html`<p><span aria-hidden="true">! </span>${text(split.late.words)}${
        split.late.splitMicros >= 0 ? html` (${minutesTenths(split.late.splitMicros)})` : nothing
      }</p>` : nothing}
      ${[split.standing, ...split.onEvidence].filter(Boolean).map((ruling) => html`<p>${
        ruledWords(page.link.frame.head, ruling, text(split.name))
      }</p>`)}
    </div>
    ${split.waits ? nothing : html`<div class="row">
      ${timed && !isRuled(split) ? page.button(
        `confirm-${split.station}`,
        say("splits.confirm"),
        () => confirmOne(page, candidate, split),
        { aria: `${say("splits.confirm")}: ${text(split.name)}`, kind: split.clean ? "strong" : "" },
      ) : nothing}
      <button
        type="button"
        class="button"
        data-act="other-${split.station}"
        aria-label="${say(other)}: ${text(split.name)}"
        @click=${() => ruleOn(page, split.station)}
      >${say(other)}</button>
    </div>`}
  </li>`;
}

function stateWords(split) {
  const state = say(split.waits ? "split.waits" : `split.${split.state}`);
  if (isRuled(split)) return html`<span aria-hidden="true">✓ </span><strong>${state}</strong>`;
  const mark = split.clean ? "○" : "!";
  return html`<span aria-hidden="true">${mark} </span><strong>${state}, ${say(
    `label.${split.label}`,
  )}</strong>`;
}

function readings(all) {
  return html`<ol class="readings" aria-label=${say("splits.readings")}>
    ${all.map((reading) => html`<li>${minutesTenths(reading.splitMicros)} ${say("splits.width", {
      half: halfWidth(reading.lowerMicros, reading.upperMicros),
    })}: ${text(reading.words)}</li>`)}
  </ol>`;
}

/**
 * One confirm after the other, each on the revision the last one made; without a link each waits. It
 * ends at the first split that is no longer what was on the screen: nobody confirms what they have
 * not seen.
 */
async function confirmAll(page) {
  const seen = cleanOnes(page.link.frame.candidate.splits);
  const { number } = page.link.frame.candidate;
  page.pending.add("confirm-all");
  for (const split of seen) {
    const candidate = page.link.frame.candidate;
    const now = candidate?.splits.find((each) => each.station === split.station);
    if (candidate?.number !== number || !sameSplit(split, now)) {
      page.notes.warn(say("splits.changed"));
      break;
    }
    const answer = await page.act(`confirm-${split.station}`, acts.confirm(number, split.station), {
      basis: candidate.revision,
      quiet: true,
    });
    if (answer?.kind === "waits") continue;
    if (answer?.kind !== "accepted" || !(await page.frameAfter(answer.entry))) break;
  }
  page.pending.delete("confirm-all");
  page.requestUpdate();
}
