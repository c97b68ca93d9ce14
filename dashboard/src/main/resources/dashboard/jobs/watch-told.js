// What the safety officer tells the heat watch: a reading by hand, thunder or a flash, a gust.
import { html } from "lit";
import { say } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import { parseCenti } from "./watch-state.js";

export function tellings(page) {
  return html`<section aria-labelledby="tell">
    <h2 id="tell">${say("watch.tell")}</h2>
    <div class="row">
      ${page.button("lightning", say("watch.lightning"), () => lightning(page), { kind: "strong" })}
      ${page.button("hand-reading", say("watch.hand"), () => handReading(page))}
      ${page.button("gust", say("watch.gust"), () => gust(page))}
    </div>
  </section>`;
}

async function lightning(page) {
  const answer = await page.ask.put({
    title: say("watch.lightning-title"),
    body: () => html`<p>${say("watch.lightning-what")}</p>`,
    yes: say("watch.lightning-do"),
  });
  if (answer) page.act("lightning", acts.lightningSeen(), { quiet: true });
}

async function handReading(page) {
  const answer = await page.ask.put({
    title: say("watch.hand-title"),
    body: (typed) => html`
      ${field(typed, "air", "watch.air", true)} ${field(typed, "humid", "watch.humid", true)}
      ${field(typed, "globe", "watch.globe", true)} ${field(typed, "tool", "watch.tool", false)}
    `,
    check: (typed) => {
      const isWhole = parseCenti(typed.air) !== null && parseCenti(typed.humid) !== null;
      const isGlobe = !typed.globe?.trim() || parseCenti(typed.globe) !== null;
      return isWhole && isGlobe && typed.tool?.trim() ? null : say("watch.hand-wrong");
    },
    yes: say("watch.hand-do"),
  });
  if (!answer) return;
  const globe = answer.globe?.trim() ? parseCenti(answer.globe) : null;
  const act = acts.handReading(
    parseCenti(answer.air), parseCenti(answer.humid), globe, answer.tool.trim());
  page.act("hand-reading", act, { quiet: true });
}

async function gust(page) {
  const answer = await page.ask.put({
    title: say("watch.gust-title"),
    body: (typed) => field(typed, "gust", "watch.gust-value", true),
    check: (typed) => ((parseCenti(typed.gust) ?? -1) >= 0 ? null : say("watch.gust-wrong")),
    yes: say("watch.hand-do"),
  });
  if (answer) page.act("gust", acts.gustRead(parseCenti(answer.gust) * 10), { quiet: true });
}

function field(typed, name, label, isNumber) {
  return html`<label class="field"><span>${say(label)}</span>
    <input
      name=${name}
      inputmode=${isNumber ? "decimal" : "text"}
      maxlength=${isNumber ? 7 : 100}
      .value=${typed[name] ?? ""}
      @input=${(input) => (typed[name] = input.target.value)}
    />
  </label>`;
}
