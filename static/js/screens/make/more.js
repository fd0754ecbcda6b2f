import { html } from "../../parts/html.js";
import { Row } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { WhoseLine } from "../../parts/whose.js";
import { CalendarRow } from "../../parts/calendar-row.js";
import { may } from "../../parts/people-names.js";
import { own, t, tn } from "../../messages/index.js";
import { go } from "../../router.js";
import { begin, end } from "./primary.js";

/** @param {{make: string, step: Step | null}} props */
function Entries({ make, step }) {
  const at = step ? [step.key] : [];
  return html`
    <${Row} title=${t("more.note")} onTap=${() => go("make", make, "note", ...at)} />
    <${Row} title=${t("more.reading")} onTap=${() => go("make", make, "other", ...at)} />
    <${Row} title=${t("more.timer")} onTap=${() => go("make", make, "timer", ...at)} />`;
}

/** @param {{make: string, step: Step | null, canAct: boolean}} props */
function Rare({ make, step, canAct }) {
  const next = step?.button?.act;
  const isRunning = step?.status === "running";
  return html`<div class="rows rows-apart">
    ${canAct && isRunning && next !== "end" ? html`<${Row} title=${t("more.end")} detail=${html`${own(step.title)}<${WhoseLine} />`} onTap=${() => end(make, step)} />` : null}
    ${canAct && step && !isRunning && next !== "begin" ? html`<${Row} title=${t("more.begin", { step: own(step.title) })} detail=${html`<${WhoseLine} />`} onTap=${() => begin(make, step)} />` : null}
    ${canAct && step && !isRunning && may("step_skipped") ? html`<${Row} title=${t("more.skip")} onTap=${() => go("make", make, "skip", step.key)} />` : null}
    ${may("make_closed") ? html`<${Row} title=${t("more.batch")} detail=${t("more.batch_detail")} onTap=${() => go("make", make, "batch")} />` : null}
  </div>`;
}

/**
 * Everything else that can be done here, below the one large button.
 *
 * @param {{make: string, step: Step | null, canAct: boolean, stands: number,
 *   milk: MilkView | null}} props
 *   stands: how many matters do
 */
export function More({ make, step, canAct, stands, milk }) {
  return html`<section class="block"><h2>${t("block.more")}</h2>
    <div class="rows">
      ${canAct ? html`<${Entries} make=${make} step=${step} />` : null}
      <${Row} title=${t(canAct ? "more.steps" : "next.all")} detail=${t("more.steps_detail")} onTap=${() => go("make", make, "steps")} />
      ${stands ? html`<${Row} title=${t("more.matters")} detail=${tn("more.matters", stands)} onTap=${() => go("make", make, "matters")} />` : null}
      ${milk ? html`<${Row} title=${t("milk.title")} detail=${t("milk.short." + milk.is.class)} onTap=${() => go("make", make, "milk")} />` : null}
      <${Row} title=${t("curve.row")} detail=${t("curve.row_detail")} onTap=${() => go("make", make, "curve")} />
      <${Row} title=${t("more.record")} detail=${t("more.record_detail")} onTap=${() => go("make", make, "record")} />
      ${may("reading_taken") ? html`<${Row} title=${t("store.lab")} detail=${t("lab.row_detail")} onTap=${() => go("make", make, "lab")} />` : null}
      <${Row} title=${t("equip.title")} detail=${t("equip.row_detail")} onTap=${() => go("make", make, "equipment")} />
      ${canAct ? html`<${CalendarRow} make=${make} step=${step} />` : null}
    </div>
    <${Rare} make=${make} step=${step} canAct=${canAct} />
  </section>`;
}
