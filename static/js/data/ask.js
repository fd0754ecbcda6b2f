// Every question that the page may put to the core, and what it answers. The core
// decides; what is asked "now" is asked at the server's time.

import { call } from "../core/bridge.js";
import { nowMs, tzMin } from "./clock.js";

/** @typedef {{value: any, problems: Problem[], ask: any}} Read what was typed, as it is meant */

/** @param {string} name @param {Record<string, any>} [named] */
function ofDesk(name, named) {
  return call(name, named, { desk: true });
}

// Makes

/**
 * Give entries to the core.
 *
 * @param {{events: Recorded[]}} asked
 * @returns {Promise<{changed: string[], problems: {id: string | null, why: any}[]}>}
 */
export function take({ events }) {
  return ofDesk("take", { events });
}

/**
 * Check an entry, take it, and answer with the view of a make, all in one question.
 *
 * @param {{event: Recorded, roles: string[], make: string, reader: Reader | null}} asked
 *   make: "" for none; reader: who is to see the cautions of the steps at hand
 * @returns {Promise<{problems: Problem[], view: View | null}>}
 */
export function tap({ event, roles, make, reader }) {
  return ofDesk("tap", { event, roles, make_id: make, now_ms: nowMs(), reader });
}

/**
 * A make as it stands; null where the phone holds nothing of it.
 *
 * @param {{make: string, reader?: Reader | null}} asked reader: as for `tap`
 * @returns {Promise<View | null>}
 */
export function view({ make, reader = null }) {
  return ofDesk("view", { make_id: make, now_ms: nowMs(), reader });
}

/**
 * One step in full.
 *
 * @param {{make: string, step: string}} asked
 * @returns {Promise<Step | null>}
 */
export function step({ make, step: key }) {
  return ofDesk("step", { make_id: make, key, now_ms: nowMs() });
}

/**
 * What a step adds of an ingredient if it comes from the lot in hand.
 *
 * @param {{make: string, step: string, ingredient: string, lot: string}} asked
 * @returns {Promise<Add | null>}
 */
export function addFromLot({ make, step: key, ingredient, lot }) {
  return ofDesk("add_from_lot", {
    make_id: make,
    key,
    ingredient,
    lot,
    now_ms: nowMs(),
  });
}

/**
 * The course of a make over time.
 *
 * @param {{make: string}} asked
 * @returns {Promise<Curve | null>}
 */
export function curve({ make }) {
  return ofDesk("curve", { make_id: make, now_ms: nowMs() });
}

/**
 * Every entry of a make or tank, oldest first.
 *
 * @param {{make: string}} asked
 * @returns {Promise<LogLine[]>}
 */
export function record({ make }) {
  return ofDesk("record", { make_id: make });
}

// The creamery

/** @returns {Promise<Board>} */
export function board() {
  return ofDesk("board", { now_ms: nowMs(), tz_min: tzMin(nowMs()) });
}

/**
 * What a make opened at an instant would clash with.
 *
 * @param {{recipe: Recipe, treatment: Treatment, startMs: number}} asked
 * @returns {Promise<ClashesIf>}
 */
export function clashesIf({ recipe, treatment, startMs }) {
  return ofDesk("clashes_if", {
    recipe,
    treatment,
    start_ms: startMs,
    now_ms: nowMs(),
  });
}

/**
 * The charts of one recipe over its makes.
 *
 * @param {{recipe: string}} asked
 * @returns {Promise<Chart[]>}
 */
export function trends({ recipe }) {
  return ofDesk("trends", { recipe_id: recipe });
}

// Opening a make

/**
 * Whether so much milk fits a recipe, and the wheels that it should give.
 *
 * @param {{recipe: Recipe, milkL: number}} asked
 * @returns {Promise<{ask: Problem | null, moulds: {size: string, count: number}[]}>}
 */
export function suggestion({ recipe, milkL }) {
  return call("suggestion", { recipe, milk_l: milkL });
}

/**
 * How the milk of a recipe may be treated, its usual way first.
 *
 * @param {{recipe: Recipe}} asked
 * @returns {Promise<Treatment[]>}
 */
export function treatments({ recipe }) {
  return call("treatments", { recipe });
}

/**
 * The choices of a recipe on one route, such as coat or wax; its usual option of each
 * first.
 *
 * @param {{recipe: Recipe, treatment: Treatment}} asked
 * @returns {Promise<RecipeChoice[]>}
 */
export function options({ recipe, treatment }) {
  return call("options", { recipe, treatment });
}

/**
 * A batch code for a make opened now, which no make known here has.
 *
 * @returns {Promise<string>}
 */
export function batchCode() {
  return ofDesk("batch_code", { now_ms: nowMs(), tz_min: tzMin(nowMs()) });
}

/** @returns {Promise<string[]>} */
export function vats() {
  return ofDesk("vats");
}

/**
 * What a make in this vat begins with; "" where no vat is named.
 *
 * @param {{vat: string}} asked
 * @returns {Promise<EquipmentBefore | null>}
 */
export function equipmentBefore({ vat }) {
  return ofDesk("equipment_before", { vat });
}

/**
 * @param {{make: string}} asked
 * @returns {Promise<Equipment>}
 */
export function equipmentOf({ make }) {
  return ofDesk("equipment_of_make", { make_id: make });
}

/**
 * @param {{equipment: Equipment, edits: Record<string, EquipmentSet | null>}} asked
 *   edits: by name; null takes it out
 * @returns {Promise<EquipmentAltered>}
 */
export function alterEquipment({ equipment, edits }) {
  return call("alter_equipment", { equipment, edits });
}

