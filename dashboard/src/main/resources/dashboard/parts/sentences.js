// The gateway's own sentences: standing troubles and alarms, marked with their language.
import { html, nothing } from "lit";
import { said } from "../lib/say.js";

export function warning(sentence) {
  const { lang, words } = said(sentence);
  return html`<span lang=${lang}><span aria-hidden="true">! </span>${words}</span>`;
}

export function warnings(sentences) {
  if (sentences.length === 0) return nothing;
  return html`<ul class="alarms">${sentences.map((one) => html`<li>${warning(one)}</li>`)}</ul>`;
}
