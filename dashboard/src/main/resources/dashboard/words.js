// Every word a page shows, in both languages of the day: one dictionary, each key beside its pair,
// English first. A test walks all of it and all of the pages' calls. What only some pages say, only
// they load.
import { onDay } from "./words/on-day.js";
import { onPost } from "./words/on-post.js";
import { codes } from "./words/codes.js";

export const LANGUAGES = ["en", "es"];

export const words = { ...onDay, ...onPost, ...codes };

/** Adds what only one page says, while that page is loaded. */
export function learn(more) {
  Object.assign(words, more);
}

/** A sentence with {names} filled in. An unknown key shows itself, so that it is seen and mended. */
export function sentence(lang, key, values = {}) {
  const pair = words[key];
  if (!pair) return key;
  return pair[LANGUAGES.indexOf(lang)].replace(/\{(\w+)\}/g, (_, name) => values[name]);
}

/** Whether the dictionary has a word for a code of the gateway's closed lists. */
export function hasWords(key) {
  return Object.hasOwn(words, key);
}
