// The self-check at the secure address: what this phone can do, then the way in.

import { get } from "/js/data/api.js";
import { el, languagePick, show } from "./dom.js";
import { fieldsOf, join, newForm } from "./join-form.js";
import {
  isIphoneTab,
  lookAtAlarms,
  lookAtClock,
  lookAtKept,
  lookAtWorker,
  playTone,
} from "./measure.js";
import { mark } from "./mark.js";
import { needsOf } from "./needs.js";
import { home, share } from "./pictures.js";
import { codeOf, deviceOf } from "./state.js";
import { language, languageOf, setLanguage, t } from "./texts.js";

/** @import { Seen } from "./needs.js" */
/** @import { Form } from "./join-form.js" */
/** @import { Language } from "./texts.js" */

/** @type {Seen} */
const seen = {
  isSecure: globalThis.isSecureContext,
  worker: "wait",
  kept: null,
  sound: "try",
  offMs: null,
  alarms: lookAtAlarms(),
};
/** @type {{joined: {name: string} | null, isHere: boolean, isCopied: boolean}} */
const known = { joined: null, isHere: !isIphoneTab, isCopied: false };
/** @type {Form} */
let form;

/**
 * @param {string} key
 * @param {() => void} onclick
 * @param {string} [name]
 */
function button(key, onclick, name) {
  return el("button", { type: "button", class: name || "second", onclick }, t(key));
}

function soundButtons() {
  if (seen.sound === "none" || seen.sound === "heard") return null;
  if (seen.sound !== "asked")
    return el("div", { class: "answers" }, button("sound.play", play));
  const say = (/** @type {Seen["sound"]} */ sound) => () => see({ sound });
  return el(
    "div",
    { class: "answers" },
    button("sound.yes", say("heard")),
    button("sound.no", say("unheard")),
  );
}

function play() {
  see({ sound: playTone() ? "asked" : "none" });
}

/** @param {ReturnType<typeof needsOf>[number]} need */
function needRow({ key, state, says, values }) {
  return el(
    "li",
    { "data-need": key, "data-state": state },
    el("div", { class: "need" }, el("b", {}, t(key)), mark(state)),
    el("p", {}, t(says, values)),
    key === "sound" && soundButtons(),
  );
}

/** @param {string} id of an element that is there */
function at(id) {
  return /** @type {HTMLElement} */ (document.getElementById(id));
}

// The list is painted alone: what is being typed below it stays as it is.
function paintNeeds() {
  const needs = needsOf(seen);
  const isAll = needs.every((one) => one.state === "good");
  show(at("needs"), needs.map(needRow));
  show(at("verdict"), [
    el("p", { class: "lead" }, t(isAll ? "check.all_good" : "check.not_all")),
  ]);
}

/** @param {Partial<Seen>} more */
function see(more) {
  Object.assign(seen, more);
  paintNeeds();
}

async function copyCode() {
  await navigator.clipboard.writeText(form.code);
  known.isCopied = true;
  paint();
}

// An iPhone's home-screen app keeps its data apart from the browser's.
function homeGuide() {
  const step = (/** @type {string} */ key, /** @type {Node} */ picture) =>
    el("li", {}, el("p", {}, t(key)), picture);
  return [
    el("h2", {}, t("home.title")),
    el("p", {}, t("home.why")),
    el(
      "ol",
      { class: "steps" },
      step("home.share", share(t("home.share"), "")),
      step("home.add", home(t("home.add"), t("home.add_row"))),
      step(
        "home.open",
        form.code
          ? el("p", { class: "code" }, form.code)
          : el("p", {}, t("home.ask_code")),
      ),
    ),
    button("home.here", () => {
      known.isHere = true;
      paint();
    }),
  ];
}

function wayIn() {
  if (known.joined)
    return [
      el("h2", {}, t("joined.title")),
      el("p", {}, t("joined.as", { name: known.joined.name })),
    ];
  if (!known.isHere) return homeGuide();
  return [el("h2", {}, t("join.title")), ...fieldsOf(form)];
}

function footOf() {
  if (known.joined)
    return el("a", { class: "primary", href: "/#/now" }, t("joined.go"));
  if (!known.isHere)
    return (
      form.code &&
      button(known.isCopied ? "home.copied" : "home.copy", copyCode, "primary")
    );
  return button(form.isBusy ? "join.joining" : "join.go", goIn, "primary");
}

async function goIn() {
  // The code stands in the address: once used, it is not to be gone back to.
  if (await join(form, paint)) location.replace("/#/now");
}

/** @param {Language} code */
function pickLanguage(code) {
  setLanguage(code);
  keepLanguage();
  paint();
}

function keepLanguage() {
  try {
    localStorage.setItem("language", language()); // js/data/reads.js reads it
  } catch {
    // A browser that keeps nothing; the list says so.
  }
}

function paint() {
  const foot = footOf();
  document.title = "Vatside: " + t("check.title");
  show(at("app"), [
    el("header", { class: "head" }, languagePick(pickLanguage)),
    el(
      "main",
      { class: "main" },
      el("h1", {}, t("check.title")),
      el("div", { id: "verdict" }),
      el("ul", { class: "needs", id: "needs" }),
      ...wayIn(),
    ),
    foot && el("footer", { class: "foot" }, foot),
  ]);
  paintNeeds();
}

function begin() {
  const device = deviceOf(navigator.userAgent, navigator.maxTouchPoints);
  let kept = "";
  try {
    kept = localStorage.getItem("language") || "";
  } catch {
    // As above.
  }
  setLanguage(languageOf(location.search, [kept, ...navigator.languages]));
  keepLanguage();
  form = newForm(
    codeOf(location.hash),
    t(device === "iphone" ? "join.iphone" : "join.android"),
  );
  paint();
  lookAtWorker((worker) => see({ worker })).catch(() => see({ worker: "bad" }));
  lookAtKept((is) => see({ kept: is }));
  lookAtClock((offMs) => see({ offMs }));
  get("/me").then(
    ({ person }) => {
      known.joined = person;
      paint();
    },
    () => {},
  );
}

begin();
