// What must be there before the first release: each item, who signed it and when, and the press
// that signs it or takes that back. Nothing is signed by a single touch.
import { html, nothing } from "lit";
import { say, text } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import { wallAt } from "../lib/exam-clock.js";
import { wallClock } from "../lib/times.js";

export function startOfDay(page, items) {
  if (items.length === 0) return nothing;
  const open = items.filter((item) => !item.done).length;
  return html`<section class="card" aria-labelledby="start-of-day">
    <h2 id="start-of-day">${say("start.name")}</h2>
    <p role="status">${open > 0
      ? html`<span aria-hidden="true">‖ </span><strong>${say("start.open", { count: open })}</strong>`
      : html`<span aria-hidden="true">✓ </span>${say("start.all")}`}</p>
    <ul class="plain">${items.map((item) => line(page, item))}</ul>
  </section>`;
}

/** Whether somebody has still to sign. */
export function isOpen(items) {
  return items.some((item) => !item.done);
}

/** The open items in words, for who cannot sign here. */
export function openItems(items) {
  return html`<ul>${items.filter((item) => !item.done).map((item) => html`<li>${text(item.words)}</li>`)}</ul>`;
}

function line(page, item) {
  const [label, press] = item.done
    ? [say("start.take-back"), () => takeBack(page, item)]
    : [say("start.sign"), () => sign(page, item)];
  return html`<li class="team" data-item=${item.id}>
    <div>
      <p>${text(item.words)}: <span aria-hidden="true">${item.done ? "✓" : "✕"} </span>${item.done
        ? say("start.signed")
        : html`<strong>${say("start.is-open")}</strong>`}</p>
      ${item.person ? html`<p>${who(page, item)}${item.note ? `: ${item.note}` : nothing}</p>` : nothing}
    </div>
    ${page.button(`check-${item.id}`, label, press, {
      kind: item.done ? "" : "strong", aria: `${label}: ${text(item.words)}`,
    })}
  </li>`;
}

function who(page, { done, person, atMicros }) {
  const at = wallClock(wallAt(page.link.frame.head, atMicros));
  return say(done ? "start.by" : "start.taken-back", { person, at });
}

async function sign(page, { id, words }) {
  const answer = await page.ask.put({
    title: say("start.sign-title"),
    body: () => html`<p class="large">${text(words)}</p>`,
    words: true,
    yes: say("start.sign-do"),
  });
  if (answer) page.act(`check-${id}`, acts.checklistDone(id, answer.words), { quiet: true });
}

async function takeBack(page, { id, words }) {
  const answer = await page.ask.put({
    title: say("start.take-back-title"),
    body: () => html`<p class="large">${text(words)}</p><p>${say("start.take-back-what")}</p>`,
    words: true,
    check: (given) => (given.words.trim() ? null : say("start.say-why")),
    yes: say("start.take-back-do"),
  });
  if (answer) page.act(`check-${id}`, acts.checklistOpen(id, answer.words), { quiet: true });
}
