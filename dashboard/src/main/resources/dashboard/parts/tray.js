// Passages that are nobody's, newest first: to be assigned or struck.
import { html, nothing } from "lit";
import { say, text } from "../lib/say.js";

export function tray(frame) {
  if (!frame.tray || frame.tray.length === 0 && frame.trayRest === 0) return nothing;
  return html`<section aria-labelledby="tray">
    <h2 id="tray" class="aside">${say("tray.title")}</h2>
    <ul class="plain">${frame.tray.map((each) => html`<li>
      ${text(each.sensor)}, ${say("tray.ago", { seconds: Math.round(each.ageMillis / 1000) })}:
      ${text(each.words)}
    </li>`)}</ul>
    ${frame.trayRest > 0 ? html`<p>${say("tray.rest", { count: frame.trayRest })}</p>` : nothing}
  </section>`;
}
