// What every page shows, always: whose page, link and age of data, course, heat, sound, settings.
// Words carry the meaning; the glyph and the ground only repeat it.
import { html, nothing } from "lit";
import { code, say } from "../lib/say.js";
import { language, look, chooseLanguage, chooseLook } from "../lib/look.js";
import * as sound from "../lib/sound.js";
import { warning } from "./sentences.js";
import { reasonWords } from "./reasons.js";

export class Menu {
  open = false;

  constructor(redraw) {
    this.redraw = redraw;
  }

  toggle = () => {
    this.open = !this.open;
    this.redraw();
  };

  view(badge) {
    if (!this.open) return nothing;
    return html`<section id="settings" class="menu" aria-label=${say("menu.open")}>
      ${choices("menu.language", language(), [["en", "English"], ["es", "Español"]], chooseLanguage)}
      ${choices("menu.look", look(), ["auto", "light", "dark"].map((name) => [
        name,
        say(`look.${name}`),
      ]), chooseLook)}
      ${badge ? html`<p>${say("menu.who", {
        person: badge.person ?? badge.device ?? "",
        role: say(`role.${badge.role}`),
      })}</p>` : nothing}
      <div class="row">
        <a class="button" href="/">${say("menu.front")}</a>
        <button type="button" class="button" @click=${this.toggle}>${say("menu.close")}</button>
      </div>
    </section>`;
  }
}

function choices(title, chosen, options, choose) {
  return html`<fieldset class="row">
    <legend>${say(title)}</legend>
    ${options.map(([value, label]) => html`<button
      type="button"
      class="button"
      lang=${value === "en" || value === "es" ? value : nothing}
      aria-pressed=${chosen === value}
      @click=${() => choose(value)}
    >${label}</button>`)}
  </fieldset>`;
}

export function header(page, stale, age) {
  const live = page.job.stream !== null;
  return html`<header class="head">
    <div class="head-top">
      <h1>${say(`page.${page.job.name}`)}</h1>
      ${live ? status(page, stale, age) : nothing}
      ${live ? soundButton(page) : nothing}
      <button
        type="button"
        class="button plain"
        aria-expanded=${page.menu.open}
        aria-controls="settings"
        @click=${page.menu.toggle}
      ><span aria-hidden="true">☰</span><span class="wide-only">${say("menu.open")}</span></button>
    </div>
    ${page.menu.view(page.badge)}
    ${live ? banners(page, stale, age) : nothing}
  </header>`;
}

function soundButton(page) {
  if (sound.isArmed()) return html`<p class="sound"><span aria-hidden="true">♪</span> ${say("sound.on")}</p>`;
  const arm = () => sound.arm().then(() => page.requestUpdate());
  return html`<button
    type="button"
    class="button plain"
    data-act="arm"
    title=${say("sound.arm")}
    @click=${arm}
  ><span aria-hidden="true">✕♪</span>${say("sound.off")}</button>`;
}

function status(page, stale, age) {
  const head = page.link.frame?.head;
  const course = head?.course ?? "unknown";
  return html`<dl class="status">
    ${item("link", linkMark(page.link, stale), linkWords(page.link, stale, age))}
    ${item("course", { running: "▶", held: "‖", stopped: "■" }[course] ?? "?", say(`course.${course}`))}
    ${item("heat", "≈", heatWords(head?.heat))}
  </dl>`;
}

function item(name, mark, words) {
  return html`<div class="status-${name}">
    <dt>${say(`${name}.name`)}</dt>
    <dd data-status=${name}><span aria-hidden="true">${mark} </span>${words}</dd>
  </div>`;
}

function linkMark(link, stale) {
  return stale || link.phase === "lost" ? "✕" : link.phase === "live" ? "●" : "○";
}

function linkWords(link, stale, age) {
  if (stale) return say("link.old", { age });
  return link.everHeard ? say("link.live", { age }) : say("link.opening");
}

function heatWords(heat) {
  return heat && heat.level >= 0 ? say(`heat.${heat.level}`) : say("heat.unknown");
}

/** What the level asks of everybody; it stands on every page, and it never decides. */
export function heatNote(heat) {
  const level = heat && heat.level >= 0 ? heat.level : "unknown";
  return html`<p class="heat-note" data-heat-note=${level}><span aria-hidden="true">≈ </span>${
    say(`heat.do-${level}`)} ${say("heat.defer")}</p>`;
}

function banners(page, stale, age) {
  const head = page.link.frame?.head;
  const course = head?.course;
  return html`<div class="banners">
    ${stale ? html`<p class="banner old" role="alert">
      <span aria-hidden="true">✕ </span>${say("link.lost", { age })}
    </p>` : nothing}
    ${course === "held" || course === "stopped" ? html`<p class="banner ${course}" role="alert">
      <span aria-hidden="true">${course === "held" ? "‖" : "■"} </span>${say(`course.${course}.banner`)}
      ${reasonWords(head.courseWords)}
    </p>` : nothing}
    ${course === "stopped" ? nothing : holds(head)}
    ${(head?.troubles ?? []).map((one) => html`<p class="banner trouble" role="alert">
      ${warning(one)}
    </p>`)}
  </div>`;
}

/** What else holds new releases; the public's page is only told that something does. */
function holds(head) {
  const why = (head?.holds ?? [])
    .filter((hold) => hold.code !== "course-held")
    .map((hold) => code("hold", hold.about || hold.code));
  const isAny = why.length > 0 || (head?.holds?.length > 0 && head.course === "running");
  return isAny ? html`<p class="banner held" role="alert" data-holds>
    <span aria-hidden="true">‖ </span>${say("hold.banner")} ${why.map((one) => `${one}.`).join(" ")}
  </p>` : nothing;
}
