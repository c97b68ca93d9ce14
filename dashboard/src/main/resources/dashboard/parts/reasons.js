// A reason in a frame is a code, perhaps with free words after it; the code is shown in the
// tablet's language, the words as they were written.
import { code, said } from "../lib/say.js";

export function reasonWords(words) {
  if (!words) return "";
  const [first, ...rest] = words.split(": ");
  return [code("reason", first, said(first).words), ...rest].join(": ");
}
