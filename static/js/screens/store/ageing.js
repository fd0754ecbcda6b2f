import { useState } from "preact/hooks";
import { Empty } from "../../parts/empty.js";
import { Facts } from "../../parts/facts.js";
import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { Table } from "../../parts/table.js";
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
/** @import { FactRow } from "../../parts/facts.js" */

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

/** @param {Answer[]} sums */
function daysOf(sums) {
  return sums.find((sum) => sum.key === "curing_days");
}

/**
 * How far the days of one make have come that count, as labels and values.
 *
 * @param {Answer[]} sums
 * @returns {FactRow[]}
 */
export function curingRows(sums) {
  const answer = daysOf(sums);
  const label = t("fact.curing");
  if (valueOf(answer, "verdict")?.value === "not_asked")
    return [[label, t("store.not_asked"), { isLong: true }]];
  const counted = valueOf(answer, "counted_days");
  if (!counted) return [[label, t("store.counted_none"), { isLong: true }]];
  const some = (/** @type {string} */ name) => {
    const days = valueOf(answer, name)?.value;
    return days > 0 ? number(days, 1) : null;
  };
  const first = valueOf(answer, "first_met_ms");
  const n = number(counted.value, 1);
  return [
    [label, t("fact.of_all", { n, all: plain(counted.low) }), { bar: counted.bar }],
    [t("fact.cold_days"), some("below_days")],
    [t("fact.unknown_days"), some("unknown_days")],
    [t("fact.first_day"), first && day(first.value)],
  ];
}

/**
 * The weight that wheels of each size have lost, by its key.
 *
 * @param {Answer[]} sums
 * @returns {Record<string, string>}
 */
function lostOf(sums) {
  const weighed = sums.filter(
    (answer) => answer.key === "weight_loss" && answer.values.length,
  );
  return Object.fromEntries(
    weighed.map((answer) => [
      answer.of ?? "",
      sumValue(valueOf(answer, "loss_frac")?.value, "fraction"),
    ]),
  );
}

/**
 * @param {Step} step
 * @returns {FactRow[]}
 */
function airRows(step) {
  const last = (/** @type {string} */ name) => {
    const told =
      step.readings?.find((reading) => reading.quantity === name)?.last ??
      step.targets?.find((target) => target.quantity === name)?.last;
    return told ? quantity(name, told.value) : null;
  };
  return [
    [t("fact.store_temp"), last("store_temp_c")],
    [t("fact.humidity"), last("store_humidity_frac")],
  ];
}

// So many are told in full; older makes are a line each until they are opened.
const TOLD = 8;

/** @param {Pick<View, "make">} view */
function mouldsOf({ make }) {
  return make.moulds.filter((mould) => mould.moulded > 0);
}

/**
 * What the wheels lie in before they ripen, and when they are to.
 *
 * @param {Pick<View, "make" | "steps">} view
 * @returns {FactRow[]}
 */
export function beforeRows({ make, steps }) {
  const before = make.before_store;
  if (!before) return [];
  const title = own(steps.find((step) => step.key === before.step)?.title);
  return [
    [t("fact.now"), title],
    [t("fact.ripens"), clockDay(before.begins_ms, nowMs())],
  ];
}

/**
 * @param {Ageing} ageing
 * @returns {FactRow[]}
 */
function rowsOf({ view, step, sums }) {
  const lost = lostOf(sums);
  const sizes = sizesOf(view);
  const wheels = mouldsOf(view).map((mould) => [
    own(mould.title),
    count(mould.moulded),
  ]);
  return [
    .../** @type {FactRow[]} */ (wheels),
    ...beforeRows(view),
    ...curingRows(sums),
    ...airRows(step),
    .../** @type {FactRow[]} */ (
      Object.keys(lost).map((size) => [
        sizes[size] ? t("fact.lost_of", { size: inside(sizes[size]) }) : t("fact.lost"),
        lost[size],
      ])
    ),
  ];
}

/** @param {{make: MakeSummary, ageing?: Ageing | null, isTold: boolean}} props */
function MakeRow({ make, ageing, isTold }) {
  const rows = isTold
    ? ageing
      ? rowsOf(ageing)
      : []
    : [[t("fact.opened"), day(make.opened_ms)]];
  const detail = html`<${Facts} isInKey rows=${[[t("fact.batch"), make.batch], ...rows]} />
    ${isTold && !ageing ? t("sums.working") : null}`;
  return html`<${Row} title=${make.name} detail=${detail} onTap=${() => go("store", "make", make.id)} />`;
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
    ${makes.length && !shown.length ? html`<p role="status">${t("store.search_none")}</p>` : null}
    ${makes.length ? null : board.value ? html`<${Empty} says=${t("store.ageing_none")} does=${t("empty.to_now")} onTap=${() => go("now")} />` : html`<p role="status">${t("sums.working")}</p>`}
    <div class="rows">${shown.map((make, index) =>
      known[make.id] === null
        ? null
        : html`<${MakeRow} key=${make.id} make=${make} ageing=${known[make.id]} isTold=${index < TOLD} />`,
    )}</div>
    ${makes.length ? html`<p class="quiet">${t("store.curing_for")}</p>` : null}</section>`;
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

/** @param {{view: View, sums: Answer[]}} props */
function Wheels({ view, sums }) {
  const moulds = mouldsOf(view);
  const lost = lostOf(sums);
  if (!moulds.length) return null;
  const columns = [
    { title: t("fact.size") },
    { title: t("fact.wheels"), isNumber: true },
    { title: t("fact.lost"), isNumber: true },
  ];
  const rows = moulds.map((mould) => ({
    key: mould.size,
    cells: [own(mould.title), count(mould.moulded), lost[mould.size] ?? "–"],
  }));
  return html`<div class="told"><${Table} caption=${t("fact.wheels")} columns=${columns} rows=${rows} /></div>`;
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
  const rows = [
    [t("fact.batch"), view.make.batch],
    ...beforeRows(view),
    ...curingRows(sums),
    ...airRows(step),
  ];
  return html`<${Sheet} title=${view.make.name} onBack=${() => swap("store")}>
    <div class="columns"><div class="column">
      <section class="told"><${Facts} rows=${rows} />
        ${(daysOf(sums)?.notes ?? []).map((note) => html`<p key=${note.key} class="quiet">${noteWords(note)}</p>`)}
        <p class="quiet">${t("store.curing_for")}</p></section>
      <${Wheels} view=${view} sums=${sums} />
      <h2>${t("store.sums")}</h2>
      <${SumLines} isTold sums=${sums} step=${step} names=${namesOf(view)} onOpen=${(/** @type {Answer} */ answer) => go("store", "make", make, "sum", answer.key, answer.of ?? "-")} />
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
