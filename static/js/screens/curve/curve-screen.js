import { html } from "../../parts/html.js";
import { Sheet } from "../../parts/sheet.js";
import { useCurve } from "../../parts/use-curve.js";
import { t } from "../../messages/index.js";
import { Course } from "./course.js";

/**
 * Temperature and acid of a make against its recipe.
 *
 * @param {{make: string, view: View, onBack: () => void}} props
 */
export function CurveScreen({ make, view, onBack }) {
  const { curve, problem } = useCurve(make, view.now_ms);
  const isOver = !view.make.is_open;
  return html`<${Sheet} title=${t("curve.title")} onBack=${onBack}>
    <p class="quiet">${t("fact.name_batch", view.make)}</p>
    ${problem ? html`<p class="is-bad" role="alert">${problem}</p>` : null}
    ${problem ? null : curve ? html`<${Course} curve=${curve} isOver=${isOver} />` : html`<p class="lead">${t("curve.loading")}</p>`}
  </${Sheet}>`;
}
