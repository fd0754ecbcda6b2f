import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { TextField } from "../../parts/text-field.js";
import { may } from "../../parts/people-names.js";
import {
  clockDay,
  count,
  day,
  number,
  plain,
  quantity,
  sumValue,
} from "../../format.js";
import { board, nowMs } from "../../parts/source.js";
import { inside, own, t } from "../../messages/index.js";
import { go, swap } from "../../router.js";
import { LAB, LAB_MAKE } from "../make/lab-sheet.js";
import { ReadingSheet } from "../make/reading-sheet.js";
import { SumLines, StepSumSheet, namesOf, useStepSums } from "../make/step-sums.js";
import { noteWords } from "../sums/notes.js";
import { ageingMakes, useAgeing, useAgeingOf } from "./asked.js";

/** @import { Ageing } from "./asked.js" */

/**
 * @param {Answer | undefined} answer
 * @param {string} name
 */
function valueOf(answer, name) {
  return answer?.values.find((figure) => figure.name === name) ?? null;
}

/** @param {View} view */
function sizesOf(view) {
  return Object.fromEntries(
    view.make.moulds.map((mould) => [mould.size, own(mould.title)]),
  );
}

/**
 * How far the days of one make have come that count, in words.
 *
 * @param {Answer[]} sums
 */
export function curingWords(sums) {
  const answer = sums.find((sum) => sum.key === "curing_days");
  if (valueOf(answer, "verdict")?.value === "not_asked") return [t("store.not_asked")];
  const counted = valueOf(answer, "counted_days");
  if (!counted) return [t("store.counted_none")];
  const cold = valueOf(answer, "below_days");
  const unknown = valueOf(answer, "unknown_days");
  const first = valueOf(answer, "first_met_ms");
  return [
    t("store.counted", {
      counted: number(counted.value, 1),
      needed: plain(counted.low),
    }),
    cold && cold.value > 0 ? t("store.cold", { n: number(cold.value, 1) }) : "",
    unknown && unknown.value > 0
      ? t("store.unknown", { n: number(unknown.value, 1) })
      : "",
    first ? t("store.first_day", { day: day(first.value) }) : "",
  ].filter(Boolean);
}

/**
 * @param {Answer[]} sums
 * @param {Record<string, string>} sizes
 */
function lostWords(sums, sizes) {
  return sums
    .filter((answer) => answer.key === "weight_loss" && answer.values.length)
    .map((answer) => {
      const lost = sumValue(valueOf(answer, "loss_frac")?.value, "fraction");
      const size = sizes[answer.of ?? ""];
      return `${size ? inside(size) + " " : ""}${t("store.lost", { value: lost })}`;
    });
}

/** @param {Step} step */
function lastWords(step) {
  const last = (/** @type {string} */ name) =>
    step.readings?.find((reading) => reading.quantity === name)?.last ??
    step.targets?.find((target) => target.quantity === name)?.last;
  const temp = last("store_temp_c");
  const humidity = last("store_humidity_frac");
  return [
    temp ? t("store.temp_last", { value: quantity("store_temp_c", temp.value) }) : "",
    humidity
      ? t("store.humidity_last", {
          value: quantity("store_humidity_frac", humidity.value),
        })
      : "",
  ].filter(Boolean);
}

// So many are told in full; older makes are a line each until they are opened.
const TOLD = 8;

/** @param {View} view */
function wheelWords(view) {
  const some = view.make.moulds.filter((mould) => mould.moulded > 0);
  return some.map((mould) =>
    t("store.wheels", { n: count(mould.moulded), size: own(mould.title) }),
  );
}

/**
 * What the wheels lie in before they ripen, and when they are to, in words.
 *
 * @param {Pick<View, "make" | "steps">} view
 */
export function beforeWords({ make, steps }) {
  const before = make.before_store;
  if (!before) return [];
  const title = own(steps.find((step) => step.key === before.step)?.title);
  return [t("store.before", { step: title, at: clockDay(before.begins_ms, nowMs()) })];
}

/** @param {Ageing | null | undefined} ageing */
function detailOf(ageing) {
  if (!ageing) return "";
  const { view, step, sums } = ageing;
  return [
    ...wheelWords(view),
    ...beforeWords(view),
    ...curingWords(sums),
    ...lastWords(step),
    ...lostWords(sums, sizesOf(view)),
  ].join(" · ");
}

/**
 * @param {MakeSummary} make
 * @param {string[]} words
 */
function matches(make, words) {
  const text =
    `${make.name} ${make.batch} ${own(make.recipe_title)} ${day(make.opened_ms)}`.toLowerCase();
  return words.every((word) => text.includes(word));
}

