// What other guards would have found of today's turns at one trigger: asked for and shown. Nothing
// is applied from here; a split changes by the rulings of those who may rule.
import { html, nothing } from "lit";
import { say, text, code } from "../lib/say.js";
import { rejudge } from "../lib/ask-gateway.js";
import { allMicros, byWhy, moved, seconds } from "./trigger-state.js";
import { guardFields, valuesWrong } from "./trigger-fields.js";

/**
 * Shows what would change until the person goes back.
 *
 * @param typed the values to begin with, as typed
 * @param keep is told the values that were asked about
 */
export function tryOut(page, trigger, { title, typed, keep }) {
  const shown = { sheet: null, wrong: null };
  const press = (values) => {
    keep(values);
    return show(page, trigger, values, shown);
  };
  return page.ask.put({
    title,
    typed,
    body: (values) => html`<p>${text(trigger.words)}</p>
      <p>${say("rejudge.how")}</p>
      ${guardFields(trigger.guards, values)}
      ${page.button("show-rejudged", say("rejudge.show"), () => press(values), {
        kind: "strong",
      })}
      <div class="rejudged" role="status">
        ${shown.wrong ? html`<p class="wrong">! ${shown.wrong}</p>` : nothing}
        ${shown.sheet ? found(shown.sheet) : nothing}
      </div>`,
  });
}

async function show(page, trigger, values, shown) {
  shown.sheet = null;
  shown.wrong = valuesWrong(trigger.guards, values);
  if (!shown.wrong) {
    const { station, point } = trigger;
    page.pending.add("show-rejudged");
    page.requestUpdate();
    const answer = await rejudge(page.badge.token, { station, point, ...allMicros(values) });
    page.pending.delete("show-rejudged");
    if (answer.kind === "accepted") shown.sheet = answer;
    else shown.wrong = whyNot(answer);
  }
  page.requestUpdate();
  await page.updateComplete;
  // The fields are long, and what was asked for comes beneath them.
  page.querySelector(".rejudged")?.scrollIntoView({ block: "start" });
}

function whyNot({ kind, code: refusal, words }) {
  return kind === "unsent" ? say("rejudge.no-answer") : code("refusal", refusal, words ?? refusal);
}

function found(sheet) {
  return html`<p><strong>${say("rejudge.sum", {
      judged: sheet.judged, unchanged: sheet.unchanged, changed: sheet.changed.length,
    })}</strong></p>
    <p>${say("rejudge.not-applied")}</p>
    ${sheet.changed.length === 0 ? nothing : table(sheet.changed)}
    ${sheet.silent.length === 0 ? nothing : silent(sheet.silent)}`;
}

function table(lines) {
  return html`<table>
    <thead><tr>
      <th scope="col">${say("rejudge.number")}</th><th scope="col">${say("rejudge.before")}</th>
      <th scope="col">${say("rejudge.after")}</th><th scope="col">${say("rejudge.moved")}</th>
    </tr></thead>
    <tbody>${lines.map(row)}</tbody>
  </table>`;
}

function row({ number, run, state, standsMicros, before, after }) {
  const stands = standsMicros < 0 ? code("split", state) : say("rejudge.stands", {
    state: code("split", state), split: seconds(standsMicros),
  });
  return html`<tr>
    <th scope="row">${run > 1 ? say("rejudge.run", { number, run }) : number}</th>
    <td>${split(before)}</td>
    <td>${split(after)}</td>
    <td>${movedWords("start", before.startMicros, after.startMicros)}
      ${movedWords("finish", before.finishMicros, after.finishMicros)}
      ${movedWords("split", before.splitMicros, after.splitMicros)}</td>
  </tr>
  <tr class="rejudged-more"><td colspan="4">${say("rejudge.now", { stands })}
    ${after.label === "clean" ? nothing : say("rejudge.because", { why: text(after.why) })}</td></tr>`;
}

function split({ splitMicros, label }) {
  return html`<span class="rejudged-split">${
    splitMicros < 0 ? say("rejudge.none") : seconds(splitMicros)}</span><br />${
    code("rejudge-label", label)}`;
}

function movedWords(what, before, after) {
  const by = moved(before, after);
  return by === "" ? nothing : html`<span class="rejudged-moved">${say(`rejudge.${what}`, { by })}</span>`;
}

function silent(turns) {
  return html`<p>${say("rejudge.silent")}</p>
    <ul class="plain">${byWhy(turns).map(({ why, numbers }) =>
      html`<li>${code("rejudge-why", why)}: ${numbers.join(", ")}</li>`)}</ul>`;
}
