// The proctor's zones, each at least 20 mm on glass. Stop is drawn by the page itself, at the same
// place as everywhere; the call zone stands beside it.
import { html, nothing } from "lit";
import { say, text } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import { callCount, markZone, missing } from "./post-state.js";
import { StartWatch } from "./post-start.js";

/** After the zone changed its meaning, a finger already on its way must not count for the new one. */
const SETTLE_MS = 700;

/** Alone, the page shows the next station at once: no second press must finish that one too. */
const FINISH_SETTLE_MS = 5000;

const meanings = new Map();
const starts = new StartWatch();

function settled(zone, of, forMs = SETTLE_MS) {
  const nowMs = performance.now();
  const before = meanings.get(zone);
  if (before?.of !== of) meanings.set(zone, { of, sinceMs: before ? nowMs : -forMs });
  return nowMs - meanings.get(zone).sinceMs >= forMs;
}

function zone(page, { name, kind, title, how, point, off = false, ready = true, press }) {
  const busy = page.pending.has(name);
  return html`<button
    type="button"
    class="zone ${kind}"
    data-act=${name}
    aria-busy=${busy}
    aria-disabled=${off || busy}
    data-settled=${ready}
    data-point=${point ?? nothing}
    @click=${() => ready && !off && !busy && press()}
  >
    <span class="zone-name">${title}</span><span class="zone-how">${how}</span>
  </button>`;
}

export function startZone(page, candidate) {
  const pending = candidate.signalPendingSinceMicros >= 0;
  return zone(page, {
    name: "start",
    kind: "wide go",
    title: say(pending ? "zone.start-pending" : "zone.start"),
    how: pending
      ? say("zone.start-wait")
      : say(candidate.canGiveStart ? "zone.start-how" : "zone.start-not-yet"),
    off: pending || !candidate.canGiveStart,
    press: () => page.act("start", acts.giveStart(candidate.number), { quiet: true }),
  });
}

export function resumeZone(page, candidate) {
  return zone(page, {
    name: "resume",
    kind: "wide go",
    title: say("zone.resume"),
    how: `${say("zone.held")}, ${say("zone.held-how")}`,
    press: () => page.act("resume", acts.resumeCandidate(candidate.number), { quiet: true }),
  });
}

export function markAndFinish(page, candidate) {
  const at = candidate.station;
  return [markingZone(page, candidate.number, at), finishZone(page, candidate.number, at)];
}

function markingZone(page, number, at) {
  const lingers = starts.lingers(`${number}/${at.id}`, at.started, performance.now());
  const mark = markZone(at, lingers);
  const of = `${at.id}/${mark.point}`;
  return zone(page, {
    name: "mark",
    kind: "mark",
    title: mark.kind === "start-hand" ? say("zone.start-hand") : say("zone.checkpoint"),
    how: markWords(mark, page.isAlone()),
    point: mark.point,
    off: mark.point === null,
    ready: settled("mark", of),
    press: () => {
      if (mark.point === "start") starts.tapped();
      page.act("mark", acts.tap(number, at.id, mark.point), { quiet: true });
    },
  });
}

function markWords({ kind, next }, alone) {
  if (kind === "start-hand" && alone) return say("gap.start-by-voice");
  if (kind === "start-hand") return say("zone.start-hand-how");
  if (kind !== "next") return say(`zone.checkpoint-${kind}`);
  const name = text(next.name);
  return next.count > 1 ? say("zone.checkpoint-next", { ...next, name }) : name;
}

function finishZone(page, number, at) {
  const unseen = at.started ? missing(at) : [];
  const ready = settled("finish", at.id, page.isAlone() ? FINISH_SETTLE_MS : 0);
  return zone(page, {
    name: "finish",
    kind: "finish",
    title: say("zone.finish"),
    how: unseen.length > 0
      ? say("zone.finish-missing", { names: unseen.map((point) => text(point.name)).join(", ") })
      : say(finishWords(at)),
    // Alone, a start that a sensor saw is not known here.
    off: !at.started && !page.isAlone(),
    ready,
    press: () => page.act("finish", acts.tap(number, at.id, "finish"), { quiet: true }),
  });
}

function finishWords(at) {
  if (!at.started) return "gap.finish";
  return at.finishJudged ? "zone.finish-judge" : "zone.finish-tap";
}

export function callZone(candidate, open) {
  const count = callCount(candidate.calls, candidate.station.id);
  return html`<button type="button" class="zone call" data-act="call" @click=${open}>
    <span class="zone-name">${say("zone.call")}</span>
    <span class="zone-how">${say("zone.call-count", count)}</span>
  </button>`;
}
