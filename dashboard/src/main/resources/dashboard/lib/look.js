// Language and look of this tablet: asked from the browser first, then from what was chosen here.
// The root element carries both, so that the style sheets need no script.
const LANGUAGES = ["en", "es"];
const LOOKS = ["auto", "light", "dark"];
const changed = new Set();

/** Remembers and recalls; a browser that refuses storage simply forgets. */
export const keep = {
  get(name) {
    try {
      return localStorage.getItem(name);
    } catch {
      return null;
    }
  },
  set(name, value) {
    try {
      if (value === null) localStorage.removeItem(name);
      else localStorage.setItem(name, value);
    } catch {
      // Private windows may forbid it; the choice then lasts as long as the page.
    }
  },
};

export function language() {
  return document.documentElement.lang;
}

export function look() {
  return document.documentElement.dataset.look;
}

export function settleLook() {
  const spoken = (navigator.language || "en").slice(0, 2);
  apply(
    pick(LANGUAGES, keep.get("yc-language"), spoken),
    pick(LOOKS, keep.get("yc-look"), "auto"),
  );
}

export function chooseLanguage(lang) {
  keep.set("yc-language", lang);
  apply(lang, look());
}

export function chooseLook(name) {
  keep.set("yc-look", name);
  apply(language(), name);
}

/** Calls back after each change; returns the way to stop that. */
export function onLookChange(callback) {
  changed.add(callback);
  return () => changed.delete(callback);
}

function pick(allowed, ...wishes) {
  return wishes.find((wish) => allowed.includes(wish)) ?? allowed[0];
}

function apply(lang, name) {
  document.documentElement.lang = lang;
  document.documentElement.dataset.look = name;
  for (const callback of changed) callback();
}
