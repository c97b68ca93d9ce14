// What judges the edges: every trigger with the guards in force, and other values for them: tried on
// today's runs, or given from now on. What was typed stays until the trigger is another one.
import { html, nothing } from "lit";
import { say, text } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import { allMicros, asTyped, byStation, isAsBefore, length, nameOf } from "./trigger-state.js";
import { guardFields, valuesWrong } from "./trigger-fields.js";
import { tryOut } from "./bench-rejudge.js";

/** The section; what was typed is kept in `page.triggerDrafts`. */
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
    ${guards.length === 0 ? nothing : buttons(page, trigger)}
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

function buttons(page, trigger) {
  const mine = page.badge.role === "technician";
  const where = { station: text(trigger.stationName), point: pointWords(trigger) };
  const [adjusts, tries] = [say("trigger.adjust-of", where), say("rejudge.try-of", where)];
  const [adjustName, tryName] = [`adjust-${nameOf(trigger)}`, `try-${nameOf(trigger)}`];
  return html`<div class="trigger-act">
    ${page.button(tryName, say("rejudge.try"), () => tryNow(page, trigger, tries), { aria: tries })}
    ${mine ? page.button(adjustName, say("trigger.adjust"), () => adjust(page, trigger, adjusts), {
      off: trigger.taken, aria: adjusts,
    }) : nothing}
    ${mine && trigger.taken ? html`<p>${say("trigger.taken")}</p>` : nothing}
  </div>`;
}

/** What was typed for this trigger as it is now adjusted, or else the values in force. */
function draft(page, trigger) {
  page.triggerDrafts ??= new Map();
  const key = `${nameOf(trigger)} ${trigger.adjustment}`;
  return {
    typed: page.triggerDrafts.get(key) ?? { ...asTyped(trigger.guards), words: "" },
    keep: (answer) => page.triggerDrafts.set(key, { ...answer }),
    drop: () => page.triggerDrafts.delete(key),
  };
}

function tryNow(page, trigger, title) {
  const { typed, keep } = draft(page, trigger);
  return tryOut(page, trigger, { title, typed, keep });
}

/** Asks for other values and sends them with the adjustment that was on the screen. */
async function adjust(page, trigger, title) {
  const { typed, keep, drop } = draft(page, trigger);
  const answer = await page.ask.put({
    title,
    typed,
    body: (values) => html`<p>${text(trigger.words)}</p>${guardFields(trigger.guards, values)}`,
    words: "trigger.why",
    check: (values) => whatIsWrong(trigger.guards, values),
    yes: say("trigger.adjust-now"),
  });
  if (!answer) return;
  keep(answer);
  const act = acts.adjustTrigger(trigger, allMicros(answer), answer.words.trim());
  const taken = await page.act(`adjust-${nameOf(trigger)}`, act, {
    done: "trigger.adjusted",
    values: { version: `${trigger.version.split("+")[0]}+${trigger.adjustment + 1}` },
  });
  if (taken?.kind === "accepted") drop();
}

function whatIsWrong(guards, typed) {
  return valuesWrong(guards, typed)
    ?? (isAsBefore(guards, typed) ? say("trigger.as-before") : null)
    ?? (typed.words.trim() === "" ? say("refusal.no-words") : null);
}
