import { mouldCounts } from "../../parts/mould-counts.js";
import { html } from "../../parts/html.js";
import { Keypad } from "../../parts/keypad.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { act } from "../../parts/acts.js";
import { ask } from "../../parts/source.js";
import { count } from "../../format.js";
import { own, t } from "../../messages/index.js";
import { swap } from "../../router.js";

/**
 * Say how many wheels of one mould size were filled.
 *
 * @param {{make: string, step: Step, size?: string, onBack: () => void}} props
 */
export function MouldSheet({ make, step, size, onBack }) {
  const moulds = step.moulds ?? [];
  const chosen =
    moulds.find((mould) => mould.size === size) ??
    (moulds.length === 1 ? moulds[0] : null);
  if (!chosen) {
    return html`<${Sheet} title=${t("mould.title")} onBack=${onBack}>
      <div class="rows">${moulds.map(
        (mould) => html`<${Row} key=${mould.size} title=${own(mould.title)}
        detail=${mouldCounts(mould)}
        onTap=${() => swap("make", make, "mould", step.key, mould.size)} />`,
      )}</div>
    </${Sheet}>`;
  }
  const left = Math.max(0, (chosen.suggested ?? 0) - (chosen.moulded ?? 0));
  const save = async (/** @type {number} */ value) => {
    const data = { size: chosen.size, count: value, step: step.key };
    const said = t("said.moulded", { n: count(value), size: own(chosen.title) });
    const event = await act("wheels_moulded", { make, data }, said);
    if (event) onBack();
    return Boolean(event);
  };
  return html`<div class="sheet">
    <${Keypad} onBack=${onBack} title=${t("mould.how_many", { size: own(chosen.title) })} unit=${t("mould.wheels")} decimals=${0}
      start=${left ? String(left) : ""}
      hint=${mouldCounts(chosen)}
      read=${(/** @type {string} */ typed) => ask.readField({ kind: "wheels_moulded", field: "count", typed })} save=${save} />
  </div>`;
}
