// What the set-up page shows for what it found, and its texts in three languages.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";

import { faultOf, isOwnersCode } from "../../static/js/data/join-faults.js";
import { alarmsOf, needsOf } from "../../static/setup/needs.js";
import { askFacts, probe } from "../../static/setup/probe.js";
import {
  CLOCK_OFF_MS,
  codeOf,
  deviceOf,
  isWrongBrowser,
  nextAddress,
  screenOf,
  trustedOf,
} from "../../static/setup/state.js";
import { languageOf } from "../../static/setup/texts.js";
import { TEXTS as en } from "../../static/setup/texts-en.js";
import { TEXTS as es } from "../../static/setup/texts-es.js";
import { TEXTS as fr } from "../../static/setup/texts-fr.js";

const FOLDER = new URL("../../static/setup/", import.meta.url);
const NAME = "https://vat.home.arpa:8443";
const NUMBER = "https://192.168.7.20:8443";
const known = {
  facts: { fingerprint: "AA:BB", secure_urls: [NAME, NUMBER] },
  probes: [
    { url: NAME, is: "unreachable" },
    { url: NUMBER, is: "untrusted" },
  ],
  offMs: 0,
  isClockSkipped: false,
  device: "android",
  step: 0,
};
const TRUSTED = {
  probes: [
    { url: NAME, is: "unreachable" },
    { url: NUMBER, is: "trusted" },
  ],
};
const LOST = {
  probes: [
    { url: NAME, is: "unreachable" },
    { url: NUMBER, is: "unreachable" },
  ],
};
const OFF = { offMs: -CLOCK_OFF_MS - 1 };

const SCREENS = [
  ["nothing is known yet", { facts: null, probes: null }, "asking"],
  ["the addresses are still being asked", { probes: null }, "asking"],
  ["the server did not answer", { facts: false }, "silent"],
  [
    "the server fell silent after it had answered",
    { ...TRUSTED, facts: false },
    "silent",
  ],
  ["one address is trusted", TRUSTED, "open"],
  ["an address is trusted though the clock is off", { ...TRUSTED, ...OFF }, "open"],
  ["no address is found", LOST, "lost"],
  ["the clock is off and no address answers", { ...LOST, ...OFF }, "clock"],
  ["the clock is behind", OFF, "clock"],
  ["the clock is ahead", { offMs: CLOCK_OFF_MS + 1 }, "clock"],
  ["the clock is off by as much as is let be", { offMs: CLOCK_OFF_MS }, "take"],
  ["the clock is off and the person goes on", { ...OFF, isClockSkipped: true }, "take"],
  ["the phone is not known", { device: null }, "which"],
  ["an Android phone begins", {}, "take"],
  ["an Android phone has the certificate", { step: 1 }, "install"],
  ["an Android phone has no third step", { step: 5 }, "install"],
  ["an iPhone has the profile", { device: "iphone", step: 1 }, "profile"],
  ["an iPhone has installed it", { device: "iphone", step: 2 }, "trust"],
];

for (const [when, change, screen] of SCREENS) {
  test(`the screen is "${screen}" when ${when}`, () => {
    assert.equal(screenOf({ ...known, ...change }), screen);
  });
}

test("the first address that is trusted is gone on with", () => {
  assert.equal(trustedOf(TRUSTED.probes), NUMBER);
  assert.equal(trustedOf(LOST.probes), null);
});

test("the code goes on behind the #, which is sent to nobody", () => {
  assert.equal(
    nextAddress(NAME + "/", "es", "#K7QM-3XHD"),
    NAME + "/setup?lang=es#K7QM-3XHD",
  );
  assert.equal(new URL(nextAddress(NAME, "fr", "#K7QM")).search, "?lang=fr");
});

test("the code is read from its own address and from the app's", () => {
  assert.equal(codeOf("#K7QM-3XHD"), "K7QM-3XHD");
  assert.equal(codeOf("#/pair/K7QM-3XHD"), "K7QM-3XHD");
  assert.equal(codeOf("#K7QM%203XHD"), "K7QM 3XHD");
  assert.equal(codeOf("#100%"), "100%");
  assert.equal(codeOf(""), "");
});

// A fetch that answers for the addresses that begin as listed, and never for "slow".
function fetchOf(...answering) {
  return (address) => {
    if (address.includes("slow")) return new Promise(() => {});
    const isThere = answering.some((one) => address.startsWith(one));
    return isThere
      ? Promise.resolve({ ok: true, json: async () => ({ now_ms: 5 }) })
      : Promise.reject(new TypeError("failed"));
  };
}

