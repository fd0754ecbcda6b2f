import { useEffect, useState } from "preact/hooks";
import { Empty } from "../../parts/empty.js";
import { Facts } from "../../parts/facts.js";
import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { act } from "../../parts/acts.js";
import { may } from "../../parts/people-names.js";
import { ask, board, nowMs } from "../../parts/source.js";
import { clockDay, count, plain, typedValue, unitName } from "../../format.js";
import { inside, own, t } from "../../messages/index.js";
import { go } from "../../router.js";
import { draftOf, keepDraft } from "../sums/given.js";
import { AmountPad, CountPad, typedData } from "./pads.js";

/** @import { Typed } from "./pads.js" */

/** @param {{id: string} | null} make */
function useMoulds(make) {
  const [moulds, setMoulds] = useState(/** @type {Mould[] | null} */ (null));
  useEffect(() => {
    if (!make) return;
    ask.view({ make: make.id }).then(
      (view) => setMoulds(view?.make.moulds ?? []),
      () => setMoulds([]),
    );
  }, [make?.id]);
  return moulds;
}

/** @param {{onChoose: (make: MakeSummary) => void, onBack: () => void}} props */
function Which({ onChoose, onBack }) {
  const makes = (board.value?.makes ?? []).filter((make) => make.can_brine);
  return html`<${Sheet} title=${t("store.load_which")} onBack=${onBack}>
    <div class="rows">${makes.map(
      (make) => html`<${Row} key=${make.id} title=${make.name}
      detail=${html`<${Facts} isInKey rows=${madeRows(make)} />`} onTap=${() => onChoose(make)} />`,
    )}</div>
    ${makes.length ? null : html`<${Empty} says=${t("store.load_no_makes")} does=${may("make_opened") && t("empty.start")} onTap=${() => go("new")} />`}</${Sheet}>`;
}

/** @param {MakeSummary} make */
function madeRows(make) {
  return [
    [t("fact.batch"), make.batch],
    [t("fact.opened"), clockDay(make.opened_ms, nowMs())],
  ];
}

/**
 * @typedef {object} Told what was told of a load so far
 * @property {Pick<MakeSummary, "id" | "name" | "batch"> | null} make
 * @property {Pick<Mould, "size" | "title"> | null} mould
 * @property {number | null} wheels
 * @property {Typed & {kg: number} | null} mass
 * @property {number | null} days
 */

/** @type {Told} */
const NOTHING = { make: null, mould: null, wheels: null, mass: null, days: null };

/**
 * Put wheels of one size of a make into a tank: how many, how heavy, how long.
 *
 * @param {{tank: string, onBack: () => void}} props
 */
export function LoadSheet({ tank, onBack }) {
  // Kept for the visit: a wet drop on Back loses nothing that was typed.
  const [told, setTold] = useState(
    () => /** @type {Told} */ (draftOf(tank, "load") ?? NOTHING),
  );
  const tell = (/** @type {Partial<Told>} */ change) => {
    const next = { ...told, ...change };
    keepDraft(tank, "load", next);
    setTold(next);
    return true;
  };
  const keep =
    (/** @type {"wheels" | "days"} */ name) => async (/** @type {number} */ value) =>
      tell({ [name]: value });
  const back = (/** @type {keyof Told} */ name) => () => tell({ [name]: null });
  const { make, mould, wheels, mass, days } = told;
  const moulds = useMoulds(make);
  if (!make)
    return html`<${Which} onChoose=${(/** @type {MakeSummary} */ { id, name, batch }) => tell({ make: { id, name, batch } })} onBack=${onBack} />`;
  if (!mould) {
    return html`<${Sheet} title=${t("store.load_size")} onBack=${back("make")}>
      <div class="rows">${(moulds ?? []).map((wheel) => html`<${Row} key=${wheel.size} title=${own(wheel.title)} onTap=${() => tell({ mould: { size: wheel.size, title: wheel.title } })} />`)}</div></${Sheet}>`;
  }
  const size = own(mould.title);
  if (wheels === null) {
    return html`<${CountPad} key="wheels" kind="tank_loaded" field="wheels" title=${t("store.load_count", { size: inside(size) })} unit=${t("mould.wheels")}
      onSave=${keep("wheels")} onBack=${back("mould")} />`;
  }
  if (mass === null) {
    return html`<${AmountPad} key="mass" kind="tank_loaded" name="wheels" title=${t("store.load_mass")} saveWord=${t("word.next")}
      onSave=${async (/** @type {number} */ kg, /** @type {Typed} */ typed) => tell({ mass: { kg, ...typed } })} onBack=${back("wheels")} />`;
  }
  if (days === null) {
    return html`<${CountPad} key="days" kind="tank_loaded" field="days" title=${t("store.load_days")} unit=${unitName("d")} decimals=${1} onSave=${keep("days")} onBack=${back("mass")} />`;
  }
  const save = async () => {
    const data = {
      load_make: make.id,
      size: mould.size,
      wheels,
      mass_kg: mass.kg,
      days,
      ...typedData(mass),
    };
    const event = await act(
      "tank_loaded",
      { make: tank, data },
      t("said.tank_loaded", { n: count(wheels) }),
    );
    if (!event) return;
    keepDraft(tank, "load", null);
    onBack();
  };
  return html`<${Sheet} title=${t("store.load_wheels")} onBack=${back("days")}
    foot=${html`<${Tap} class="primary" onTap=${save}>${t("store.load_do")}</${Tap}>`}>
    <div class="told"><${Facts} rows=${[
      [t("fact.make"), make.name],
      [t("fact.batch"), make.batch],
      [size, count(wheels)],
      [t("fact.mass"), typedValue(mass.typed, mass.unit)],
      [t("store.load_days"), plain(days)],
    ]} /></div></${Sheet}>`;
}
