// What judges the edges: every trigger with the guards in force, and other values for them. What
// was typed and not taken stays until the trigger is another one.
import { html, nothing } from "lit";
import { say, text } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import {
  allMicros, asTyped, byStation, firstWrong, isAsBefore, length, nameOf,
} from "./trigger-state.js";

/** The section; what was typed and refused is kept in `page.triggerDrafts`. */
export function triggers(page, frame) {
  return html`<section aria-labelledby="triggers" class="triggers">
    <h2 id="triggers">${say("trigger.title")}</h2>
    <p>${say("trigger.how")}</p>
    ${frame.triggers.length === 0 ? html`<p>${say("trigger.none")}</p>` : nothing}
    ${byStation(frame.triggers).map((station) => html`
      <h3 id="triggers-of-${station.id}">${text(station.name)}</h3>
      <ul class="plain" aria-labelledby="triggers-of-${station.id}">${
        station.triggers.map((one) => row(page, one))}</ul>`)}
  </section>`;
}

function row(page, trigger) {
  const { words, version, sensors, guards } = trigger;
  return html`<li class="card trigger" data-trigger=${nameOf(trigger)}>
    <div>
      <p><strong>${pointWords(trigger)}</strong>: ${text(words)}</p>
      <p>${say("trigger.of", { sensors: sensors.join(", "), version })}</p>
      <p>${guardsInForce(guards)}</p>
    </div>
    ${page.badge.role === "technician" ? adjusting(page, trigger) : nothing}
  </li>`;
}

export function pointWords({ point }) {
  const isEnd = point === "start" || point === "finish";
  return isEnd ? say(`bench.point-${point}`) : say("trigger.checkpoint", { point });
}

function guardsInForce(guards) {
  const used = guards.filter(({ micros }) => micros > 0);
  if (used.length === 0) return say("trigger.no-guard");
  return used.map(({ guard, micros }) => `${say(`guard.${guard}`)} ${length(micros)}`).join(" · ");
}

function adjusting(page, trigger) {
  if (trigger.guards.length === 0) return nothing;
  const name = `adjust-${nameOf(trigger)}`;
  const aria = say("trigger.adjust-of", {
    station: text(trigger.stationName),
    point: pointWords(trigger),
  });
  return html`<div class="trigger-act">
    ${page.button(name, say("trigger.adjust"), () => adjust(page, trigger, name, aria), {
      off: trigger.taken, aria,
    })}
    ${trigger.taken ? html`<p>${say("trigger.taken")}</p>` : nothing}
  </div>`;
}

/** Asks for other values and sends them with the adjustment that was on the screen. */
async function adjust(page, trigger, name, title) {
  const drafts = (page.triggerDrafts ??= new Map());
  const key = `${name} ${trigger.adjustment}`;
  const answer = await page.ask.put({
    title,
    typed: drafts.get(key) ?? asTyped(trigger.guards),
    body: (typed) => html`<p>${text(trigger.words)}</p>
      ${guardFields(trigger.guards, typed)}`,
    words: "trigger.why",
    check: (typed) => whatIsWrong(trigger.guards, typed),
    yes: say("trigger.adjust-now"),
  });
  if (!answer) return;
  drafts.set(key, answer);
  const act = acts.adjustTrigger(trigger, allMicros(answer), answer.words.trim());
  const taken = await page.act(name, act, {
    done: "trigger.adjusted",
    values: { version: `${trigger.version.split("+")[0]}+${trigger.adjustment + 1}` },
  });
  if (taken?.kind === "accepted") drafts.delete(key);
}

export function guardFields(guards, typed) {
  return html`<div class="guards">${guards.map((guard) => guardField(guard, typed))}</div>`;
}

function guardField(guard, typed) {
  const id = `guard-${guard.guard}`;
  return html`<div class="field">
    <label for=${id}>${say("trigger.in-ms", { guard: say(`guard.${guard.guard}`) })}</label>
    <input
      id=${id}
      name=${guard.guard}
      inputmode="decimal"
      maxlength="11"
      autocomplete="off"
      aria-describedby="${id}-limits"
      .value=${typed[guard.guard]}
      @input=${(change) => (typed[guard.guard] = change.target.value)}
    />
    <p id="${id}-limits" class="quiet">${limits(guard)} ${guard.micros === 0
      ? say("trigger.not-used")
      : say("trigger.in-force", { length: length(guard.micros) })}</p>
  </div>`;
}

function limits({ leastMicros, mostMicros }) {
  const values = { least: length(leastMicros), most: length(mostMicros) };
  if (leastMicros === 0) return say("trigger.from-none", values);
  return leastMicros === 1 ? say("trigger.above-none", values) : say("trigger.between", values);
}

function whatIsWrong(guards, typed) {
  return valuesWrong(guards, typed)
    ?? (isAsBefore(guards, typed) ? say("trigger.as-before") : null)
    ?? (typed.words.trim() === "" ? say("refusal.no-words") : null);
}

/** A sentence about the first value that is no time, or beyond its limits; null for none. */
export function valuesWrong(guards, typed) {
  const wrong = firstWrong(guards, typed);
  return wrong && say(`trigger.${wrong.why}`, {
    guard: say(`guard.${wrong.guard}`), limits: limits(wrong),
  });
}
