import { amount, clock, count, plain, quantity, span } from "../../format.js";
import { hazardName } from "../../parts/hazard-name.js";
import { readingText, recordedMass, recordedText } from "../../parts/reading-text.js";
import { sizeTitle } from "../../parts/size-title.js";
import { recipes } from "../../parts/source.js";
import { inside, own, t, tFirst, words, whyWords } from "../../messages/index.js";
import { loadRows, rowLabel, rowValue, rows } from "../new-make/equipment-words.js";

/**
 * @param {string} key
 * @param {Step[]} steps
 */
function stepName(key, steps) {
  const title = steps.find((step) => step.key === key)?.title;
  return own(title) || words(key ?? "");
}

/**
 * @param {string} key
 * @param {Step[]} steps
 */
function ingredientName(key, steps) {
  const add = steps
    .flatMap((step) => step.adds ?? [])
    .find((dose) => dose.ingredient === key);
  const known = recipes.value
    .flatMap((recipe) => recipe.ingredients ?? [])
    .find((ingredient) => ingredient.key === key);
  return own(add?.title ?? known?.title) || words(key);
}

/** @param {string} id */
function recipeTitle(id) {
  return (
    own(recipes.value.find((recipe) => recipe.id === id)?.title) || words(id ?? "")
  );
}

// A value that was not typed is in the row's own unit, which the core knows.
/**
 * @param {Record<string, any>} data
 * @param {any} value
 */
function equipmentValue(data, value) {
  if (!rows.value) loadRows();
  const row = rows.value?.find((one) => one.name === data.key);
  /** @type {[string, string] | null} */
  const typed =
    data.typed !== undefined && value === data.value
      ? [data.typed, data.typed_unit ?? ""]
      : null;
  return rowValue(row ?? { name: data.key }, value, typed);
}

/**
 * What one entry of the record says, in words and figures.
 *
 * @param {LogLine} line
 * @param {Step[]} steps
 */
export function lineText(line, steps) {
  const data = line.data;
  if (line.kind === "unread")
    return t("line.unread_" + data.why, {
      kind: tFirst(["kind." + data.said, data.said || "–"]),
    });
  /** @type {Record<string, any>} */
  const values = {
    step: line.step ? own(line.leads_nowhere?.title) || stepName(line.step, steps) : "",
    why: whyWords(data.why ?? ""),
    text: data.text ?? "",
  };
  if (line.kind === "reading_taken") {
    Object.assign(values, {
      what: t("quantity." + data.quantity),
      value: recordedText(data),
    });
  } else if (line.kind === "ingredient_added") {
    Object.assign(values, {
      what: ingredientName(data.ingredient, steps),
      amount: amount(data.amount, data.unit),
    });
  } else if (line.kind === "curd_judged") {
    values.what = t("judgement." + data.judgement);
  } else if (line.kind === "timer_started") {
    Object.assign(values, { label: data.label, span: span(data.lasts_s) });
  } else if (line.kind === "wheels_moulded" || line.kind === "wheel_turned") {
    Object.assign(values, {
      n: data.count ?? "",
      size: data.size ? inside(sizeTitle(data.size)) : "",
    });
  } else if (line.kind === "make_opened") {
    Object.assign(values, {
      name: data.name,
      batch: data.batch,
      milk: amount(data.milk_l, "L"),
      recipe: recipeTitle(data.recipe_id),
    });
    if (data.treatment)
      return t("line.make_opened_as", {
        ...values,
        treatment: inside(t("treatment." + data.treatment)),
      });
  } else if (line.kind === "matter_decided") {
    values.way = t("way." + data.way);
  } else if (line.kind === "treatment_changed") {
    values.treatment = inside(t("treatment." + data.treatment));
  } else if (line.kind === "alert_acknowledged") {
    values.what = String(data.alert).startsWith("caution:")
      ? t("record.caution", { step: stepName(String(data.alert).slice(8), steps) })
      : t("record.alert");
  } else if (line.kind === "cautions_seen") {
    values.what = data.cautions.map(hazardName).join(", ");
    if (!line.step) return t("line.cautions_seen_only", values);
  } else if (line.kind === "equipment_set") {
    Object.assign(values, {
      what: inside(rowLabel(data.key)),
      value: equipmentValue(data, data.value),
      name: data.agreed_with,
    });
    if (data.agreed_with) return t("line.equipment_agreed", values);
  } else if ("mass_kg" in data) {
    Object.assign(values, {
      name: data.name ?? "",
      n: data.wheels ?? "",
      size: data.size ? inside(sizeTitle(data.size)) : "",
      mass: recordedMass(data),
      salt:
        data.salt_frac === undefined ? "" : quantity("brine_salt_frac", data.salt_frac),
    });
  } else if (line.kind === "signed_off") {
    values.text = data.statement;
  }
  const text = t("line." + line.kind, values);
  const lot =
    line.kind === "ingredient_added" && data.lot
      ? ", " + t("add.lot_short", { lot: data.lot })
      : "";
  const why =
    data.why && line.kind.startsWith("step_") ? ` (${whyWords(data.why)})` : "";
  return text + lot + why;
}

/**
 * What one entry says, its figure apart: what, and how much; null where it is words.
 *
 * @param {LogLine} line
 * @param {Step[]} steps
 * @returns {[string, string | null]}
 */
export function lineParts(line, steps) {
  const { kind, data } = line;
  if (kind === "reading_taken")
    return [t("quantity." + data.quantity), recordedText(data)];
  if (kind === "ingredient_added")
    return [
      t("fact.added", { what: ingredientName(data.ingredient, steps) }),
      amount(data.amount, data.unit),
    ];
  return [lineText(line, steps), null];
}

/**
 * What else an entry says, as labels and values: of which wheels, of which lot.
 *
 * @param {LogLine} line
 */
export function lineRows({ kind, data }) {
  if (kind === "ingredient_added") return [[t("fact.lot"), data.lot]];
  if (kind === "reading_taken" && data.place)
    return [[t("fact.size"), sizeTitle(data.place)]];
  return [];
}

/**
 * @param {string} name
 * @param {any} value
 * @param {LogLine} line
 */
function valueText(name, value, line) {
  if (value === null || value === undefined) return "–";
  if (name === "at_ms") return clock(value);
  if (name === "value" && line.kind === "equipment_set")
    return equipmentValue(line.data, value);
  if (name === "value") return readingText(line.data.quantity, value);
  if (name === "amount") return amount(value, line.data.unit);
  if (name === "count") return count(value);
  return typeof value === "number" ? plain(value) : String(value);
}

/**
 * A correction as "field: before → after".
 *
 * @param {Pick<Correction, "set" | "before">} correction
 * @param {LogLine} line
 */
export function setText(correction, line) {
  // How a value was typed is told with the value.
  return Object.entries(correction.set)
    .filter(
      ([name]) =>
        !("value" in correction.set && ["typed", "typed_unit"].includes(name)),
    )
    .map(([name, value]) =>
      t("record.set", {
        field: inside(tFirst(["field." + name])),
        before: valueText(name, correction.before?.[name], line),
        after: valueText(name, value, line),
      }),
    )
    .join("; ");
}