/** Every make out of the press: wheels, days that count, store air, weight lost. */
export function AgeingList() {
  const [search, setSearch] = useState("");
  const makes = ageingMakes();
  const shown = makes.filter((make) =>
    matches(make, search.toLowerCase().split(/\s+/).filter(Boolean)),
  );
  const { known, problem } = useAgeing(shown.slice(0, TOLD).map((make) => make.id));
  return html`<section class="block"><h2>${t("store.ageing")}</h2>
    ${problem ? html`<p class="is-bad" role="alert">${t("sums.failed", { why: problem })}</p>` : null}
    ${makes.length > TOLD ? html`<${TextField} label=${t("store.search")} hint=${t("store.search_hint")} value=${search} onInput=${setSearch} longest=${40} />` : null}
    ${makes.length ? (shown.length ? null : html`<p role="status">${t("store.search_none")}</p>`) : html`<p role="status">${t(board.value ? "store.ageing_none" : "sums.working")}</p>`}
    <div class="rows">${shown.map((make, index) =>
      known[make.id] === null
        ? null
        : html`<${Row} key=${make.id} title=${`${make.name} · ${make.batch}`}
      detail=${index < TOLD ? detailOf(known[make.id]) || t("sums.working") : day(make.opened_ms)}
      onTap=${() => go("store", "make", make.id)} />`,
    )}</div>
    <p class="quiet">${t("store.curing_for")}</p></section>`;
}

/** @param {{make: string, sizes: Record<string, string>}} props */
function Readings({ make, sizes }) {
  /**
   * @param {string} name
   * @param {string} [size]
   */
  const row = (
    name,
    size,
  ) => html`<${Row} key=${name + size} title=${size ? t("store.read_of", { what: t("quantity." + name), size: inside(sizes[size]) }) : t("quantity." + name)}
    onTap=${() => go("store", "make", make, "reading", name, ...(size ? [size] : []))} />`;
  return html`<section class="block"><h2>${t("store.read")}</h2><div class="rows">
      ${row("store_temp_c")}${row("store_humidity_frac")}${Object.keys(sizes).map((size) => row("wheel_mass_kg", size))}</div></section>
    <section class="block"><h2>${t("store.lab")}</h2><div class="rows two">
      ${Object.keys(sizes).flatMap((size) => LAB.map((name) => row(name, size)))}${LAB_MAKE.map((name) => row(name))}</div></section>`;
}

/** @param {{ageing: Ageing, rest: string[]}} props */
function AgeingMake({ ageing, rest }) {
  const { view, step } = ageing;
  const make = view.make.id;
  const sums = useStepSums(make, view, step) ?? ageing.sums;
  const [name, arg, of, input] = rest;
  const sizes = sizesOf(view);
  const onBack = () => swap("store", "make", make);
  if (name === "reading") {
    return html`<${ReadingSheet} make=${make} step=${step.key} name=${arg} place=${of} hint=${of ? sizes[of] : null} onBack=${onBack} />`;
  }
  if (name === "sum") {
    return html`<${StepSumSheet} make=${make} shown=${view} step=${step} sums=${sums} name=${arg} of=${of} input=${input} onBack=${onBack}
      onInput=${(/** @type {string | null} */ next) => (next ? go("store", "make", make, "sum", arg, of, next) : swap("store", "make", make, "sum", arg, of))} />`;
  }
  const curing = sums.find((answer) => answer.key === "curing_days");
  const wheels = wheelWords(view);
  return html`<${Sheet} title=${`${view.make.name} · ${view.make.batch}`} onBack=${() => swap("store")}>
    <div class="columns"><div class="column">
      <section class="sum-answer">${wheels.length ? html`<p class="lead">${wheels.join(", ")}</p>` : null}${beforeWords(view).map((text) => html`<p key=${text} class="lead">${text}</p>`)}${curingWords(sums).map((text, index) => html`<p key=${text} class=${index === 0 ? "lead" : ""}>${text}</p>`)}
        ${(curing?.notes ?? []).map((note) => html`<p key=${note.key} class="quiet">${noteWords(note)}</p>`)}
        <p class="quiet">${t("store.curing_for")}</p></section>
      <h2>${t("store.sums")}</h2>
      <${SumLines} sums=${sums} step=${step} names=${namesOf(view)} onOpen=${(/** @type {Answer} */ answer) => go("store", "make", make, "sum", answer.key, answer.of ?? "-")} />
    </div><div class="column">
      ${may("reading_taken") ? html`<${Readings} make=${make} sizes=${sizes} />` : null}
      <div class="rows rows-apart"><${Row} title=${t("store.make")} onTap=${() => go("make", make)} /></div>
    </div></div></${Sheet}>`;
}

/**
 * One make in the store: its days, its sums, what is read of it.
 *
 * @param {{make: string, rest: string[]}} props
 */
export function AgeingScreen({ make, rest }) {
  const { value: ageing, problem } = useAgeingOf(make);
  if (ageing) return html`<${AgeingMake} key=${make} ageing=${ageing} rest=${rest} />`;
  return html`<${Sheet} title=${t("store.ageing")} onBack=${() => swap("store")}>
    <p role="status">${problem ? t("sums.failed", { why: problem }) : t("sums.working")}</p></${Sheet}>`;
}
