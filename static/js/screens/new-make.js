import { useEffect, useState } from "preact/hooks";
import { html } from "../parts/html.js";
import { Keypad } from "../parts/keypad.js";
import { Choices, Row, Sheet } from "../parts/sheet.js";
import { Tap } from "../parts/tap.js";
import { TextField } from "../parts/text-field.js";
import { act } from "../parts/acts.js";
import { ClashesIf } from "../parts/clashes-if.js";
import { ask, core, freshenRecipes, nowMs, recipes } from "../parts/source.js";
import {
  amount,
  amountTyped,
  band,
  clock,
  count,
  day,
  formOf,
  unitName,
} from "../format.js";
import { own, t } from "../messages/index.js";
import { QUANTITIES } from "../units/table.js";
import { go, swap } from "../router.js";
import { EquipmentList } from "./new-make/equipment-list.js";
import { EquipmentSection, Vats, useEquipment } from "./new-make/section.js";
import {
  OptionRows,
  OptionSheet,
  optionsSaid,
  useOptions,
} from "./new-make/options.js";
import { TreatmentSheet, useTreatment } from "./new-make/treatment.js";

const MILK = QUANTITIES.milk_volume_l.unit; // that a make is opened with

// The core's code for today, until a person writes another.
/** @returns {[string, (batch: string) => void]} */
function useBatch() {
  const [batch, setBatch] = useState("");
  const isReady = core.value === "ready"; // a core that starts knows not all codes yet
  useEffect(() => {
    if (isReady)
      ask.batchCode().then(
        (code) => setBatch((written) => written || code),
        () => {},
      );
  }, [isReady]);
  return [batch, setBatch];
}

/** @param {string} typed */
function readCount(typed) {
  return ask.readField({ kind: "wheels_moulded", field: "count", typed });
}

/**
 * @param {Recipe} recipe
 * @param {string} unit
 */
function askMilk(recipe, unit) {
  const { low_l: lowL, high_l: highL } = recipe.milk;
  return async (/** @type {string} */ typed) => {
    const found = await ask.readField({
      kind: "make_opened",
      field: "milk_l",
      typed,
      unit,
    });
    if (found.value === null || found.problems.length) return found;
    const { ask: doubt } = await ask.suggestion({ recipe, milkL: found.value });
    return {
      ...found,
      ask: doubt && { ...doubt, limit: band("milk_volume_l", lowL, highL) },
    };
  };
}

/**
 * @param {{
 *   sizes: any[], counts: Record<string, number>, onSize: (size: string) => void,
 * }} props
 */
function Wheels({ sizes, counts, onSize }) {
  if (!sizes.length) return null;
  return html`<h2>${t("new.moulds")}</h2>
    <p class="quiet">${t("new.moulds_hint")}</p>
    <div class="rows">${sizes.map(
      (mould) => html`<${Row} key=${mould.size} title=${own(mould.title)}
      detail=${t("new.wheel_kg", { amount: amount(mould.wheel_kg.value, "kg") })}
      side=${counts[mould.size] === undefined ? t("new.not_set") : count(counts[mould.size])} onTap=${() => onSize(mould.size)} />`,
    )}</div>`;
}

