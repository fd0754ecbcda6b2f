import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { StateMark } from "../../parts/state-mark.js";
import { Tap } from "../../parts/tap.js";
import { act } from "../../parts/acts.js";
import { may, nameOf } from "../../parts/people-names.js";
import { recordedText } from "../../parts/reading-text.js";
import { sizeTitle } from "../../parts/size-title.js";
import { board, nowMs } from "../../parts/source.js";
import {
  amount,
  change,
  clockDay,
  count,
  measured,
  plain,
  quantity,
} from "../../format.js";
import { has, inside, t } from "../../messages/index.js";
import { go, swap } from "../../router.js";
import { ReadingSheet } from "../make/reading-sheet.js";
import { EntrySheet } from "../record/entry-sheet.js";
import { lineText } from "../record/line-text.js";
import { noteWords } from "../sums/notes.js";
import { useLedger } from "./asked.js";
import { LoadSheet } from "./load.js";
import { MeasureSheet } from "./measure.js";
import { AddPad } from "./add-pad.js";
import { AmountPad, typedData, typedMass } from "./pads.js";

/** @import { Typed } from "./pads.js" */

const salt = (/** @type {number} */ value) => quantity("brine_salt_frac", value);

/** @param {string} id */
function makeName(id) {
  const make = board.value?.makes.find((summary) => summary.id === id);
  return make ? `${make.name} · ${make.batch}` : t("alert.the_make");
}

/** @param {TankLoad} load */
function loadTitle(load) {
  return t("store.load", {
    n: count(load.wheels),
    make: makeName(load.make),
    size: inside(sizeTitle(load.size)),
  });
}

/** @param {{tank: Tank}} props */
function Strength({ tank }) {
  const last = tank.measured;
  return html`<section class="sum-answer"><p class="sum-label">${t("store.expected")}</p>
    <p class="figure-value">${salt(tank.salt_frac)}</p>
    <p>${last ? t("store.measured", { salt: recordedText({ ...last, quantity: "brine_salt_frac" }), at: clockDay(last.at_ms, nowMs()) }) : t("store.never_measured")}
      ${last && tank.drift_frac !== null ? ", " + t("store.drift", { by: change("brine_salt_frac", tank.drift_frac, 0) }) : ""}</p>
    <p>${t("store.brine", { kg: amount(tank.mass_kg, "kg"), salt: amount(tank.salt_kg, "kg") })}</p>
    <p>${tank.temp_c === null ? t("store.no_temp") : t("store.temp", { temp: quantity("brine_temp_c", tank.temp_c) })}</p>
    ${tank.salt_to_add_kg ? html`<p class="lead">${t("store.add_salt", { wanted: salt(tank.wanted_frac), kg: measured(tank.salt_to_add_kg, "kg") })}</p>` : null}
    ${tank.water_to_add_kg ? html`<p class="lead">${t("store.add_water", { wanted: salt(tank.wanted_frac), kg: measured(tank.water_to_add_kg, "kg") })}</p>` : null}
    ${tank.outside.map((problem) => html`<p key=${problem.field}><${StateMark} state="check" /> ${t("store.outside_" + problem.field, outside(problem))}</p>`)}
    ${tank.notes.map((note, index) => html`<p key=${index} class="is-bad">${noteWords(note)}</p>`)}
  </section>`;
}

/** @param {Tank["outside"][number]} problem */
function outside({ field, value, limit }) {
  const name = field === "salt_frac" ? "brine_salt_frac" : "brine_temp_c";
  return { value: quantity(name, value), limit: quantity(name, limit) };
}

/** @param {{tank: Tank, canAct: boolean}} props */
function Inside({ tank, canAct }) {
  const now = tank.loads.filter((load) => load.out_ms === null);
  const past = tank.loads.filter((load) => load.out_ms !== null);
  const basis = (/** @type {TankLoad} */ load) =>
    t(load.basis && has(load.basis) ? load.basis : "tank.not_known");
  return html`<section class="block"><h2>${t("store.loads")}</h2>
    ${now.length ? null : html`<p>${t("store.no_loads")}</p>`}
    <div class="rows">${now.map(
      (load) => html`<div class="row row-still" key=${load.id}><span class="row-main">
      <span class="row-title">${loadTitle(load)}</span>
      <span class="row-detail">${t("store.load_detail", { at: clockDay(load.in_ms, nowMs()), kg: amount(load.mass_kg, "kg") })}${load.due_ms ? " · " + t("store.load_due", { at: clockDay(load.due_ms, nowMs()) }) : ""}</span>
      <span class="row-detail">${t("store.load_taken", { salt: amount(load.salt_kg, "kg"), basis: basis(load) })}</span></span>
      ${canAct ? html`<span class="row-buttons"><${Tap} class="second" onTap=${() => go("store", "tank", tank.id, "out", load.id)}>${t("store.take_out")}</${Tap}></span>` : null}</div>`,
    )}</div>
    ${
      past.length
        ? html`<h3>${t("store.past_loads")}</h3><div class="rows">${past.map(
            (
              load,
            ) => html`<div class="row row-still" key=${load.id}><span class="row-main">
      <span class="row-title">${loadTitle(load)}</span>
      <span class="row-detail">${t("store.past_detail", { in_kg: amount(load.mass_kg, "kg"), out_kg: amount(load.out_kg, "kg"), salt: amount(load.salt_kg, "kg") })} (${basis(load)})</span></span></div>`,
          )}</div>`
        : null
    }
  </section>`;
}

