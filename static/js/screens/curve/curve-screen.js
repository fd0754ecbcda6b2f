import { useEffect, useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Sheet } from "../../parts/sheet.js";
import { whyOf } from "../../parts/acts.js";
import { ask, core, get } from "../../parts/source.js";
import { t } from "../../messages/index.js";
import { Course } from "./course.js";

/**
 * A phone lets go of finished makes after a while; the server keeps them all.
 *
 * @param {string} make
 * @returns {Promise<Curve>}
 */
async function curveOf(make) {
  const mine = await ask.curve({ make }).catch(() => null);
  return mine ?? get(`/makes/${make}/curve`);
}

/**
 * @param {string} make
 * @param {number} changedMs
 */
function useCurve(make, changedMs) {
  const [state, setState] = useState({
    curve: /** @type {Curve | null} */ (null),
    problem: "",
  });
  const isStarting = core.value === "starting";
  useEffect(() => {
    if (isStarting) return undefined; // until it has its entries it knows no make
    let isCurrent = true;
    curveOf(make).then(
      (curve) => isCurrent && setState({ curve, problem: "" }),
      (failure) => isCurrent && setState({ curve: null, problem: whyOf(failure) }),
    );
    return () => {
      isCurrent = false;
    };
  }, [make, changedMs, isStarting]);
  return state;
}

/**
 * Temperature and acid of a make against its recipe.
 *
 * @param {{make: string, view: View, onBack: () => void}} props
 */
export function CurveScreen({ make, view, onBack }) {
  const { curve, problem } = useCurve(make, view.now_ms);
  const isOver = !view.make.is_open;
  return html`<${Sheet} title=${t("curve.title")} onBack=${onBack}>
    <p class="quiet">${view.make.name} · ${t("make.batch", { batch: view.make.batch })}</p>
    ${problem ? html`<p class="is-bad" role="alert">${problem}</p>` : null}
    ${curve ? html`<${Course} curve=${curve} isOver=${isOver} />` : problem ? null : html`<p class="lead">${t("curve.loading")}</p>`}
  </${Sheet}>`;
}
