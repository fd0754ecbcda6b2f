import { DrawnBar } from "../../parts/bars.js";
import { Empty } from "../../parts/empty.js";
import { Facts } from "../../parts/facts.js";
import { FigureValue } from "../../parts/figure-value.js";
import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { StateMark } from "../../parts/state-mark.js";
import { WideTable } from "../../parts/table.js";
import { Tap } from "../../parts/tap.js";
import { act } from "../../parts/acts.js";
import { may, nameOf } from "../../parts/people-names.js";
import { recordedText } from "../../parts/reading-text.js";
import { sizeTitle } from "../../parts/size-title.js";
import { board, nowMs } from "../../parts/source.js";
import {
  amount,
  band as bandText,
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
function madeBy(id) {
  return board.value?.makes.find((summary) => summary.id === id);
}

/** @param {TankLoad} load */
function loadTitle(load) {
  const make = madeBy(load.make);
  return t("store.load", {
    n: count(load.wheels),
    make: make ? t("fact.name_batch", make) : t("alert.the_make"),
    size: inside(sizeTitle(load.size)),
  });
}

/** @param {{tank: Tank}} props */
function Strength({ tank }) {
  const { band, measured: last } = tank;
  const at = last ? clockDay(last.at_ms, nowMs()) : "";
  const read = last ? recordedText({ ...last, quantity: "brine_salt_frac" }) : "";
  const rows = [
    band && [
      t("fact.range"),
      bandText("brine_salt_frac", band.low_frac, band.high_frac),
    ],
    [t("fact.measured"), last ? `${read}, ${at}` : t("store.never_measured")],
    last &&
      tank.drift_frac !== null && [
        t("fact.drift"),
        change("brine_salt_frac", tank.drift_frac, 0),
      ],
    [t("fact.brine"), amount(tank.mass_kg, "kg")],
    [t("fact.salt_in_it"), amount(tank.salt_kg, "kg")],
    [
      t("fact.temperature"),
      tank.temp_c === null ? t("store.no_temp") : quantity("brine_temp_c", tank.temp_c),
    ],
  ];
  return html`<section class="told"><p class="quiet">${t("store.expected")}</p>
    <div class="figure"><${FigureValue} text=${salt(tank.salt_frac)} /></div>
    ${band ? html`<${DrawnBar} bar=${band.bar} />` : null}
    ${tank.salt_to_add_kg ? html`<p class="lead">${t("store.add_salt", { wanted: salt(tank.wanted_frac), kg: measured(tank.salt_to_add_kg, "kg") })}</p>` : null}
    ${tank.water_to_add_kg ? html`<p class="lead">${t("store.add_water", { wanted: salt(tank.wanted_frac), kg: measured(tank.water_to_add_kg, "kg") })}</p>` : null}
    ${tank.outside.map((problem) => html`<p key=${problem.field}><${StateMark} state="check" /> ${t("store.outside_" + problem.field, outside(problem))}</p>`)}
    ${tank.notes.map((note, index) => html`<p key=${index} class="is-bad">${noteWords(note)}</p>`)}
    <${Facts} rows=${rows} />
  </section>`;
}

/** @param {Tank["outside"][number]} problem */
function outside({ field, value, limit }) {
  const name = field === "salt_frac" ? "brine_salt_frac" : "brine_temp_c";
  return { value: quantity(name, value), limit: quantity(name, limit) };
}

/** @param {TankLoad} load */
function basisWords(load) {
  return t(load.basis && has(load.basis) ? load.basis : "tank.not_known");
}

/** @param {TankLoad} load */
function uptakeWords(load) {
  const taken = amount(load.salt_kg, "kg");
  return load.salt_due_kg === null
    ? taken
    : t("fact.uptake_of", { salt: taken, due: amount(load.salt_due_kg, "kg") });
}

/** @param {{load: TankLoad, onOut: (() => void) | null}} props */
function Load({ load, onOut }) {
  const make = madeBy(load.make);
  const rows = [
    [t("fact.batch"), make?.batch],
    [sizeTitle(load.size), count(load.wheels)],
    [t("fact.mass"), amount(load.mass_kg, "kg")],
    [t("fact.in_since"), clockDay(load.in_ms, nowMs())],
    load.due_ms && [
      t("fact.due_out"),
      clockDay(load.due_ms, nowMs()),
      { bar: load.time },
    ],
    [t("fact.uptake"), uptakeWords(load), { bar: load.uptake }],
    [t("fact.known_by"), basisWords(load)],
  ];
  return html`<div class="told"><h3>${make?.name ?? t("alert.the_make")}</h3>
    <${Facts} rows=${rows} />
    ${onOut ? html`<${Tap} class="second" onTap=${onOut}>${t("store.take_out")}</${Tap}>` : null}</div>`;
}

/** @param {{loads: TankLoad[]}} props */
function Past({ loads }) {
  if (!loads.length) return null;
  const columns = [
    { title: t("fact.wheels") },
    { title: t("fact.mass_in"), isNumber: true },
    { title: t("fact.mass_out"), isNumber: true },
    { title: t("fact.uptake"), isNumber: true },
  ];
  const rows = loads.map((load) => ({
    key: load.id,
    cells: [
      html`${loadTitle(load)}<span class="row-detail">${basisWords(load)}</span>`,
      amount(load.mass_kg, "kg"),
      amount(load.out_kg, "kg"),
      amount(load.salt_kg, "kg"),
    ],
  }));
  return html`<div class="told"><${WideTable} caption=${t("store.past_loads")} columns=${columns} rows=${rows} /></div>`;
}

/** @param {{tank: Tank, canAct: boolean}} props */
function Inside({ tank, canAct }) {
  const now = tank.loads.filter((load) => load.out_ms === null);
  const past = tank.loads.filter((load) => load.out_ms !== null);
  const open =
    (/** @type {string[]} */ ...to) =>
    () =>
      go("store", "tank", tank.id, ...to);
  return html`<section class="block"><h2>${t("store.loads")}</h2>
    ${now.length ? null : html`<${Empty} says=${t("store.no_loads")} does=${canAct && t("store.load_wheels")} onTap=${open("load")} />`}
    <div class="told-cards">${now.map((load) => html`<${Load} key=${load.id} load=${load} onOut=${canAct ? open("out", load.id) : null} />`)}</div>
    <${Past} loads=${past} />
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
