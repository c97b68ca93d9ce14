// The words of the tablet's language.
import { sentence, hasWords } from "../words.js";
import { inSpanish } from "../words/said.js";
import { language } from "./look.js";

export function say(key, values) {
  return sentence(language(), key, values);
}

/** A pair of words that came in a frame. */
export function text(pair) {
  return pair ? pair[language()] || pair.en : "";
}

/** A code of a closed list in words; one this page does not know yet is shown as it came. */
export function code(list, word, otherwise = word, values = {}) {
  return hasWords(`${list}.${word}`) ? say(`${list}.${word}`, values) : otherwise;
}

/** A sentence of the gateway in the tablet's language, as far as it is known: {lang, words}. */
export function said(sentence) {
  const spanish = language() === "es" ? inSpanish(sentence) : null;
  return spanish === null ? { lang: "en", words: sentence } : { lang: "es", words: spanish };
}