/** Open a make: recipe, milk, batch code, vat, wheels of each size. */
export function NewMakeScreen() {
  const [recipe, setRecipe] = useState(/** @type {Recipe | null} */ (null));
  const [milkL, setMilkL] = useState(/** @type {number | null} */ (null));
  const [pad, setPad] = useState(/** @type {string | null} */ (null)); // "milk", a mould size, …
  const [moulds, setMoulds] = useState(/** @type {Record<string, number>} */ ({}));
  const [batch, setBatch] = useBatch();
  const [vat, setVat] = useState("");
  const [name, setName] = useState("");
  const [isPractice, setPractice] = useState(false);
  const { treatment, treatments, choose } = useTreatment(recipe);
  const { choices, chosen, take } = useOptions(recipe, treatment);
  const { equipment, is_any: isAny, before, vats, alter } = useEquipment(vat);
  const [isListing, setListing] = useState(false);
  useEffect(() => {
    freshenRecipes().catch(() => {});
  }, []);
  const all = recipes.value; // each in its newest version, as the server lists them
  const [milkForm] = useState(() => formOf("milk_volume_l"));

  if (!recipe) {
    return html`<${Sheet} title=${t("new.which")} onBack=${() => go("now")}>
      ${
        all.length
          ? html`<${Choices} label=${t("new.which")} onChoose=${(/** @type {string} */ id) => setRecipe(all.find((one) => one.id === id) ?? null)}
        options=${all.map((one) => ({ key: one.id, title: own(one.title), detail: t("recipe.version", { n: one.version }) }))} />`
          : html`<p class="lead">${t("new.no_recipes")}</p>`
      }
    </${Sheet}>`;
  }
  if (pad === "milk" || milkL === null) {
    const back = () => (milkL === null ? setRecipe(null) : setPad(null));
    return html`<div class="sheet"><${Keypad} onBack=${back} key="milk" title=${t("new.milk")} unit=${unitName(milkForm.unit)} decimals=${milkForm.decimals} start=${amountTyped(milkL, MILK, milkForm.decimals)}
        hint=${t("new.milk_band", { band: band("milk_volume_l", recipe.milk.low_l, recipe.milk.high_l) })}
        askText=${(/** @type {Problem} */ ask) => t("new.milk_outside", { band: ask.limit })}
        read=${askMilk(recipe, milkForm.unit)} saveWord=${t("word.next")} save=${async (
          /** @type {number} */ value,
        ) => {
          const { moulds: wheels } = await ask.suggestion({
            recipe,
            milkL: value,
          });
          setMoulds(Object.fromEntries(wheels.map((row) => [row.size, row.count])));
          setMilkL(value);
          setPad(null);
          return true;
        }} /></div>`;
  }
  if (pad === "treatment" || !treatment) {
    const back = () => (treatment ? setPad(null) : setMilkL(null));
    const onChoose = (/** @type {Treatment} */ way) => {
      choose(way);
      setPad(null);
    };
    return html`<${TreatmentSheet} treatments=${treatments} chosen=${treatment} onChoose=${onChoose} onBack=${back} />`;
  }
  const choice = choices.find((one) => "choice/" + one.choice === pad);
  if (choice) {
    const onChoose = (/** @type {string} */ option) => {
      take(choice.choice, option);
      setPad(null);
    };
    return html`<${OptionSheet} choice=${choice} chosen=${chosen[choice.choice]} onChoose=${onChoose} onBack=${() => setPad(null)} />`;
  }
  const sizes = recipe.moulds ?? []; // a recipe without a step of moulding has none
  const mould = sizes.find((one) => one.size === pad);
  if (pad && mould) {
    return html`<div class="sheet"><${Keypad} onBack=${() => setPad(null)} key=${pad} title=${t("new.moulds_of", { size: own(mould.title) })} unit=${t("mould.wheels")} decimals=${0}
        start=${moulds[pad] === undefined ? "" : String(moulds[pad])} read=${readCount} saveWord=${t("word.next")}
        save=${async (/** @type {number} */ value) => {
          setMoulds({ ...moulds, [pad]: value });
          setPad(null);
          return true;
        }} /></div>`;
  }
  if (isListing) {
    return html`<${EquipmentList} equipment=${equipment} lead=${t("equip.lead_new")} mayTakeOut onSet=${alter} onBack=${() => setListing(false)} />`;
  }
  const open = async () => {
    const rows = Object.entries(moulds).map(([size, n]) => ({ size, count: n }));
    /** @type {Record<string, any>} */
    const data = {
      name: name.trim() || `${own(recipe.title)}`.slice(0, 80),
      batch: batch.trim(),
      recipe,
      milk_l: milkL,
      treatment,
    };
    if (isPractice)
      Object.assign(data, {
        practice: true,
        name: t("practice.name", { name: data.name }).slice(0, 80),
      });
    if (vat.trim()) data.vat = vat.trim();
    if (rows.length) data.moulds = rows;
    if (isAny) data.equipment = equipment;
    const said = optionsSaid(chosen);
    if (Object.keys(said).length) data.options = said;
    // No undo here: a make opened in error is given up, with its reason.
    const event = await act("make_opened", { data });
    if (event?.make) swap("make", event.make);
  };
  return html`<${Sheet} title=${t("new.title")} onBack=${() => setMilkL(null)}
    foot=${html`<${Tap} class="primary" disabled=${batch.trim() === ""} onTap=${open}>${t("new.open")}</${Tap}>`}>
    <p class="quiet">${t("new.lead", { day: day(nowMs()), at: clock(nowMs()) })}</p>
    <div class="rows">
      <${Row} title=${own(recipe.title)} detail=${t("recipe.version", { n: recipe.version })} side=${t("word.change")} onTap=${() => setRecipe(null)} />
      <${Row} title=${t("new.milk_row", { amount: amount(milkL, MILK) })} side=${t("word.change")} onTap=${() => setPad("milk")} />
      <${Row} title=${t("treatment." + treatment)} detail=${t("treat.means." + treatment)} side=${t("word.change")} disabled=${treatments.length < 2} onTap=${() => setPad("treatment")} />
      <${OptionRows} choices=${choices} chosen=${chosen} onOpen=${(/** @type {string} */ key) => setPad("choice/" + key)} />
    </div>
    <div class="columns">
      <div class="column">
        <${TextField} label=${t("new.batch")} value=${batch} onInput=${setBatch} longest=${20} />
        <${TextField} label=${t("new.vat")} value=${vat} onInput=${setVat} longest=${60} />
        <${Vats} names=${vats} vat=${vat} onVat=${setVat} />
        <${TextField} label=${t("new.name")} hint=${t("new.name_hint")} value=${name} onInput=${setName} longest=${80} />
        <${EquipmentSection} equipment=${equipment} before=${before} onOpen=${() => setListing(true)} />
      </div>
      <div class="column">
        <${Wheels} sizes=${sizes} counts=${moulds} onSize=${setPad} />
        <${ClashesIf} recipe=${recipe} treatment=${treatment} />
        <div class="rows rows-apart"><${Row} title=${t("practice.row")} detail=${t("practice.row_detail")} side=${t(isPractice ? "word.yes" : "word.no")} onTap=${() => setPractice(!isPractice)} /></div>
      </div>
    </div>
  </${Sheet}>`;
}
