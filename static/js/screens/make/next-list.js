import { html } from "../../parts/html.js";
import { Row } from "../../parts/sheet.js";
import { StateMark } from "../../parts/state-mark.js";
import { clock, clockDay } from "../../format.js";
import { own, t } from "../../messages/index.js";
import { go } from "../../router.js";
import { chooseStep } from "../../parts/chosen.js";

const SHOWN = 3;

/**
 * Beneath the step: what could begin, although a later step runs.
 *
 * @param {{make: string, view: View, step: Step | null}} props
 */
export function LeftOpen({ make, view, step }) {
  const left = view.steps.filter(
    (other) => view.left_open?.includes(other.key) && other.key !== step?.key,
  );
  if (left.length === 0) return null;
  return html`<div class="rows left-open">${left.map(
    (
      other,
    ) => html`<${Row} key=${other.key} title=${t("make.left_open", { step: own(other.title) })}
    detail=${t("make.left_open_detail")} onTap=${() => chooseStep(make, other.key)} />`,
  )}</div>`;
}

/**
 * The next few steps, and the way to the whole list.
 *
 * @param {{make: string, view: View, step: Step | null}} props
 */
export function NextList({ make, view, step }) {
  const next = view.steps.filter(
    (other) =>
      other.key !== step?.key &&
      !view.left_open?.includes(other.key) &&
      (other.status === "ready" || other.status === "waiting"),
  );
  return html`<section class="block"><h2>${t("block.next")}</h2>
    <div class="rows">
      ${next.slice(0, SHOWN).map(
        (other) => html`<${Row} key=${other.key} title=${own(other.title)}
        detail=${t("next.at", { at: clockDay(other.expected_begin_ms, view.now_ms) })}
        side=${other.status === "ready" ? html`<${StateMark} state=${other.mark} />` : ""}
        onTap=${() => chooseStep(make, other.key)} />`,
      )}
      <${Row} title=${t("next.all")} detail=${t("next.day_end", { at: clock(view.day.expected_end_ms) })} onTap=${() => go("make", make, "steps")} />
    </div>
  </section>`;
}
