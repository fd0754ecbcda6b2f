import { html } from "./html.js";
import { Tap } from "./tap.js";
import { act } from "./acts.js";
import { nameOf, tapper } from "./people-names.js";
import { people, roleMay } from "./source.js";
import { clock } from "../format.js";
import { t } from "../messages/index.js";

/**
 * @param {?Task} task
 * @returns {Holder[]}
 */
function holders(task) {
  return task ? [task, ...task.others] : [];
}

/** @param {Holder} holder */
function nameIn(holder) {
  return holder.by === tapper()?.id ? t("task.you") : nameOf(holder.by);
}

/** @param {?Task} task */
function holding(task) {
  return holders(task).find((holder) => holder.by === tapper()?.id);
}

/**
 * Who has a step in hand, in one line; '' when nobody has.
 *
 * @param {?Task} task
 */
export function taskWords(task) {
  if (!task) return "";
  const all = holders(task);
  if (all.length > 1) return t("task.both", { names: all.map(nameIn).join(", ") });
  if (task.stale) return t("task.stale", { name: nameIn(task), at: clock(task.at_ms) });
  if (task.from?.by === tapper()?.id)
    return t("task.from_you", { name: nameOf(task.by), at: clock(task.at_ms) });
  return holding(task) ? t("task.mine") : t("task.by", { name: nameOf(task.by) });
}

/**
 * The same as an element: what can hardly be true any more looks old.
 *
 * @param {{task: ?Task}} props
 */
export function TaskWords({ task }) {
  const said = taskWords(task);
  return said
    ? html`<span class=${holders(task).every((holder) => holder.stale) ? "task-words is-old" : "task-words"}>${said}</span>`
    : null;
}

/** True where more than one person does the work: else nobody needs to ask. */
export function sharesWork() {
  return people.value.filter((person) => roleMay(person.role, "work")).length > 1;
}

/**
 * Take a step in one tap, leave it, or take it over from who has it.
 *
 * @param {{make: string, step: string, task: ?Task, class?: string}} props
 */
export function TaskButton({ make, step, task, class: name = "second" }) {
  const mine = holding(task);
  const word = mine ? "task.release" : task ? "task.over" : "task.take";
  const onTap = () =>
    act(
      mine ? "task_released" : "task_taken",
      {
        make,
        data: { step },
        ref: mine ? mine.id : (task?.id ?? null),
      },
      t(mine ? "said.task_released" : "said.task_taken"),
    );
  return html`<${Tap} class=${name} onTap=${onTap}>${t(word)}</${Tap}>`;
}

/**
 * The line of a step that says who has it, with the one tap that changes it.
 *
 * @param {{make: string, step: Step, canAct: boolean}} props
 */
export function TaskLine({ make, step, canAct }) {
  if (!step.is_open || !(step.task || (canAct && sharesWork()))) return null;
  return html`<div class="task-line"><${TaskWords} task=${step.task} />
    ${canAct ? html`<${TaskButton} make=${make} step=${step.key} task=${step.task} />` : null}</div>`;
}