/** @returns {Promise<EquipmentRow[]>} */
export function equipmentRows() {
  return call("equipment_rows");
}

/**
 * Read what was typed for one thing that the creamery has.
 *
 * @param {{name: string, given: SumGiven}} asked
 * @returns {Promise<Read>}
 */
export function readEquipment({ name, given }) {
  return call("read_equipment", { key: name, given });
}

// Entries

/**
 * Read a number typed for a field of an entry.
 *
 * @param {{kind: string, field: string, typed: string, unit?: string, kept?: string}} asked
 *   unit: typed in; kept: unit of the field
 * @returns {Promise<Read>}
 */
export function readField({ kind, field, typed, unit = "", kept = "" }) {
  return call("read_field", { kind, field, typed, unit, kept });
}

/**
 * What speaks against a correction of an entry.
 *
 * @param {{make: string, entry: string, set: Record<string, any>}} asked
 * @returns {Promise<Problem[]>}
 */
export function checkCorrection({ make, entry, set }) {
  return ofDesk("check_correction", { make_id: make, ref: entry, changes: set });
}

/**
 * What may be changed of an entry, and by whom.
 *
 * @param {{make: string, entry: string, hand: Hand}} asked
 * @returns {Promise<Changeable>}
 */
export function changeable({ make, entry, hand }) {
  return ofDesk("changeable", { make_id: make, entry, hand });
}

/**
 * @param {{pin: string}} asked
 * @returns {Promise<Problem[]>}
 */
export function checkPin({ pin }) {
  return call("check_pin", { pin });
}

/**
 * The roles that may do each thing: record a kind of entry, or what is no entry.
 *
 * @returns {Promise<Record<string, Role[]>>}
 */
export function rights() {
  return call("rights");
}

/**
 * Whose word an act asks for; about: kind of the entry that it changes.
 *
 * @param {{kind: string, about: string | null}} asked
 * @returns {Promise<"person" | "phone" | null>}
 */
export function proofFor({ kind, about }) {
  return call("proof_for", { kind, about });
}

// What was typed

/**
 * Read what was typed for a quantity; unit "" is the quantity's own.
 *
 * @param {{quantity: string, typed: string, unit: string}} asked
 * @returns {Promise<Read>}
 */
export function readTyped({ quantity, typed, unit }) {
  return call("read_typed", { quantity, typed, typed_unit: unit });
}

/**
 * Read a reading that is typed now, compared with the one before it and what is wanted.
 *
 * @param {{make: string, quantity: string, typed: string, unit: string,
 *   size?: string | null}} asked size: of the wheel that is weighed or analysed
 * @returns {Promise<Read>}
 */
export function readReading({ make, quantity, typed, unit, size = null }) {
  return ofDesk("read_reading", {
    make_id: make,
    quantity,
    typed,
    typed_unit: unit,
    size,
    now_ms: nowMs(),
  });
}

/**
 * What a new reading is compared with.
 *
 * @param {{make: string, quantity: string, size?: string | null}} asked
 * @returns {Promise<LastValue | null>}
 */
export function lastReading({ make, quantity, size = null }) {
  return ofDesk("last_reading", { make_id: make, quantity, size });
}

// Sums

/** @returns {Promise<SumTopic[]>} */
export function sumsTopics() {
  return ofDesk("sums_topics");
}

/**
 * @param {{topic: string}} asked
 * @returns {Promise<SumRow[]>}
 */
export function sumsCatalogue({ topic }) {
  return ofDesk("sums_catalogue", { topic });
}

/**
 * The answer to a sum of no make.
 *
 * @param {{sum: string, given: Record<string, SumGiven>}} asked
 * @returns {Promise<Answer>}
 */
export function sum({ sum: key, given }) {
  return ofDesk("sum", { key, given });
}

/**
 * The answers to the sums of a step, what the make knows filled in.
 *
 * @param {{make: string, step: string, given?: Record<string, SumGiven>}} asked
 * @returns {Promise<Answer[]>}
 */
export function stepSums({ make, step: key, given = {} }) {
  return ofDesk("step_sums", { make_id: make, step_key: key, now_ms: nowMs(), given });
}

// The cellar

/** @returns {Promise<Tank[]>} */
export function tanks() {
  return ofDesk("tanks", { now_ms: nowMs() });
}

/**
 * Read a mass typed for an entry of a tank, by volume too where its strength is known.
 *
 * @param {{kind: string, typed: string, unit: string, saltFrac?: number | null,
 *   tempC?: number | null, beforeKg?: number | null}} asked beforeKg: of the same wheels
 * @returns {Promise<Read>}
 */
export function readMass({ kind, typed, unit, saltFrac, tempC, beforeKg }) {
  return call("read_mass", {
    kind,
    typed,
    unit,
    salt_frac: saltFrac ?? 0,
    temp_c: tempC ?? null,
    before_kg: beforeKg ?? null,
  });
}

// Alarms

/**
 * All that rings and will.
 *
 * @param {{escalateS: number}} asked
 * @returns {Promise<Alarms>}
 */
export function alarms({ escalateS }) {
  return ofDesk("alarms", { now_ms: nowMs(), escalate_s: escalateS });
}

/**
 * What is to be heard now, by a real clock.
 *
 * @param {{alarms: Alarm[], memory: RingMemory, realMs: number}} asked
 * @returns {Promise<Ring & {memory: RingMemory}>}
 */
export function sounding({ alarms: standing, memory, realMs }) {
  return call("sounding", { alarms: standing, memory, real_ms: realMs });
}
