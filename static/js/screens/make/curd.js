import { html } from "../../parts/html.js";
import { nameOf } from "../../parts/people-names.js";
import { clock, plain, span } from "../../format.js";
import { t, tFirst } from "../../messages/index.js";

/**
 * What the set has shown so far: rennet in, flocculation, when to cut.
 *
 * @param {{floc: Floc | null}} props
 */
export function FlocFacts({ floc }) {
  if (!floc) return null;
  const rows = [
    floc.added_ms ? [t("floc.rennet"), clock(floc.added_ms)] : null,
    floc.floc_ms
      ? [t("floc.seen"), `${clock(floc.floc_ms)} (${span(floc.floc_s)})`]
      : null,
    floc.cut_ms
      ? [t("floc.cut", { factor: plain(floc.factor) }), clock(floc.cut_ms)]
      : null,
    floc.low_ms && floc.high_ms
      ? [t("floc.window"), `${clock(floc.low_ms)} – ${clock(floc.high_ms)}`]
      : null,
  ].filter((fact) => fact !== null);
  return html`<div class="block">
    <h2>${t("floc.title")}</h2>
    <ul class="facts">${rows.map(([label, value]) => html`<li key=${label}><span>${label}</span><b>${value}</b></li>`)}</ul>
    ${floc.problem ? html`<p class="is-bad">${tFirst(["floc." + floc.problem, "problem." + floc.problem, floc.problem])}</p>` : null}
  </div>`;
}

/** @param {Judge | null} judge */
export function lastJudgement(judge) {
  return judge?.last
    ? t("judge.last", {
        what: t("judgement." + judge.last.judgement),
        at: clock(judge.last.at_ms),
        name: nameOf(judge.last.by),
      })
    : t("judge.none");
}
