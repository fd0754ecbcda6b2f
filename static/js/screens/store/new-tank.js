import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { TextField } from "../../parts/text-field.js";
import { act, problemsText, whyOf } from "../../parts/acts.js";
import { ask, nowMs, uuid7 } from "../../parts/source.js";
import { quantity, typedFrom, typedValue } from "../../format.js";
import { t } from "../../messages/index.js";
import { swap } from "../../router.js";
import { draftOf, keepDraft } from "../sums/given.js";
import { AmountPad, MASSES, StrengthPad, VOLUMES, typedData } from "./pads.js";

/** @import { Typed } from "./pads.js" */
/** @typedef {{name: string, salt: number | null, amount: Typed | null}} Told */

/** @type {[string, string]} */
const SCOPE = ["store", "new"];

/**
 * Open a brine tank: its name, how strong it is, what is in it by mass or by volume.
 *
 * @param {{onBack: () => void}} props
 */
export function NewTank({ onBack }) {
  const [told, setTold] = useState(
    () =>
      /** @type {Told} */ (draftOf(...SCOPE) ?? { name: "", salt: null, amount: null }),
  );
  const [pad, setPad] = useState(/** @type {"salt" | "amount" | null} */ (null));
  const [problem, setProblem] = useState("");
  const close = () => setPad(null);
  // Kept for the visit: a wet drop on Back loses nothing.
  const tell = (/** @type {Partial<Told>} */ change) => {
    const next = { ...told, ...change };
    keepDraft(...SCOPE, next);
    setTold(next);
    close();
    return true;
  };
  if (pad === "salt")
    return html`<${StrengthPad} start=${typedFrom("brine_salt_frac", told.salt)} onBack=${close} onSave=${async (/** @type {number} */ salt) => tell({ salt })} />`;
  if (pad === "amount") {
    return html`<${AmountPad} kind="tank_opened" name="tank" title=${t("store.mass")} units=${told.salt === null ? MASSES : [...MASSES, ...VOLUMES]} saltFrac=${told.salt ?? 0}
      begun=${told.amount} saveWord=${t("word.done")} onBack=${close} onSave=${async (/** @type {number} */ kg, /** @type {Typed} */ amount) => tell({ amount })} />`;
  }
  const open = async () => {
    const { salt, amount } = told;
    if (salt === null || !amount) return;
    try {
      const kind = "tank_opened";
      const { value, problems } = await ask.readMass({
        kind,
        ...amount,
        saltFrac: salt,
      });
      if (value === null) return setProblem(problemsText(problems));
      const data = {
        name: told.name.trim(),
        mass_kg: value,
        salt_frac: salt,
        ...typedData(amount),
      };
      const tank = uuid7(nowMs());
      const event = await act(
        "tank_opened",
        { make: tank, data },
        t("said.tank_opened", { name: data.name }),
      );
      if (!event) return;
      keepDraft(...SCOPE, null);
      swap("store", "tank", tank);
    } catch (failure) {
      setProblem(whyOf(failure));
    }
  };
  const isReady = told.name.trim() !== "" && told.amount && told.salt !== null;
  return html`<${Sheet} title=${t("store.new_title")} onBack=${onBack}
    foot=${html`<${Tap} class="primary" disabled=${!isReady} onTap=${open}>${t("store.open_do")}</${Tap}>`}>
    <${TextField} label=${t("store.name")} hint=${t("store.name_hint")} value=${told.name} onInput=${(/** @type {string} */ name) => tell({ name })} longest=${80} />
    <div class="rows">
      <${Row} title=${t("store.salt")} side=${told.salt === null ? t("sums.needed") : quantity("brine_salt_frac", told.salt)} onTap=${() => setPad("salt")} />
      <${Row} title=${t("store.mass")} detail=${told.salt === null ? t("store.mass_after") : t("store.mass_detail")}
        side=${told.amount ? typedValue(told.amount.typed, told.amount.unit) : t("sums.needed")} onTap=${() => setPad("amount")} />
    </div>${problem ? html`<p class="is-bad" role="alert">${problem}</p>` : null}</${Sheet}>`;
}