const PROBES = [
  ["trusted", NAME, [NAME, "http://vat.home.arpa:8080"]],
  ["trusted", NAME, [NAME]],
  ["untrusted", NAME, ["http://vat.home.arpa:8080"]],
  ["unreachable", NAME, ["http://192.168.7.20:8080"]],
  ["unreachable", "https://slow.home.arpa", []],
];

for (const [is, url, answering] of PROBES) {
  test(`${url} is ${is} when ${answering.join(" and ") || "nothing"} answers`, async () => {
    assert.deepEqual(await probe(fetchOf(...answering), url, "8080", 20), { url, is });
  });
}

test("a server that gives no facts, or none in time, is told apart from one that does", async () => {
  assert.deepEqual(await askFacts(fetchOf("/facts.json"), 20), { now_ms: 5 });
  assert.equal(await askFacts(fetchOf(), 20), false);
  assert.equal(await askFacts(() => new Promise(() => {}), 20), false);
  assert.equal(await askFacts(async () => ({ ok: false }), 20), false);
});

const IPHONE =
  "Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X) AppleWebKit/605 Safari/604.1";
const IPAD =
  "Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/605 Safari/605";
const ANDROID =
  "Mozilla/5.0 (Linux; Android 14; Pixel 7) AppleWebKit/537.36 Chrome/130 Mobile Safari/537.36";

test("a phone is guessed from what its browser says", () => {
  assert.equal(deviceOf(IPHONE, 5), "iphone");
  assert.equal(deviceOf(IPAD, 5), "iphone");
  assert.equal(deviceOf(IPAD, 0), null);
  assert.equal(deviceOf(ANDROID, 5), "android");
});

test("a browser that cannot take the certificate is told", () => {
  assert.equal(isWrongBrowser(IPHONE, "iphone"), false);
  assert.equal(
    isWrongBrowser(IPHONE.replace("Safari", "CriOS/130 Safari"), "iphone"),
    true,
  );
  assert.equal(isWrongBrowser(ANDROID, "android"), false);
  assert.equal(
    isWrongBrowser("Mozilla/5.0 (Android 14; Mobile) Gecko/130 Firefox/130", "android"),
    true,
  );
});

test("the language asked for goes before the browser's, and English is the last", () => {
  assert.equal(languageOf("?lang=fr", ["es-ES"]), "fr");
  assert.equal(languageOf("?lang=xx", ["de-DE", "es-ES"]), "es");
  assert.equal(languageOf("", ["FR-ca"]), "fr");
  assert.equal(languageOf("", ["de"]), "en");
  assert.equal(languageOf("?lang=constructor", ["toString"]), "en");
});

const ready = {
  isSecure: true,
  worker: "good",
  kept: true,
  sound: "heard",
  offMs: 900,
  alarms: "good",
};

function needOf(key, change) {
  return needsOf({ ...ready, ...change }).find((one) => one.key === key);
}

test("a phone that has all it needs is good in each line", () => {
  assert.deepEqual(
    needsOf(ready).map((one) => one.state),
    Array(6).fill("good"),
  );
});

const NEEDS = [
  ["secure", { isSecure: false }, "bad", "secure.bad"],
  ["worker", { worker: "wait" }, "wait", "worker.wait"],
  ["worker", { worker: "bad" }, "bad", "worker.bad"],
  ["kept", { kept: null }, "wait", "kept.wait"],
  ["kept", { kept: false }, "bad", "kept.bad"],
  ["sound", { sound: "try" }, "try", "sound.try"],
  ["sound", { sound: "asked" }, "try", "sound.asked"],
  ["sound", { sound: "unheard" }, "bad", "sound.bad"],
  ["sound", { sound: "none" }, "bad", "sound.none"],
  ["clock", { offMs: null }, "wait", "clock.wait"],
  ["clock", { offMs: undefined }, "bad", "clock.unknown"],
  ["clock", { offMs: -600000 }, "bad", "clock.bad"],
  ["alarms", { alarms: "not_installed" }, "bad", "alarms.not_installed"],
  ["alarms", { alarms: "denied" }, "bad", "alarms.denied"],
  ["alarms", { alarms: "none" }, "bad", "alarms.none"],
];

for (const [key, change, state, says] of NEEDS) {
  test(`${key} is ${state} and says ${says} for ${JSON.stringify(change)}`, () => {
    const told = needOf(key, change);
    assert.deepEqual([told.state, told.says], [state, says]);
    for (const texts of [en, es, fr]) assert.ok(texts[says] && texts["state." + state]);
  });
}

test("a clock that is off is told in minutes", () => {
  assert.deepEqual(needOf("clock", { offMs: -600000 }).values, { minutes: 10 });
});

