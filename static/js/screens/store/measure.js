import { useMemo } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { act } from "../../parts/acts.js";
import { may } from "../../parts/people-names.js";
import { recordedText } from "../../parts/reading-text.js";
import { quantity } from "../../format.js";
import { t } from "../../messages/index.js";
import { go, swap } from "../../router.js";
import { useAnswer, useSum } from "../sums/catalogue.js";
import { clearGiven, give, givenIn } from "../sums/given.js";
import { SumSheet } from "../sums/sheet.js";

const KEY = "brine_strength";
// What is read off the instrument of each way of measuring.
/** @type {Record<string, string>} */
const READ = {
  density: "density_kg_m3",
  baume: "baume",
  salometer: "salometer",
  g_l: "salt_g_l",
  g_kg_water: "salt_g_kg_water",
  titration: "silver_ml",
};

/** @param {{sum: SumRow, tank: Tank, input?: string, onBack: () => void}} props */
function Measure({ sum, tank, input, onBack }) {
  const scope = `${tank.id}/${KEY}`;
  const typed = givenIn(scope);
  const tempC = tank.temp_c;
  const given = useMemo(
    () =>
      tempC === null
        ? typed
        : { brine_temp_c: { typed: String(tempC), unit: "C" }, ...typed },
    [typed, tempC],
  );
  const known =
    tempC === null
      ? []
      : [{ name: "brine_temp_c", value: tempC, unit: "C", from: "tank" }];
  const answer = useAnswer(KEY, given);
  const salt =
    answer?.values.find((figure) => figure.name === "brine_salt_frac") ?? null;
  const keep = async () => {
    if (!salt) return;
    const value = salt.value;
    const read = typed[READ[typed.method?.value ?? ""]];
    const data = {
      quantity: "brine_salt_frac",
      value,
      ...(read ? { typed: read.typed, typed_unit: read.unit } : {}),
    };
    const said = t("said.reading", {
      what: t("quantity.brine_salt_frac"),
      value: recordedText(data),
    });
    const event = await act("reading_taken", { make: tank.id, data }, said);
    if (event) {
      clearGiven(scope);
      onBack();
    }
  };
  const foot =
    salt && may("reading_taken")
      ? html`<${Tap} class="primary" onTap=${keep}>${t("store.measure_keep", { salt: quantity("brine_salt_frac", salt.value) })}</${Tap}>`
      : null;
  return html`<${SumSheet} sum=${sum} scope=${scope} answer=${answer} given=${typed} known=${known} input=${input} title=${t("store.measure")} lead=${t("store.measure_lead")} foot=${foot}
    onInput=${(/** @type {string | null} */ name) => (name ? go("store", "tank", tank.id, "measure", name) : swap("store", "tank", tank.id, "measure"))}
    onGive=${(/** @type {string} */ name, /** @type {SumGiven | null} */ value) => give(scope, name, value)} onClear=${() => clearGiven(scope)} onBack=${onBack} />`;
}

/**
 * Measure a tank's strength by any scale, and keep the answer as its reading.
 *
 * @param {{tank: Tank, input?: string, onBack: () => void}} props
 */
export function MeasureSheet({ tank, input, onBack }) {
  const sum = useSum(KEY);
  if (!sum)
    return html`<${Sheet} title=${t("store.measure")} onBack=${onBack}><p class="lead">${t("sums.loading")}</p></${Sheet}>`;
  return html`<${Measure} sum=${sum} tank=${tank} input=${input} onBack=${onBack} />`;
}
