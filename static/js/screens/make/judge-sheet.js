import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Choices, Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { act } from "../../parts/acts.js";
import { t } from "../../messages/index.js";
import { lastJudgement } from "./curd.js";

/**
 * Judge the curd: one look, one of the recipe's words.
 *
 * @param {{make: string, step: Step & {judge: Judge}, onBack: () => void}} props
 */
export function JudgeSheet({ make, step, onBack }) {
  const [chosen, setChosen] = useState(/** @type {string | null} */ (null));
  const options = step.judge.choices.map((key) => ({
    key,
    title: t("judgement." + key),
    detail: t("judgement_how." + key),
  }));
  const save = async () => {
    const data = { judgement: chosen, step: step.key };
    const event = await act(
      "curd_judged",
      { make, data },
      t("said.judged", { what: t("judgement." + chosen) }),
    );
    if (event) onBack();
  };
  return html`<${Sheet} title=${t("judge.title")} onBack=${onBack}
    foot=${html`<${Tap} class="primary" disabled=${!chosen} onTap=${save}>${t("judge.save")}</${Tap}>`}>
    <p class="quiet">${lastJudgement(step.judge)}</p>
    <${Choices} label=${t("judge.title")} options=${options} chosen=${chosen} onChoose=${setChosen} />
  </${Sheet}>`;
}