test("alarms reach an iPhone on the home screen alone", () => {
  assert.equal(
    alarmsOf({ isIphoneTab: true, hasPush: true, permission: "granted" }),
    "not_installed",
  );
  assert.equal(
    alarmsOf({ isIphoneTab: false, hasPush: true, permission: "default" }),
    "good",
  );
  assert.equal(
    alarmsOf({ isIphoneTab: false, hasPush: true, permission: "denied" }),
    "denied",
  );
  assert.equal(alarmsOf({ isIphoneTab: false, hasPush: false }), "none");
});

test("the owner's code is known by its length, however it is typed", () => {
  assert.ok(isOwnersCode("K7QM-3XHD-K7QM-3XHD"));
  assert.ok(isOwnersCode("k7qm 3xhd k7qm 3xhd"));
  assert.ok(!isOwnersCode("K7QM-3XHD"));
});

test("what the server refuses is said beside the field that it names", () => {
  assert.deepEqual(faultOf({ key: "missing", field: "person_name" }), {
    field: "name",
    says: "error.person_missing",
    values: {},
  });
  assert.equal(faultOf({ key: "wrong_code", field: "code" }).says, "error.wrong_code");
  const late = faultOf({ key: "too_many_tries", field: "code", limit: 30 });
  assert.deepEqual(
    [late.field, late.says, late.values.seconds],
    ["code", "error.too_many_tries", 30],
  );
  assert.deepEqual(
    faultOf({ key: "unreachable", field: null }).says,
    "error.unreachable",
  );
  assert.deepEqual(faultOf({ key: "something_new", field: null }).says, "error.other");
});

const names = (text) => (text.match(/\{\w+\}/g) ?? []).sort();
// Alike in both languages.
const SAME = { es: [], fr: [] };

for (const [code, texts] of Object.entries({ es, fr })) {
  test(`${code} has every text of the set-up pages and no other`, () => {
    assert.deepEqual(Object.keys(texts).sort(), Object.keys(en).sort());
  });

  test(`${code} fills the same figures into each text of the set-up pages`, () => {
    assert.deepEqual(
      Object.keys(en).filter(
        (key) => String(names(texts[key])) !== String(names(en[key])),
      ),
      [],
    );
  });

  test(`${code} says nothing on the set-up pages in English, and leaves nothing empty`, () => {
    const left = Object.keys(en).filter(
      (key) =>
        !texts[key].trim() || (texts[key] === en[key] && !SAME[code].includes(key)),
    );
    assert.deepEqual(left, ["page.android", "join.iphone"]); // one name everywhere
  });
}

const MODULES = readdirSync(FOLDER).filter(
  (name) => name.endsWith(".js") && !name.startsWith("texts-"),
);
const FAULTS = readFileSync(new URL("../js/data/join-faults.js", FOLDER), "utf8");
const CODE =
  FAULTS +
  MODULES.map((name) => readFileSync(new URL(name, FOLDER), "utf8")).join("\n");

test("each text of the set-up pages is asked for, and each one asked for is there", () => {
  const asked = [...CODE.matchAll(/["']([a-z]+(?:\.[a-z_]+)?)["']/g)].map(
    (match) => match[1],
  );
  const begun = [...CODE.matchAll(/["']([a-z]+[._][a-z]*[._]?)["'] \+/g)].map(
    (match) => match[1],
  );
  const isAsked = (key) =>
    asked.includes(key) || begun.some((start) => key.startsWith(start));
  assert.deepEqual(
    Object.keys(en).filter((key) => !isAsked(key)),
    [],
  );
  const called = [...CODE.matchAll(/\b(?:t|text|button|more)\("([a-z_.]+)"[,)]/g)].map(
    (match) => match[1],
  );
  assert.ok(called.length > 30);
  assert.deepEqual(
    called.filter((key) => !(key in en)),
    [],
  );
});

// Such a browser reads the whole module or nothing of it. The self-check is for
// browsers that run the app.
const OLD = [
  "dom",
  "mark",
  "pictures",
  "plain",
  "probe",
  "screens",
  "state",
  "texts",
  "texts-en",
  "texts-es",
  "texts-fr",
];

test("the page on plain http is written for old browsers", () => {
  for (const name of OLD) {
    const code = readFileSync(new URL(name + ".js", FOLDER), "utf8");
    assert.doesNotMatch(
      code,
      /\?\.[a-z[(]|\?\?|\.at\(|replaceChildren|structuredClone|AbortSignal\.timeout|^await /m,
      name,
    );
  }
});
