import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { act } from "../../parts/acts.js";
import { may, nameOf } from "../../parts/people-names.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { WhyPad } from "../../parts/why-pad.js";
import { clock, clockDay, count, plain } from "../../format.js";
import { has, inside, t, whyWords } from "../../messages/index.js";

const REASONS = ["maker_decides", "instrument_missing", "mistyped", "reading_off"];

/**
 * What the milk of a make is, in one line.
 *
 * @param {MilkView} milk
 */
export function milkLine(milk) {
  const { treatment } = milk.treatment;
  // Of milk that is what it was to be there is one thing to say.
  if (milk.is.class === treatment) return t("milk.short." + treatment) + ".";
  return t("milk.line", {
    treatment: inside(t("treatment." + treatment)),
    is: t("milk.is." + milk.is.class),
  });
}

/** @param {{milk: MilkView, nowMs: number}} props */
function Said({ milk, nowMs }) {
  const { said, was_changed: wasChanged } = milk.treatment;
  const values = { name: nameOf(said.by), at: clockDay(said.at_ms, nowMs) };
  return html`<p>${
    wasChanged
      ? t("milk.changed", { ...values, why: whyWords(said.why ?? "") })
      : t("milk.chosen", values)
  }</p>`;
}

/** @param {Following} by */
function byWords(by) {
  if (by.status === "memory") return t("milk.from_memory", { section: by.section });
  return by.section ? t("milk.by", { section: by.section }) : t("milk.own_word");
}

/** @param {{what: any, by: Following}} props */
function Wanted({ what, by }) {
  return html`<li>${what} <span class="quiet">${byWords(by)}</span></li>`;
}

/** @param {MilkFollows} follows */
function curingWords(follows) {
  if (follows.curing_days === null) return t("milk.no_curing");
  // As the rule prints them, each for itself: neither is worked out from the other.
  const { F: f, C: c } = follows.curing_min_temp ?? {};
  return t("milk.curing", { n: count(follows.curing_days), f: plain(f), c: plain(c) });
}

/** @param {{follows: MilkFollows | null}} props */
function Follows({ follows }) {
  if (!follows) return null;
  return html`<h2>${t("milk.follows")}</h2>
    <ul class="lines">
      <${Wanted} what=${curingWords(follows)} by=${follows.curing_by} />
      ${follows.tests.map(
        (test) => html`<${Wanted} key=${test.key} by=${test}
        what=${t("milk.test", { test: t("milk.test." + test.key), when: t("milk.when." + test.wanted) })} />`,
      )}
      <${Wanted} what=${t("milk.label", { words: t(follows.label.key) })} by=${follows.label} />
      <li>${t("milk.release", { role: t("role." + follows.release_role) })} <span class="quiet">${t("milk.own_word")}</span></li>
    </ul>
    <p class="quiet">${t("milk.decides")}</p>`;
}

/** @param {TreatmentChoice} other */
function detailOf({ treatment, problem, hold_ended_ms: endedMs }) {
  if (problem) return t("treat.refused." + problem.key, { at: clock(problem.limit) });
  const means = t("treat.means." + treatment);
  return endedMs === null ? means : `${means} ${t("treat.after_hold")}`;
}

/**
 * How the milk is treated, what it is by now and what follows; a maker may change it.
 *
 * @param {{make: string, shown: View, onBack: () => void}} props
 */
export function MilkSheet({ make, shown, onBack }) {
  const [wanted, setWanted] = useState(/** @type {TreatmentChoice | null} */ (null));
  const milk = shown.make.milk;
  if (!milk)
    return html`<${Sheet} title=${t("milk.title")} onBack=${onBack}><p class="lead">${t("make.loading")}</p></${Sheet}>`;
  if (wanted) {
    const name = t("treatment." + wanted.treatment);
    const done = async (/** @type {string} */ why) => {
      const data = { treatment: wanted.treatment, why };
      const said = t("said.treatment_changed", { treatment: name });
      if (await act("treatment_changed", { make, data }, said)) setWanted(null);
    };
    return html`<${WhyPad} title=${t("treat.to", { treatment: inside(name) })} lead=${detailOf(wanted)}
      reasons=${REASONS} doWord=${t("treat.to_do")} onDone=${done} onBack=${() => setWanted(null)}>
      <p>${t("treat.route")}</p></${WhyPad}>`;
  }
  const others =
    may("treatment_changed") && shown.make.is_open ? milk.treatment.others : [];
  const why = "milk.why." + milk.is.why;
  return html`<${Sheet} title=${t("milk.title")} onBack=${onBack} isReadOnly=${!others.length}>
    <p class="lead">${milkLine(milk)}</p>
    <p>${has(why) ? t(why) : ""}</p>
    <${Said} milk=${milk} nowMs=${shown.now_ms} />
    <${Follows} follows=${milk.follows} />
    ${
      others.length
        ? html`<h2>${t("treat.change")}</h2>
      <div class="rows">${others.map(
        (
          other,
        ) => html`<${Row} key=${other.treatment} disabled=${other.problem !== null}
        title=${t("treatment." + other.treatment)} detail=${detailOf(other)} onTap=${() => setWanted(other)} />`,
      )}</div>`
        : null
    }
  </${Sheet}>`;
}
