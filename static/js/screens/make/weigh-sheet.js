import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { readingText } from "../../parts/reading-text.js";
import { clock } from "../../format.js";
import { own, t } from "../../messages/index.js";
import { swap } from "../../router.js";
import { ReadingSheet, useLast } from "./reading-sheet.js";

/** @param {{make: string, mould: Mould, onTap: () => void}} props */
function SizeRow({ make, mould, onTap }) {
  const last = useLast(make, "wheel_mass_kg", mould.size);
  return html`<${Row} title=${own(mould.title)} onTap=${onTap}
    detail=${last ? t("reading.last", { value: readingText("wheel_mass_kg", last.value), at: clock(last.at_ms) }) : t("reading.none")} />`;
}

/**
 * Weigh a wheel: of the step's own size, or of the one that is asked for first.
 *
 * @param {{
 *   make: string, shown: View, step: Step | null, size?: string, onBack: () => void,
 * }} props
 */
export function WeighSheet({ make, shown, step, size, onBack }) {
  const sizes = step?.size ? [step.size] : (shown.make.sizes ?? []);
  const chosen = sizes.length > 1 ? size : sizes[0];
  const rows = shown.make.moulds.filter((mould) => sizes.includes(mould.size));
  if (sizes.length > 1 && !(chosen && sizes.includes(chosen))) {
    return html`<${Sheet} title=${t("mould.title")} onBack=${onBack}>
      <p class="quiet">${t("quantity.wheel_mass_kg")}</p>
      <div class="rows">${rows.map((mould) => html`<${SizeRow} key=${mould.size} make=${make} mould=${mould} onTap=${() => swap("make", make, "reading", step?.key ?? "-", "wheel_mass_kg", mould.size)} />`)}</div>
    </${Sheet}>`;
  }
  return html`<${ReadingSheet} make=${make} step=${step?.key} name="wheel_mass_kg" place=${chosen}
    hint=${own(rows.find((mould) => mould.size === chosen)?.title)} onBack=${onBack} />`;
}
