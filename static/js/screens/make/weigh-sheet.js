import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { readingText } from "../../parts/reading-text.js";
import { clock } from "../../format.js";
import { own, t } from "../../messages/index.js";
import { swap } from "../../router.js";
import { padOf, ReadingSheet, useLast } from "./reading-sheet.js";

const NAME = "wheel_mass_kg";

/** @param {{make: string, mould: Mould, onTap: () => void}} props */
function SizeRow({ make, mould, onTap }) {
  const last = useLast(make, NAME, mould.size);
  return html`<${Row} title=${own(mould.title)} onTap=${onTap}
    detail=${last ? t("reading.last", { value: readingText(NAME, last.value), at: clock(last.at_ms) }) : t("reading.none")} />`;
}

/**
 * Weigh one wheel after another: of the step's own size, or of the one that is asked
 * for first.
 *
 * @param {{
 *   make: string, shown: View, step: Step | null, size?: string, n?: string,
 *   onBack: () => void,
 * }} props n: how many were weighed here just before
 */
export function WeighSheet({ make, shown, step, size, n = "0", onBack }) {
  const sizes = step?.size ? [step.size] : (shown.make.sizes ?? []);
  const chosen = sizes.length > 1 ? size : sizes[0];
  const rows = shown.make.moulds.filter((mould) => sizes.includes(mould.size));
  const at = ["make", make, "reading", step?.key ?? "-", NAME];
  if (sizes.length > 1 && !(chosen && sizes.includes(chosen))) {
    return html`<${Sheet} title=${t("mould.title")} onBack=${onBack}>
      <p class="quiet">${t("quantity.wheel_mass_kg")}</p>
      <div class="rows">${rows.map((mould) => html`<${SizeRow} key=${mould.size} make=${make} mould=${mould} onTap=${() => swap(...at, mould.size)} />`)}</div>
    </${Sheet}>`;
  }
  const weighed = Number(n);
  const title = own(rows.find((mould) => mould.size === chosen)?.title);
  // The next size that lacks one follows; else it is done.
  const other = step?.pads?.find(
    (pad) => pad.is_due && pad.quantity === NAME && pad.size && pad.size !== chosen,
  );
  const further = () => (other?.size ? swap(...at, other.size) : onBack());
  return html`<${ReadingSheet} make=${make} step=${step?.key} name=${NAME} place=${chosen}
    title=${t("weigh.wheel", { size: title, n: weighed + 1 })} pad=${padOf(step, NAME, chosen)}
    target=${step?.targets.find((one) => one.quantity === NAME && one.size === (chosen ?? null))}
    onSaved=${() => swap(...at, chosen ?? "-", String(weighed + 1))} onBack=${onBack}
    aside=${weighed ? html`<${Tap} class="second tall" onTap=${further}>${t("weigh.done")}</${Tap}>` : null} />`;
}
