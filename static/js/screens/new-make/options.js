import { useEffect, useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Choices, Row, Sheet } from "../../parts/sheet.js";
import { ask } from "../../parts/source.js";
import { own, t } from "../../messages/index.js";

/** @type {RecipeChoice[]} */
const NONE = [];
const LATER = ""; // no option: the step that begins first chooses

/**
 * The choices of a recipe, such as coat or wax, and which way each is meant to go: the
 * recipe's usual one until somebody says otherwise.
 *
 * @param {Recipe | null} recipe
 * @param {Treatment | null} treatment
 */
export function useOptions(recipe, treatment) {
  const [choices, setChoices] = useState(NONE);
  const [chosen, setChosen] = useState(/** @type {Record<string, string>} */ ({}));
  useEffect(() => {
    let isCurrent = true;
    const learn = (/** @type {RecipeChoice[]} */ found) => {
      if (!isCurrent) return;
      setChoices(found);
      setChosen(
        Object.fromEntries(found.map((one) => [one.choice, one.options[0].option])),
      );
    };
    setChoices(NONE);
    setChosen({});
    if (recipe && treatment) ask.options({ recipe, treatment }).then(learn, () => {});
    return () => {
      isCurrent = false;
    };
  }, [recipe, treatment]);
  return {
    choices,
    chosen,
    take: (/** @type {string} */ choice, /** @type {string} */ option) =>
      setChosen({ ...chosen, [choice]: option }),
  };
}

/**
 * What an opening says of the choices: those that are left to a step are left out.
 *
 * @param {Record<string, string>} chosen
 */
export function optionsSaid(chosen) {
  return Object.fromEntries(
    Object.entries(chosen).filter(([, option]) => option !== LATER),
  );
}

/** @param {RecipeChoice} choice @param {string | undefined} option */
function optionTitle(choice, option) {
  const found = choice.options.find((one) => one.option === option);
  return found ? own(found.title) : t("option.later");
}

/**
 * @param {{
 *   choices: RecipeChoice[], chosen: Record<string, string>,
 *   onOpen: (choice: string) => void,
 * }} props
 */
export function OptionRows({ choices, chosen, onOpen }) {
  return choices.map(
    (
      choice,
    ) => html`<${Row} key=${choice.choice} title=${optionTitle(choice, chosen[choice.choice])}
    detail=${t("option.detail")} side=${t("word.change")} onTap=${() => onOpen(choice.choice)} />`,
  );
}

/**
 * @param {{
 *   choice: RecipeChoice, chosen: string, onChoose: (option: string) => void,
 *   onBack: () => void,
 * }} props
 */
export function OptionSheet({ choice, chosen, onChoose, onBack }) {
  const title = t("option.title");
  const options = choice.options.map((one, index) => ({
    key: one.option,
    title: own(one.title),
    detail: index === 0 ? t("option.usual") : "",
  }));
  const later = {
    key: LATER,
    title: t("option.later"),
    detail: t("option.later_means"),
  };
  return html`<${Sheet} title=${title} onBack=${onBack}>
    <${Choices} label=${title} chosen=${chosen} onChoose=${onChoose} options=${[...options, later]} />
  </${Sheet}>`;
}
