import { useEffect, useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Choices, Sheet } from "../../parts/sheet.js";
import { ask } from "../../parts/source.js";
import { t } from "../../messages/index.js";

/** @type {Treatment[]} */
const NONE = [];

/**
 * How the milk of a recipe may be treated, and which way was chosen: nobody is led
 * into one without a tap, unless the recipe knows no other.
 *
 * @param {Recipe | null} recipe
 */
export function useTreatment(recipe) {
  const [known, setKnown] = useState({
    recipe: /** @type {Recipe | null} */ (null),
    treatments: NONE,
    chosen: /** @type {Treatment | null} */ (null),
  });
  useEffect(() => {
    let isCurrent = true;
    const learn = (/** @type {Treatment[]} */ treatments) => {
      const chosen = treatments.length === 1 ? treatments[0] : null;
      if (isCurrent) setKnown({ recipe, treatments, chosen });
    };
    if (recipe) ask.treatments({ recipe }).then(learn, () => {});
    return () => {
      isCurrent = false;
    };
  }, [recipe]);
  const isOf = known.recipe === recipe;
  return {
    treatments: isOf ? known.treatments : NONE,
    treatment: isOf ? known.chosen : null,
    choose: (/** @type {Treatment} */ chosen) => setKnown({ ...known, chosen }),
  };
}

/**
 * The choice that a make begins with, the usual way first.
 *
 * @param {{
 *   treatments: Treatment[], chosen: Treatment | null,
 *   onChoose: (treatment: Treatment) => void, onBack: () => void,
 * }} props
 */
export function TreatmentSheet({ treatments, chosen, onChoose, onBack }) {
  const title = t("treat.choose");
  return html`<${Sheet} title=${title} onBack=${onBack}>
    <${Choices} label=${title} chosen=${chosen} onChoose=${onChoose}
      options=${treatments.map((key, index) => ({
        key,
        title: t(index === 0 ? "treat.usual" : "treat.other", {
          treatment: t("treatment." + key),
        }),
        detail: t("treat.means." + key),
      }))} />
  </${Sheet}>`;
}
