import { Facts } from "../../parts/facts.js";
import { html } from "../../parts/html.js";
import { capital, has, inside, sourceWords, t } from "../../messages/index.js";
import { sumRow } from "./catalogue.js";
import { StateMark } from "../../parts/state-mark.js";
import { noteWords } from "./notes.js";
import { headlines, inOrder, valueWords, whichWords } from "./values.js";
import { sumProblem } from "./refusals.js";
import { label, outLabel, restsValue } from "./words.js";

/** @import { How, Names } from "./values.js" */

/**
 * Several values of the same press, wheel or block stand together below its name.
 *
 * @param {SumValue[]} values
 * @param {Names} [names]
 */
function groupsOf(values, names) {
  const namesOf = (/** @type {string} */ which) =>
    new Set(
      values
        .filter((figure) => whichWords(figure, names) === which)
        .map((figure) => figure.name),
    );
  /** @type {{which: string, rows: SumValue[]}[]} */
  const groups = [];
  for (const value of values) {
    const which = whichWords(value, names);
    const isMany = which !== "" && namesOf(which).size > 1;
    const group = isMany && groups.find((one) => one.which === which);
    if (group) group.rows.push(value);
    else groups.push({ which: isMany ? which : "", rows: [value] });
  }
  return groups;
}

/** @param {{value: SumValue, names?: Names, how: How, isFirst?: boolean}} props */
function Value({ value, names, how, isFirst }) {
  const { label: title, main, detail } = valueWords(value, names, how);
  return html`<li class=${isFirst ? "sum-value is-first" : "sum-value"}>
    <span class="sum-label">${title}</span><b class=${value.unit === "key" ? "sum-main is-words" : "sum-main"}>${main}</b>
    ${detail ? html`<span class="sum-range">${detail}</span>` : null}</li>`;
}

/** @param {{group: {which: string, rows: SumValue[]}, names?: Names, how: How}} props */
function Group({ group, names, how }) {
  const inner = { ...how, isInside: true };
  return html`<li class="sum-group"><h3>${capital(group.which)}</h3>
    <ul class="sum-values">${group.rows.map((figure, index) => html`<${Value} key=${figure.name + index} value=${figure} names=${names} how=${inner} />`)}</ul></li>`;
}

const LISTED = 3;

/**
 * What an answer rests on in a line: what is only from memory or practice is named.
 *
 * @param {{answer: Answer, sum?: SumRow | null}} props
 */
function Standing({ answer, sum }) {
  const { standing } = answer;
  if (!standing) return null;
  const { basis, is_figure: isFigure } = standing;
  const names = [
    ...new Set(standing.names.map((name) => inside(label(name, sum?.key)))),
  ];
  const list = names.slice(0, LISTED).join("; ") + (names.length > LISTED ? "; …" : "");
  const words = t(isFigure ? "sums.stands_" + basis : "sums.stands_usual", { list });
  return html`<p class="sum-standing">${basis === "memory" && isFigure ? html`<${StateMark} state="check" /> ` : null}<span>${words}</span></p>`;
}

/**
 * What came out, or what is in its way: problems in words, and what is missing.
 *
 * @param {object} props
 * @param {Answer | null} props.answer
 * @param {SumRow} props.sum
 * @param {Record<string, SumGiven>} [props.given]
 * @param {Names} [props.names]
 */
export function Answer({ answer, sum, given, names }) {
  if (!answer) return html`<p class="quiet" role="status">${t("sums.working")}</p>`;
  const how = { sum: answer.key };
  const groups = groupsOf(inOrder(answer.values), names);
  return html`<section class="sum-answer" aria-label=${t("sums.answer")} aria-live="polite">
    ${answer.problems.map((problem) => html`<p key=${problem.field + problem.key} class="is-bad" role="alert">${sumProblem(problem, sum, given)}</p>`)}
    ${answer.missing.length ? html`<p class="lead">${t("sums.missing_list", { list: answer.missing.map((name) => inside(label(name, answer.key))).join("; ") })}</p>` : null}
    ${
      groups.length
        ? html`<ul class="sum-values">${groups.map((group, index) =>
            group.which
              ? html`<${Group} key=${group.which} group=${group} names=${names} how=${how} />`
              : html`<${Value} key=${group.rows[0].name + index} value=${group.rows[0]} names=${names} how=${how} isFirst=${index === 0} />`,
          )}</ul>`
        : null
    }
    <${Standing} answer=${answer} sum=${sum} />
    ${answer.notes.length ? html`<h3>${t("sums.notes")}</h3><ul class="lines">${answer.notes.map((note, index) => html`<li key=${note.key + index}>${noteWords(note)}</li>`)}</ul>` : null}
  </section>`;
}

