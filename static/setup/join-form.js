// The way into the creamery, with what is wrong said beside the field.

import { askToJoin, keepJoined } from "/js/data/join.js";
import { faultOf, isOwnersCode } from "/js/data/join-faults.js";
import { el } from "./dom.js";
import { language, t } from "./texts.js";

/**
 * @typedef {object} Form
 * @property {string} code
 * @property {string} name
 * @property {string} device
 * @property {{field: string, says: string, values?: Record<string, any>} | null} fault
 * @property {boolean} isBusy
 * @property {boolean} wantsName
 */

/**
 * What is typed, kept while the page is painted anew.
 *
 * @param {string} code
 * @param {string} device
 * @returns {Form}
 */
export function newForm(code, device) {
  return {
    code,
    name: "",
    device,
    fault: null,
    isBusy: false,
    wantsName: isOwnersCode(code),
  };
}

/**
 * @param {Form} form
 * @param {"code" | "name" | "device"} key
 * @param {number} longest
 */
function fieldOf(form, key, longest) {
  const fault = form.fault && form.fault.field === key ? form.fault : null;
  const input = el("input", {
    id: "field-" + key,
    class: "text-field",
    type: "text",
    maxlength: String(longest),
    autocomplete: "off",
    autocapitalize: key === "code" ? "characters" : "sentences",
    spellcheck: "false",
    "aria-describedby": fault ? "fault-" + key : "hint-" + key,
    "aria-invalid": fault ? "true" : null,
  });
  input.value = form[key];
  input.addEventListener("input", () => {
    form[key] = input.value;
  });
  return el(
    "div",
    { class: "field" },
    el("label", { for: "field-" + key }, t("join." + key)),
    // Above the field: below it lies the keyboard.
    fault &&
      el(
        "p",
        { class: "fault", id: "fault-" + key, role: "alert" },
        t(fault.says, fault.values),
      ),
    input,
    el("p", { class: "hint", id: "hint-" + key }, t("join." + key + "_hint")),
  );
}

/**
 * The fields, in the order in which they are filled in.
 *
 * @param {Form} form
 */
export function fieldsOf(form) {
  return [
    fieldOf(form, "code", 80),
    form.wantsName && fieldOf(form, "name", 60),
    fieldOf(form, "device", 60),
  ];
}

/** @param {Form} form */
async function ask(form) {
  /** @type {{device_name: string, person_name?: string}} */
  const names = { device_name: form.device.trim() || t("join.android") };
  if (form.name.trim()) names.person_name = form.name.trim();
  const mine = await askToJoin(form.code.trim(), names);
  await keepJoined(mine, language());
}

/**
 * Join; resolves with true when the phone is in.
 *
 * @param {Form} form told what is wrong
 * @param {() => void} paint called whenever the form has changed
 */
export async function join(form, paint) {
  form.fault = form.code.trim() ? null : { field: "code", says: "error.code_missing" };
  if (form.fault || form.isBusy) return stop(form, paint);
  form.isBusy = true;
  paint();
  try {
    await ask(form);
    return true;
  } catch (failure) {
    const fault = faultOf(/** @type {any} */ (failure));
    form.fault = fault;
    form.wantsName = form.wantsName || fault.field === "name";
  }
  form.isBusy = false;
  return stop(form, paint);
}

/**
 * @param {Form} form
 * @param {() => void} paint
 */
function stop(form, paint) {
  paint();
  const wrong = form.fault && document.getElementById("field-" + form.fault.field);
  if (wrong) {
    wrong.focus({ preventScroll: true });
    wrong.parentElement?.scrollIntoView({ block: "center" });
  }
  return false;
}
