// What the proctor's page says of its link to the gateway: how many presses wait and since when,
// what it does not know meanwhile, and which presses were refused while nobody looked. A refusal
// stays, with both sides, until the person takes note of it.
import { html, nothing } from "lit";
import { say, text, code } from "../lib/say.js";
import { minutesTenths, wallClock } from "../lib/times.js";
import { wallAt } from "../lib/exam-clock.js";
import { ownClock } from "../lib/own-clock.js";
import { OUTBOX_MAX } from "../lib/outbox.js";

export function timeOfDay(wallMs) {
  return new Date(wallMs).toTimeString().slice(0, 8);
}

/** One press in words: "Finish, Rope bag". */
export function pressWords({ act, about }) {
  const name = act.act === "tap" && ["start", "finish"].includes(act.point)
    ? `${act.act}-${act.point}`
    : act.act === "call" ? `call-${act.fault ? "fault" : "warning"}` : act.act;
  return say(`did.${name}`, {
    station: text(about?.station) || (act.station ?? ""),
    thing: text(about?.thing) || (act.point ?? act.criterion ?? ""),
  });
}

export function gapNotes(page) {
  const { waiting, answered, blocked, durable } = page.outbox;
  const alone = page.isAlone();
  if (!alone && answered.length === 0 && !blocked && durable) return nothing;
  return html`<section class="gap" aria-label=${say("gap.name")}>
    ${answered.length > 0 ? refusedBar(page, answered.length) : nothing}
    ${alone ? waits(waiting) : nothing}
    ${blocked ? html`<p role="alert">! ${code("refusal", blocked)}</p>` : nothing}
    ${durable ? nothing : html`<p role="status">! ${say("gap.not-durable")}</p>`}
  </section>`;
}

/** A boot that ended before it was compared can't date its presses any more. */
function isUndated({ compared, boot }) {
  return !compared && boot !== ownClock.clock.boot;
}

function waits(waiting) {
  const undated = waiting.filter(isUndated).length;
  return html`<p role="status" data-waiting=${waiting.length}>
      <strong><span aria-hidden="true">○ </span>${waiting.length > 0
        ? say(waiting.length === 1 ? "gap.waits-one" : "gap.waits", {
          count: waiting.length,
          since: timeOfDay(waiting[0].wallMs),
        })
        : say("gap.none-waits")}</strong>
    </p>
    ${undated > 0 ? html`<p data-undated=${undated}>! ${say("gap.undated", { count: undated })}</p>` : nothing}
    ${ownClock.isTimeless() ? html`<p data-clock="none">! ${say("gap.clock-not-compared")}</p>` : nothing}
    <p>${say("gap.unknown")}</p>`;
}

function refusedBar(page, count) {
  return html`<button type="button" class="button wide not-taken" data-act="not-taken"
    @click=${() => openRefused(page)}
  ><span aria-hidden="true">! </span>${say(count === 1 ? "gap.refused-one" : "gap.refused", { count })}</button>`;
}

export async function openRefused(page) {
  await page.ask.put({ title: say("gap.refused-title"), body: () => refusedList(page) });
}

function refusedList(page) {
  const { answered } = page.outbox;
  return html`<ul class="refusals">${answered.map((one) => html`<li data-key=${one.key}>
    <h3>${say("gap.mine")}</h3>
    <p>${pressWords(one.entry)}, ${say("gap.number", { number: one.entry.act.number })},
      ${say("gap.at", { at: timeOfDay(one.entry.wallMs) })}</p>
    <h3>${say("gap.stands")}</h3>
    <p>${stands(page, one)}</p>
    <button type="button" class="button strong" data-act="note-${one.key}"
      @click=${() => takeNote(page, one.key)}
    >${say("gap.noted")}</button>
  </li>`)}</ul>`;
}

/** A ruling in words: what, who, when and why. */
export function ruledWords(head, ruling, station) {
  const why = [code("reason", ruling.reason, ""), ruling.words].filter(Boolean).join(": ");
  return `${say("gap.ruled-by", {
    what: code("did", ruling.act, ruling.act, { station }),
    person: ruling.person,
    role: code("role", ruling.role),
    at: head ? wallClock(wallAt(head, ruling.atMicros)) : "",
  })}${why ? ` (${why})` : ""}`;
}

/** The ruling that stood in the way, where the answer carries it. */
function ruledBy(page, { act, about }, standing) {
  if (!standing?.person) return "";
  const station = text(about?.station) || (act.station ?? "");
  return ` ${ruledWords(page.link.frame?.head, standing, station)}.`;
}

/** What stands instead: as the answer says, and as the newest frame shows that split. */
function stands(page, { entry, answer }) {
  const refused = code("refusal", answer.code, answer.words ?? answer.code);
  const words = `${refused}${ruledBy(page, entry, answer.standing)}`;
  const candidate = page.link.frame?.candidate;
  const split = candidate?.number === entry.act.number
    ? candidate.splits.find((each) => each.station === entry.act.station)
    : null;
  const now = split
    ? ` ${say("gap.split-now", { state: say(`split.${split.state}`), time: minutesTenths(split.splitMicros) })}`
    : "";
  return `${words}${now}`;
}

async function takeNote(page, key) {
  await page.outbox.takeNote(key);
  if (page.outbox.answered.length === 0) page.ask.close();
  else page.requestUpdate();
}

/** The words for a press that did not fit any more. */
export function fullWords() {
  return say("gap.full", { max: OUTBOX_MAX });
}
