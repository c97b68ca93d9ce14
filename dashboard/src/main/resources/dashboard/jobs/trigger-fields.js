// The fields for a trigger's guards, each with its limits beside it, and what is wrong with them.
import { html } from "lit";
import { say } from "../lib/say.js";
import { firstWrong, length } from "./trigger-state.js";

/** What is typed goes straight into `typed`, in milliseconds. */
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

/** A sentence about the first value that is no time, or beyond its limits; null for none. */
export function valuesWrong(guards, typed) {
  const wrong = firstWrong(guards, typed);
  return wrong && say(`trigger.${wrong.why}`, {
    guard: say(`guard.${wrong.guard}`), limits: limits(wrong),
  });
}
