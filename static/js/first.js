// The first picture of who watches from elsewhere, over a thin link.
//
// The page is a hundred times as heavy as what the server says of the open makes.
// So this small script comes ahead of it, asks, and paints names, steps and how
// late they are; the page takes the same answer over when it has come.
//
// And where the page does not come at all: a file that is lost on a weak network fails
// in silence, and the app's name would stand there for ever.

import { age, clockDay, setReads, span } from "./format.js";
import { FIRST as EN_FIRST } from "./messages/en/first.js";
import { FIRST as ES_FIRST } from "./messages/es/first.js";
import { FIRST as FR_FIRST } from "./messages/fr/first.js";

const NOT_OPEN_MS = 20000; // longer than a slow phone on a thin link takes

// A dozen lines each: a language's whole pack would come after the page.
/** @type {Record<string, Record<string, string>>} */
const TEXTS = { en: EN_FIRST, es: ES_FIRST, fr: FR_FIRST };
const language = languageOf();
/** @type {Record<string, string>} */
let recipe = {}; // its own texts in this language, once they have come
/** @type {HTMLElement | null} */
let sheet = null;

function languageOf() {
  try {
    const shown = localStorage.getItem("language"); // data/reads.js keeps it
    if (shown && shown in TEXTS) return shown;
  } catch {
    // A browser that keeps nothing.
  }
  return (
    navigator.languages.map((tag) => tag.slice(0, 2)).find((tag) => tag in TEXTS) ??
    "en"
  );
}

/** @param {string} key @param {Record<string, string>} values */
function say(key, values = {}) {
  return TEXTS[language][key].replace(
    /\{(\w+)\}/g,
    (whole, name) => values[name] ?? whole,
  );
}

/**
 * @param {Element} parent
 * @param {string} tag
 * @param {string} text
 * @param {string} name
 */
function add(parent, tag, text = "", name = "") {
  const made = document.createElement(tag);
  made.textContent = text;
  made.className = name;
  parent.append(made);
  return made;
}

/** @param {Words} title */
function own(title) {
  return (
    title[language] ?? recipe[title.en] ?? title.en ?? Object.values(title)[0] ?? ""
  );
}

/** @param {TimeSpan} day @param {number} nowMs */
function endText({ expected_end_ms: endMs, late_s: lateS, state }, nowMs) {
  const end = say(endMs > nowMs ? "first.end" : "first.ended", {
    at: clockDay(endMs, nowMs),
  });
  return state === "late" ? say("first.end_late", { end, by: span(lateS) }) : end;
}

/** @param {Element} parent @param {MakeSummary} make @param {number} nowMs */
function card(parent, make, nowMs) {
  const made = add(parent, "article", "", "card live-card");
  const head = add(made, "header", "", "card-head");
  add(head, "b", make.name);
  add(head, "span", say("first.batch", { batch: make.batch }));
  const level = make.alerts.find((alert) => !alert.acknowledged)?.level ?? "ok";
  add(made, "b", say("first." + level));
  for (const step of make.running) {
    const title = own(step.title);
    const isLate = step.timing?.state === "late";
    add(
      made,
      "p",
      isLate ? say("first.late", { step: title, by: span(step.timing.by_s) }) : title,
    );
  }
  add(made, "p", endText(make.day, nowMs));
  if (make.last_word_ms) {
    add(made, "p", say("first.word", { age: age(nowMs - make.last_word_ms) }));
  }
}

/** The page's place, as long as the page itself is not there. */
function placeAhead() {
  const mine = sheet ?? document.querySelector("#app > .opening");
  // The page may have taken the element itself over.
  return mine?.isConnected && !mine.matches(".app") ? mine.parentElement : null;
}

/** @param {Picture | null} told */
function paint(told) {
  const root = placeAhead();
  if (!root || !told) return;
  root.replaceChildren();
  sheet = add(root, "div", "", "scroll");
  add(sheet, "h1", say("first.title"));
  add(sheet, "p", say("first.as_of", { at: clockDay(told.now_ms, told.now_ms) }));
  const cards = add(sheet, "div", "", "cards");
  for (const make of told.makes) card(cards, make, told.now_ms);
}

/** @returns {Promise<Picture | null>} */
async function ask() {
  const answer = await fetch("/api/v1/makes?open=true", {
    cache: "no-store",
    headers: { Accept: "application/json" },
  });
  return answer.ok ? answer.json() : null;
}

// The page needs the same file, and a phone that was here before has it already.
async function learnRecipe() {
  const isPacked = import.meta.url.includes("/lib/");
  const file = isPacked
    ? `/lib/lang-${language}.js`
    : `/js/messages/${language}/index.js`;
  recipe = (await import(file)).RECIPE;
}

function offerAgain() {
  const root = placeAhead();
  if (!root) return;
  const place = sheet ?? add(root, "div", "", "scroll narrow");
  add(place, "p", say("first.not_open"), "lead").setAttribute("role", "alert");
  add(place, "button", say("first.again"), "tap second").onclick = () =>
    location.reload();
}

setTimeout(offerAgain, NOT_OPEN_MS);
if (location.hash.startsWith("#/live")) {
  setReads({ language });
  document.documentElement.lang = language;
  const asked = ask().catch(() => null);
  globalThis.vatsidePicture = asked; // data/live.js takes it over, once
  asked.then(paint);
  if (language !== "en")
    learnRecipe().then(
      () => asked.then(paint),
      () => {},
    );
}
