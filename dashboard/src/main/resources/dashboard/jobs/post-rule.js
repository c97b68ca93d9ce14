// What a person can rule on one split beside confirming it: one of its readings, a time by hand, no
// time at all; and on what it rests on: strike a passage, add a mark nobody saw, take a ruling back.
// Each way knows its words, what it still asks for, and the act it makes.
import { html, nothing } from "lit";
import { say, text, code } from "../lib/say.js";
import { acts, reasonsFor } from "../lib/acts.js";
import { gatewayAt, wallAt } from "../lib/exam-clock.js";
import { halfWidth, minutesTenths, parseTime, parseWall, wallTenths } from "../lib/times.js";
import { choice, field } from "../parts/fields.js";
import { ruledWords } from "./post-waiting.js";
import { isRuled } from "./post-state.js";

export async function ruleOn(page, station) {
  const candidate = page.candidate();
  const { number, revision } = candidate;
  const split = candidate.splits.find((each) => each.station === station);
  const { head } = page.link.frame;
  const ways = waysFor({ number, split, head });
  const chosen = (answer) => ways.find((way) => way.value === answer.choice);
  const title = say("rule.title", { station: text(split.name), number });
  const how = await page.ask.put({
    title,
    legend: text(split.why),
    choices: ways.map((way) => [way.value, way.label]),
    body: (answer) => html`${restsOn(head, split)} ${chosen(answer)?.field?.(answer) ?? nothing}`,
    check: (answer) => chosen(answer).check?.(answer) ?? null,
    yes: say("rule.do"),
  });
  if (!how) return;
  const way = chosen(how);
  const why = await page.ask.put({
    title: way.label,
    choices: way.reasons?.map((reason) => [reason, say(`reason.${reason}`)]),
    words: true,
    yes: say("rule.do"),
  });
  if (why) page.act(`rule-${station}`, way.act(how, why), { basis: revision, quiet: true, seen: split });
}

function waysFor(about) {
  const { split } = about;
  return [
    ...(split.standing ? [takeBack(about, split.standing)] : []),
    ...(split.readings ?? []).map((reading, at) => chooseReading(about, reading, at)),
    ...(split.handMicros >= 0 ? [taps(about)] : []),
    stopWatch(about),
    voidSplit(about),
    ...(isRuled(split) ? [] : onEvidence(about)),
  ];
}

/** What a split rests on is let be while a ruling stands. */
function onEvidence(about) {
  const { marks, onEvidence: rulings } = about.split;
  return [
    ...(marks.some((mark) => mark.edge) ? [strike(about)] : []),
    addMark(about),
    ...rulings.map((ruling) => takeBack(about, ruling)),
  ];
}

function takeBack({ number, split, head }, ruling) {
  return {
    value: `back-${ruling.entry}`,
    label: say("rule.back", { ruling: ruledWords(head, ruling, text(split.name)) }),
    act: (_, why) => acts.withdrawRuling(number, split.station, ruling.entry, why.words),
  };
}

function chooseReading({ number, split }, reading, at) {
  return {
    value: `reading-${at}`,
    label: say("rule.reading", {
      time: minutesTenths(reading.splitMicros),
      half: halfWidth(reading.lowerMicros, reading.upperMicros),
      words: text(reading.words),
    }),
    act: () => acts.chooseReading(number, split.station, at),
  };
}

function taps({ number, split }) {
  return {
    value: "taps",
    label: say("rule.taps", { time: minutesTenths(split.handMicros) }),
    reasons: reasonsFor.hand,
    act: (_, why) => acts.handTime(number, split.station, 0, why.choice, why.words),
  };
}

function stopWatch({ number, split }) {
  return {
    value: "watch",
    label: say("rule.watch"),
    reasons: reasonsFor.hand,
    field: (answer) => field("time", "rule.time", answer),
    check: (answer) => parseTime(answer.time ?? "") === null ? say("rule.time-wrong") : null,
    act: (how, why) => acts.handTime(number, split.station, parseTime(how.time), why.choice, why.words),
  };
}

function voidSplit({ number, split }) {
  return {
    value: "void",
    label: say("rule.void"),
    reasons: reasonsFor.void,
    act: (_, why) => acts.voidSplit(number, split.station, why.choice, why.words),
  };
}

function strike({ split, head }) {
  const passages = split.marks.filter((mark) => mark.edge);
  return {
    value: "strike",
    label: say("rule.strike"),
    reasons: reasonsFor.strike,
    field: (answer) => choice("passage", "rule.passage", answer, passages.map((mark, at) =>
      [String(at), markWords(head, mark)])),
    act: (how, why) => acts.strike(passages[Number(how.passage)].edge, why.choice, why.words),
  };
}

function addMark({ number, split, head }) {
  const points = [["start", say("rule.point-start")], ["finish", say("rule.point-finish")],
    ...split.checkpoints.map((point) => [point.id, text(point.name)])];
  const at = (answer) => parseWall(answer.at ?? "", head.wallMicros);
  return {
    value: "add",
    label: say("rule.add"),
    reasons: reasonsFor.addMark,
    field: (answer) => html`${choice("point", "rule.point", answer, points)} ${field("at", "rule.at", answer, "text")}`,
    check: (answer) => at(answer) === null ? say("rule.at-wrong") : null,
    act: (how, why) => acts.addMark(
      { number, station: split.station, point: how.point, atMicros: gatewayAt(head, at(how)) },
      why.choice,
      why.words,
    ),
  };
}

function markWords(head, mark) {
  const at = wallTenths(wallAt(head, mark.atMicros));
  return `${text(mark.name)} ${at}, ${mark.sensor ? text(mark.sensor) : say("rule.by-hand")}`;
}

function restsOn(head, { marks }) {
  if (marks.length === 0) return nothing;
  return html`<h3>${say("rule.rests")}</h3>
    <ul class="plain">${marks.map((mark) => html`<li>${markWords(head, mark)}</li>`)}</ul>`;
}
