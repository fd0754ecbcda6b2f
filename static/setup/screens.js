// The screens of the set-up page. Each returns its title, what it says, and the
// buttons at the foot.

import { el } from "./dom.js";
import { mark } from "./mark.js";
import { corner, file, question, rows, search, switched } from "./pictures.js";
import { t } from "./texts.js";

/** @import { Child } from "./dom.js" */
/** @import { Device, Facts, Known, Probe, Screen } from "./state.js" */
/**
 * What a screen is painted from; the server has answered where a screen reads it.
 *
 * @typedef {Known & {facts: Facts, probes: Probe[], hasAsked: boolean,
 *     isWrongBrowser: boolean, next: string}} Told
 */
/**
 * @typedef {object} Acts
 * @property {(device: Device) => void} pick
 * @property {() => void} forward
 * @property {() => void} back
 * @property {() => void} skipClock
 * @property {() => void} again
 */
/** @typedef {{title: string, body: Child[], foot?: Child[]}} Shown */

/**
 * @param {string} key
 * @param {string} [name]
 */
function text(key, name) {
  return el("p", { class: name || null }, t(key));
}

/**
 * @param {string} key
 * @param {() => void} onclick
 * @param {string} [name]
 */
function button(key, onclick, name) {
  return el("button", { type: "button", class: name || "second", onclick }, t(key));
}

/** @param {[string, ((label: string) => Node)?][]} rows */
function steps(rows) {
  const items = rows.map(([key, picture]) =>
    el("li", {}, text(key), picture && picture(t(key))),
  );
  return el("ol", { class: "steps" }, ...items);
}

/**
 * @param {string} key
 * @param {string[]} keys
 */
function more(key, ...keys) {
  return el("details", {}, el("summary", {}, t(key)), ...keys.map((one) => text(one)));
}

/** @param {Told} known */
function notYet(known) {
  return known.hasAsked && el("p", { class: "notice", role: "alert" }, t("notyet"));
}

/** @param {Told} known */
function wrongBrowser(known) {
  return known.isWrongBrowser && text("page.browser_" + known.device, "notice");
}

// Eight signs of two in a row: two people can read them to each other.
/** @param {string} value */
function fingerprint(value) {
  const pairs = value.split(":");
  const lines = [0, 8, 16, 24].map((from) =>
    el("span", {}, pairs.slice(from, from + 8).join(" ")),
  );
  return el("p", { class: "signs" }, ...lines);
}

/** @param {Device | null} device */
function about(device) {
  const keys = ["about.what", "about.limit", "about.key"];
  if (device === "android") keys.push("about.notice_android");
  return more("about.title", ...keys, "about.remove_" + device);
}

/**
 * @param {Told} known
 * @param {Acts} acts
 * @returns {Shown}
 */
function take(known, acts) {
  const isIphone = known.device === "iphone";
  return {
    title: t("take." + known.device),
    body: [
      wrongBrowser(known),
      text("take.only"),
      fingerprint(known.facts.fingerprint),
      text("take.differ"),
      isIphone && text("take.allow"),
      isIphone && question(t("take.allow"), t("take.allow_button")),
      about(known.device),
    ],
    foot: [
      button("take.have", acts.forward),
      // The download goes on while the page shows what comes next.
      el(
        "a",
        {
          class: "primary",
          href: isIphone ? "/root.mobileconfig" : "/root.crt",
          onclick: () => setTimeout(acts.forward, 300),
        },
        t("take.go"),
      ),
    ],
  };
}

/**
 * @param {Told} known
 * @param {Acts} acts
 * @returns {Shown}
 */
function install(known, acts) {
  return {
    title: t("android.title"),
    body: [
      notYet(known),
      steps([
        ["android.search", (label) => search(label, t("android.search_typed"))],
        ["android.found", (label) => rows(label, t("android.search_typed"))],
        [
          "android.anyway",
          (label) =>
            question(label, t("android.anyway_button"), {
              isWarning: true,
              other: t("android.cancel_button"),
            }),
        ],
        ["android.file", (label) => file(label, "vatside-root.crt")],
        ["android.back"],
      ]),
      text("android.other_way"),
    ],
    foot: [button("page.back", acts.back), button("page.again", acts.again, "primary")],
  };
}

