// The heat watch's figures for those who act on them: value, air, humidity, and how old they are.
import { html } from "lit";
import { say } from "../lib/say.js";

export function heatWords(heat) {
  if (!heat || heat.readingAgeMicros < 0) return say("heat.no-reading");
  return say("heat.index", {
    index: (heat.heatIndexDeciFahrenheit / 10).toFixed(1),
    air: (heat.centiCelsius / 100).toFixed(1),
    humid: Math.round(heat.centiPercent / 100),
    age: Math.floor(heat.readingAgeMicros / 60_000_000),
  });
}

export function heatCard(heat) {
  return html`<section aria-labelledby="heat">
    <h2 id="heat">${say("heat.name")}</h2>
    <p>${heatWords(heat)}</p>
  </section>`;
}
