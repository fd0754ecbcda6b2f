import { own, t } from "../messages/index.js";

/**
 * A step's title, with its round where it has several: "Stir the curd (1 of 2)".
 *
 * @param {{title: Words, round?: ?number, rounds?: ?number}} step
 */
export function stepTitle(step) {
  const title = own(step.title);
  return step.rounds
    ? t("step.title_round", { title, n: step.round, total: step.rounds })
    : title;
}