/**
 * Where a figure came from, how well it is known, and its source; said once each.
 *
 * @param {RestsOn} origin
 * @param {SumInput | undefined} input
 * @param {Record<string, {title?: string}>} sources
 */
function originWords(origin, input, sources) {
  const source = sourceWords(
    sources[origin.source ?? ""]?.title ?? origin.source ?? "",
  );
  const isFigure = !input || (origin.from === "default" && !input.default);
  return [
    ...new Set(
      [
        t("from." + (isFigure ? "figure" : origin.from)),
        t("status." + origin.status),
        source,
      ].filter(Boolean),
    ),
  ];
}

/**
 * Each figure that the answer rests on besides what was typed: where it came from,
 * how well it is known.
 *
 * @param {object} props
 * @param {Answer | null} props.answer
 * @param {SumRow} [props.sum]
 * @param {Record<string, {title?: string}>} [props.sources] the recipe's, by key
 */
export function RestsOn({ answer, sum, sources = {} }) {
  const rows = answer?.rests_on.filter((origin) => origin.from !== "typed") ?? [];
  if (!rows.length) return null;
  return html`<section class="block"><h2>${t("sums.rests")}</h2><ul class="facts facts-wide">
    ${rows.map((origin, index) => {
      const input = sum?.inputs.find((field) => field.name === origin.name);
      return html`<li key=${origin.name + index}><span>${label(origin.name, sum?.key)}</span>
        <b>${restsValue(origin, input)}</b>
        <span class=${origin.status === "memory" ? "is-weak" : "quiet"}>${originWords(origin, input, sources).join(" · ")}</span></li>`;
    })}</ul></section>`;
}

/**
 * What keeps an answer from being one, in words; null where there is one.
 *
 * @param {Answer} answer
 */
function lackWords(answer) {
  if (answer.problems.length) return sumProblem(answer.problems[0], sumRow(answer.key));
  if (!answer.missing.length) return null;
  return t("sums.asks", {
    list: answer.missing.map((name) => inside(label(name, answer.key))).join("; "),
  });
}

/**
 * The figures of an answer that stand for it in a list, and how well they are known.
 *
 * @param {Answer} answer
 * @param {Names} [names]
 * @param {string} [step] that it stands at: of several, those of this step
 */
function heads(answer, names, step) {
  const all = headlines(answer.values);
  const here = all.filter((figure) => figure.of === step);
  const figures = here.length ? here : all;
  const { basis, is_figure: isFigure } = answer.standing ?? {};
  const short = `sums.short_${basis}`;
  const rows = figures.map((figure) => {
    const words = valueWords(figure, names, { sum: answer.key });
    const isAlone = figures.length === 1 && !figure.of;
    const title = isAlone ? outLabel(figure.name, answer.key) : words.label;
    return { ...words, title, bar: figure.bar };
  });
  return { rows, basis: isFigure && rows.length && has(short) ? t(short) : "" };
}

/**
 * The one figure of an answer that stands in a list: words, or null without one.
 *
 * @param {Answer} answer
 * @param {Names} [names]
 * @param {string} [step] that it stands at: of several, those of this step
 */
export function headline(answer, names, step) {
  const lack = lackWords(answer);
  if (lack !== null) return lack;
  const { rows, basis } = heads(answer, names, step);
  const told = rows.map(
    ({ title, main, detail }) => `${title} ${main}${detail ? `, ${detail}` : ""}`,
  );
  return [...told, basis].filter(Boolean).join(" · ");
}

/**
 * The same as labels and values, with a bar where the core draws one.
 *
 * @param {{answer: Answer, names?: Names, step?: string}} props
 */
export function Headline({ answer, names, step }) {
  const lack = lackWords(answer);
  if (lack !== null) return lack;
  const { rows, basis } = heads(answer, names, step);
  const told = rows.map(({ title, main, bar }) => [title, main, { bar }]);
  const more = [...rows.map(({ detail }) => capital(detail)), basis && capital(basis)];
  return html`<${Facts} isInKey rows=${told} />
    ${more.filter(Boolean).map((words) => html`<span class="row-detail" key=${words}>${words}</span>`)}`;
}
