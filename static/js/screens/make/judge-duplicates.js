import { html } from "../../parts/html.js";
import { StateMark } from "../../parts/state-mark.js";
import { Tap } from "../../parts/tap.js";
import { act } from "../../parts/acts.js";
import { may, nameOf } from "../../parts/people-names.js";
import { clock } from "../../format.js";
import { own, t } from "../../messages/index.js";

/**
 * The same tap on two phones: a person says whether it happened once or twice.
 *
 * @param {{make: string, view: View}} props
 */
export function JudgeDuplicates({ make, view }) {
  const judge = (/** @type {ToJudge} */ pair, /** @type {boolean} */ same) =>
    act(
      "duplicate_judged",
      { make, ref: pair.later.id, data: { same } },
      t(same ? "said.same" : "said.twice"),
    );
  return (view.to_judge ?? []).map((pair) => {
    const step = view.steps.find((one) => one.key === pair.step);
    const words = {
      step: own(step?.title),
      what: t("kind." + pair.kind),
      first: nameOf(pair.first.by),
      first_at: clock(pair.first.at_ms),
      later: nameOf(pair.later.by),
      later_at: clock(pair.later.at_ms),
    };
    return html`<div class="alert alert-check" key=${pair.later.id}>
      <p class="alert-says"><${StateMark} state="check" /> ${t("twice.says", words)}</p>
      ${
        may("duplicate_judged")
          ? html`<div class="pair">
            <${Tap} class="second" onTap=${() => judge(pair, true)}>${t("twice.same")}</${Tap}>
            <${Tap} class="second" onTap=${() => judge(pair, false)}>${t("twice.really")}</${Tap}>
          </div>`
          : html`<p>${t("twice.ask_maker")}</p>`
      }
    </div>`;
  });
}