/**
 * @param {Told} known
 * @param {Acts} acts
 * @returns {Shown}
 */
function profile(known, acts) {
  return {
    title: t("iphone.title"),
    body: [
      steps([
        ["iphone.settings", (label) => rows(label, t("iphone.settings_row"))],
        ["iphone.install", (label) => corner(label, t("iphone.install_button"))],
      ]),
      text("iphone.no_row"),
    ],
    foot: [
      button("page.back", acts.back),
      button("iphone.done", acts.forward, "primary"),
    ],
  };
}

/**
 * @param {Told} known
 * @param {Acts} acts
 * @returns {Shown}
 */
function trust(known, acts) {
  return {
    title: t("trust.title"),
    body: [
      notYet(known),
      steps([
        [
          "trust.about",
          (label) => rows(label, t("trust.about_row"), { before: 2, after: 0 }),
        ],
        ["trust.switch", (label) => switched(label, "Vatside")],
        ["trust.back"],
      ]),
    ],
    foot: [button("page.back", acts.back), button("page.again", acts.again, "primary")],
  };
}

/**
 * @param {Told} known
 * @param {Acts} acts
 * @returns {Shown}
 */
function which(known, acts) {
  return {
    title: t("which.title"),
    body: [
      text("which.lead"),
      button("page.iphone", () => acts.pick("iphone"), "primary"),
      button("page.android", () => acts.pick("android"), "primary"),
      el(
        "details",
        {},
        el("summary", {}, t("which.computer")),
        text("which.computer_how"),
        fingerprint(known.facts.fingerprint),
        text("take.only"),
        el("p", {}, el("a", { href: "/root.crt" }, "vatside-root.crt")),
        button("page.again", acts.again),
      ),
    ],
  };
}

/** @param {number} ms */
function clockTime(ms) {
  return new Date(ms).toLocaleString(document.documentElement.lang, {
    dateStyle: "medium",
    timeStyle: "short",
  });
}

/**
 * @param {Told} known
 * @param {Acts} acts
 * @returns {Shown}
 */
function clock(known, acts) {
  const phone = Date.now();
  const row = (/** @type {string} */ key, /** @type {number} */ ms) =>
    el("p", { class: "pair" }, el("span", {}, t(key)), el("b", {}, clockTime(ms)));
  return {
    title: t("clock.title"),
    body: [
      row("clock.phone", phone),
      row("clock.server", phone - known.offMs),
      text("clock.why"),
      ...(known.device ? [known.device] : ["android", "iphone"]).map((one) =>
        text("clock.how_" + one),
      ),
      text("clock.other"),
    ],
    foot: [
      button("clock.skip", acts.skipClock),
      button("page.again", acts.again, "primary"),
    ],
  };
}

/**
 * @param {Told} known
 * @param {Acts} acts
 * @returns {Shown}
 */
function lost(known, acts) {
  return {
    title: t("lost.title"),
    body: [
      text("lost.lead"),
      el(
        "ul",
        {},
        ...known.probes.map((one) => el("li", { class: "address" }, one.url)),
      ),
      text("lost.wifi"),
      known.device !== "iphone" && text("lost.dns"),
      text("lost.ask"),
    ],
    foot: [button("page.again", acts.again, "primary")],
  };
}

/**
 * @param {Told} known
 * @param {Acts} acts
 * @returns {Shown}
 */
function silent(known, acts) {
  return {
    title: t("silent.title"),
    body: [text("silent.wifi"), text("silent.server")],
    foot: [button("page.again", acts.again, "primary")],
  };
}

/**
 * @param {Told} known
 * @returns {Shown}
 */
function open(known) {
  return {
    title: t("open.title"),
    body: [
      el("p", {}, mark("good")),
      text(known.step > 0 ? "open.going" : "open.lead"),
      el("p", { class: "address" }, known.next.split("/setup?")[0]),
    ],
    foot: [el("a", { class: "primary", href: known.next }, t("open.go"))],
  };
}

function asking() {
  return { title: t("asking.title"), body: [text("asking.lead")] };
}

/**
 * By the names of `screenOf`.
 *
 * @type {Record<Screen, (known: Told, acts: Acts) => Shown>}
 */
export const SCREENS = {
  asking,
  silent,
  clock,
  lost,
  which,
  take,
  install,
  profile,
  trust,
  open,
};
