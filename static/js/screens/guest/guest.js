// What a buyer or vet sees through a link: some makes, read only, from the server.
// This page keeps nothing and has no part in the exchange.

import { useEffect, useState } from "preact/hooks";
import { Facts } from "../../parts/facts.js";
import { html } from "../../parts/html.js";
import { dayEndWords } from "../../parts/day-end.js";
import { alertText } from "../../parts/alert-line.js";
import { BrokenLines } from "../../parts/broken-lines.js";
import { StateMark } from "../../parts/state-mark.js";
import { LanguagePick } from "../../parts/language-pick.js";
import { PracticeMark } from "../../parts/practice-mark.js";
import { Tap } from "../../parts/tap.js";
import { whyOf } from "../../parts/acts.js";
import { get, post } from "../../parts/source.js";
import { clockDay } from "../../format.js";
import { own, t, tFirst } from "../../messages/index.js";
import { go, swap } from "../../router.js";
import { GuestMake } from "./guest-make.js";

const AGAIN_MS = 60000;

/**
 * Problem now, and each minute while the page is looked at.
 *
 * @param {() => Promise<any>} ask
 * @param {any[]} deps
 * @returns {{value: any, problem: string}}
 */
function useFresh(ask, deps) {
  const [state, setState] = useState({ value: null, problem: "" });
  useEffect(() => {
    let isCurrent = true;
    const run = () =>
      ask().then(
        (value) => isCurrent && setState({ value, problem: "" }),
        (failure) =>
          isCurrent &&
          setState((last) => ({
            // A lost network leaves what was shown; an ended link leaves nothing.
            value: failure.status ? null : last.value,
            problem: whyOf(failure),
          })),
      );
    run();
    const timer = setInterval(
      () => document.visibilityState === "visible" && run(),
      AGAIN_MS,
    );
    return () => {
      isCurrent = false;
      clearInterval(timer);
    };
  }, deps);
  return state;
}

/** @param {string} id */
async function askMake(id) {
  const [view, record, curve] = await Promise.all(
    ["view", "record", "curve"].map((part) => get(`/guest/makes/${id}/${part}`)),
  );
  return { view, record, curve };
}

/** @param {{words: string}} props */
function Problem({ words }) {
  return words ? html`<p class="lead is-bad" role="alert">${words}</p>` : null;
}

/** @param {{make: MakeSummary, nowMs: number}} props */
function Card({ make, nowMs }) {
  const steps = make.running;
  return html`<${Tap} class="card" onTap=${() => go("guest", "make", make.id)}>
    <span class="card-head"><b class="card-name">${make.name}</b> <${PracticeMark} of=${make} /></span>
    <${Facts} isInKey rows=${[
      [t("fact.batch"), make.batch],
      [t("fact.recipe"), own(make.recipe_title)],
      [t("fact.state"), t("make_state.short_" + make.state)],
    ]} />
    ${steps.map((step) => html`<span class="card-step" key=${step.key}>${own(step.title)}${step.task ? html`<span class="row-detail">${t("task.by", { name: tFirst(["role." + step.task.by, "guest.no_role"]) })}</span>` : null}</span>`)}
    ${make.alerts.slice(0, 3).map((alert) => html`<span class="card-state" key=${alert.id}><${StateMark} state=${alert.level} /> ${alertText(alert, steps)}</span>`)}
    <span>${dayEndWords(make.day, nowMs)}</span>
  </${Tap}>`;
}

function Makes() {
  const { value, problem } = useFresh(() => get("/guest"), []);
  return html`<div class="sheet"><div class="scroll">
    <h1>${value ? t("guest.title", { name: value.name }) : "Vatside"}</h1>
    <${Problem} words=${problem} />
    <${LanguagePick} />
    ${
      value
        ? html`<p>${t("guest.until", { at: clockDay(value.until_ms, value.now_ms) })} ${t("guest.roles")}</p>
      <${BrokenLines} rows=${value.broken} nowMs=${value.now_ms} />
      <div class="cards">${value.makes.map((/** @type {MakeSummary} */ make) => html`<${Card} key=${make.id} make=${make} nowMs=${value.now_ms} />`)}</div>`
        : null
    }
  </div></div>`;
}

/** @param {{id: string}} props */
function Make({ id }) {
  const { value, problem } = useFresh(() => askMake(id), [id]);
  return html`<div class="sheet">
    <div class="sheet-head"><${Tap} class="back" onTap=${() => go("guest")}>‹ ${t("word.back")}</${Tap}></div>
    <div class="scroll"><${Problem} words=${problem} />${value ? html`<${GuestMake} ...${value} />` : problem ? null : html`<p class="lead">${t("guest.loading")}</p>`}</div>
  </div>`;
}

/** @param {{token: string}} props */
function Entry({ token }) {
  const [problem, setProblem] = useState("");
  useEffect(() => {
    // The secret leaves the address at once: it must not stay in sight or be sent on.
    post("/guest", { token }).then(
      () => swap("guest"),
      (failure) => setProblem(whyOf(failure)),
    );
  }, [token]);
  return html`<div class="sheet"><div class="scroll"><h1>Vatside</h1>
    ${problem ? html`<${Problem} words=${problem} />` : html`<p class="lead">${t("guest.loading")}</p>`}</div></div>`;
}

/**
 * The page behind a read-only link: its secret first, then makes, then one make.
 *
 * @param {{rest: string[]}} props
 */
export function GuestScreen({ rest: [first, id] }) {
  if (first === "make" && id) return html`<${Make} key=${id} id=${id} />`;
  if (first) return html`<${Entry} token=${first} />`;
  return html`<${Makes} />`;
}