/** @param {Tank["water_salt_ratio"]} ratio */
function ratioWords({ value, low, high, from }) {
  const key = from === "typed" ? "store.ratio_own" : "store.ratio_usual";
  return t(key, {
    value: quantity("water_salt_ratio", value),
    low: plain(low),
    high: plain(high),
  });
}

/** @param {{tank: Tank}} props */
function Acts({ tank }) {
  const open = (/** @type {string} */ name) => () => go("store", "tank", tank.id, name);
  return html`<section class="block"><h2>${t("store.acts")}</h2><div class="rows">
    <${Row} title=${t("store.load_wheels")} onTap=${open("load")} />
    <${Row} title=${t("store.measure")} detail=${t("store.measure_detail")} onTap=${open("measure")} />
    <${Row} title=${t("store.percent")} onTap=${open("percent")} />
    <${Row} title=${t("store.salt_add")} onTap=${open("salt")} />
    <${Row} title=${t("store.water_add")} onTap=${open("water")} />
    <${Row} title=${t("store.read_temp")} onTap=${open("temp")} />
    <${Row} title=${t("store.read_ph")} onTap=${open("ph")} />
    <${Row} title=${t("store.ratio")} detail=${ratioWords(tank.water_salt_ratio)} onTap=${open("ratio")} />
  </div></section>`;
}

/** @param {{tank: Tank, entry?: string, onBack: () => void}} props */
function Ledger({ tank, entry, onBack }) {
  const { value: lines } = useLedger(tank.id);
  const logged = lines?.find((line) => line.id === entry);
  const toList = () => swap("store", "tank", tank.id, "ledger");
  if (logged)
    return html`<${EntrySheet} key=${logged.id} make=${tank.id} line=${logged} steps=${[]} onBack=${toList} />`;
  return html`<${Sheet} title=${t("store.ledger")} onBack=${onBack}><p class="quiet">${t("store.ledger_lead")}</p>
    <div class="rows">${(lines ?? []).map(
      (line) => html`<${Row} key=${line.id} class=${line.struck ? "is-struck" : ""}
      title=${html`<span class="record-time">${clockDay(line.at_ms, nowMs())}</span> <span class=${line.struck ? "struck" : ""}>${lineText(line, [])}</span>`}
      detail=${nameOf(line.by)} onTap=${() => go("store", "tank", tank.id, "ledger", line.id)} />`,
    )}</div></${Sheet}>`;
}

/** @type {Record<string, string>} */
const READ = {
  percent: "brine_salt_frac",
  temp: "brine_temp_c",
  ph: "brine_ph",
  ratio: "water_salt_ratio",
};

/** @param {{tank: Tank, load: string, onBack: () => void}} props */
function TakeOut({ tank, load, onBack }) {
  const held = tank.loads.find((one) => one.id === load);
  const save = async (/** @type {number} */ value, /** @type {Typed} */ told) => {
    const event = await act(
      "tank_unloaded",
      { make: tank.id, data: { load, mass_kg: value, ...typedData(told) } },
      t("said.tank_unloaded", { mass: amount(value, "kg") }),
    );
    if (event) onBack();
    return Boolean(event);
  };
  const last = held
    ? { typed: typedMass(held.mass_kg), text: amount(held.mass_kg, "kg") }
    : null;
  return html`<${AmountPad} kind="tank_unloaded" name="wheels" title=${t("store.out_mass")} hint=${held ? loadTitle(held) : ""} last=${last}
    beforeKg=${held?.mass_kg} onSave=${save} onBack=${onBack} />`;
}

/**
 * One brine tank: how strong it should be, what is in it, what can be done.
 *
 * @param {{tank: Tank, rest: string[]}} props
 */
export function TankScreen({ tank, rest }) {
  const [name, arg] = rest;
  const onBack = () => swap("store", "tank", tank.id);
  if (name in READ)
    return html`<${ReadingSheet} make=${tank.id} name=${READ[name]} hint=${name === "ratio" ? t("store.ratio_hint") : null} onBack=${onBack} />`;
  if (name === "salt")
    return html`<${AddPad} tank=${tank.id} kind="salt_added" title=${t("store.salt_how")} onBack=${onBack} />`;
  if (name === "water")
    return html`<${AddPad} tank=${tank.id} kind="water_added_to_tank" title=${t("store.water_how")} onBack=${onBack} />`;
  if (name === "load") return html`<${LoadSheet} tank=${tank.id} onBack=${onBack} />`;
  if (name === "out")
    return html`<${TakeOut} tank=${tank} load=${arg} onBack=${onBack} />`;
  if (name === "measure")
    return html`<${MeasureSheet} tank=${tank} input=${arg} onBack=${onBack} />`;
  if (name === "ledger")
    return html`<${Ledger} tank=${tank} entry=${arg} onBack=${onBack} />`;
  const canAct = may("work");
  return html`<${Sheet} title=${tank.name} onBack=${() => swap("store")}>
    <div class="columns"><div class="column"><${Strength} tank=${tank} /><${Inside} tank=${tank} canAct=${canAct} /></div>
      <div class="column">${canAct ? html`<${Acts} tank=${tank} />` : null}
        <div class="rows rows-apart"><${Row} title=${t("store.ledger")} onTap=${() => go("store", "tank", tank.id, "ledger")} /></div></div></div>
  </${Sheet}>`;
}
