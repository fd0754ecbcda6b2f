import { useEffect, useState } from "preact/hooks";
import { Empty } from "../parts/empty.js";
import { Facts } from "../parts/facts.js";
import { html } from "../parts/html.js";
import { LineChart } from "../parts/line-chart.js";
import { may } from "../parts/people-names.js";
import { Row, Sheet } from "../parts/sheet.js";
import { Table } from "../parts/table.js";
import { ask, board, core, recipes } from "../parts/source.js";
import { whyOf } from "../parts/acts.js";
import { asRead, count, day, sumValue } from "../format.js";
import { own, t, words } from "../messages/index.js";
import { go } from "../router.js";

/**
 * @param {string | null} recipe
 * @param {Board | null} shown
 */
function useCharts(recipe, shown) {
  const isReady = core.value === "ready"; // a core that starts does not hold the makes yet
  const [charts, setCharts] = useState(/** @type {Chart[] | null} */ (null));
  const [problem, setProblem] = useState("");
  useEffect(() => {
    let isCurrent = true;
    if (!recipe || !isReady) return undefined;
    ask.trends({ recipe }).then(
      (drawn) => {
        if (isCurrent) {
          setCharts(drawn);
          setProblem("");
        }
      },
      (failure) => isCurrent && setProblem(whyOf(failure)),
    );
    return () => {
      isCurrent = false;
    };
  }, [recipe, shown, isReady]);
  return { charts, problem };
}

/**
 * @param {NonNullable<Chart["chart"]>} chart
 * @param {number} index
 */
function markWords(chart, index) {
  if (chart.beyond.includes(index)) return t("trends.beyond");
  return chart.runs.includes(index) ? t("trends.run") : "";
}

/** @param {Chart["points"]} points @param {NonNullable<Chart["chart"]>} chart */
function verdictWords(points, chart) {
  if (!chart.limits)
    return t("trends.too_few", { n: chart.count, needed: chart.needed });
  const marked = points.filter((_, index) => markWords(chart, index));
  return marked.length
    ? t("trends.unlike", { list: marked.map((point) => point.batch).join(", ") })
    : t("trends.like");
}

/** @param {{trend: Chart}} props */
function Chart({ trend }) {
  const { key, unit, points, chart, average } = trend;
  const text = (/** @type {number} */ value) => {
    const shown = asRead(value, unit);
    return sumValue(shown.value, shown.unit);
  };
  const what = t("trend." + key);
  if (!points.length || !chart)
    return html`<section class="block"><h2>${what}</h2><p>${t("trends.no_points")}</p></section>`;
  const values = points.map((point) => point.value);
  const marked = values
    .map((_, index) => index)
    .filter((index) => markWords(chart, index));
  const label = t("trends.chart", {
    what,
    n: points.length,
    first: text(values[0]),
    last: text(values[values.length - 1]),
  });
  const { limits } = chart;
  const between = (/** @type {{low: number, high: number}} */ { low, high }) =>
    t("word.span", { low: text(low), high: text(high) });
  const rows = [
    [t("fact.makes"), count(points.length)],
    [t("fact.middle"), limits && text(limits.mean)],
    [t("fact.limits"), limits && between(limits)],
    [t("fact.average"), average && between(average)],
  ];
  const names = {
    values: t("fact.each_make"),
    average: t("fact.average_line"),
    mean: t("fact.middle_line"),
    low: t("fact.low_line"),
    high: t("fact.high_line"),
  };
  const columns = [
    { title: t("fact.batch") },
    { title: t("trends.day") },
    { title: t("trends.figure"), isNumber: true },
    ...(marked.length ? [{ title: t("trends.mark") }] : []),
  ];
  const lines = points.map((point, index) => ({
    key: point.make,
    cells: [
      point.batch,
      day(point.at_ms),
      text(point.value),
      ...(marked.length ? [markWords(chart, index)] : []),
    ],
  }));
  return html`<section class="block"><h2>${what}</h2>
    <p>${verdictWords(points, chart)}</p>
    ${average?.beyond.length ? html`<p class="is-bad">${t("trends.average_beyond")}</p>` : null}
    <div class="columns">
      <div class="column"><${LineChart} values=${values} limits=${limits} marked=${marked} averages=${average?.values} text=${text} label=${label} names=${names} />
        <${Facts} rows=${rows} class="chart-facts" /></div>
      <div class="column"><${Table} label=${what} columns=${columns} rows=${lines.reverse()} /></div>
    </div></section>`;
}

/**
 * The way to the first make, for who may open one.
 *
 * @param {{says: string}} props
 */
function First({ says }) {
  return html`<${Empty} says=${says} does=${may("make_opened") && t("empty.start")} onTap=${() => go("new")} />`;
}

/** @param {{charts: Chart[]}} props */
function Charts({ charts }) {
  const isNothing = charts.every((trend) => !trend.points.length);
  if (isNothing) return html`<${First} says=${t("empty.trends")} />`;
  return charts.map((trend) => html`<${Chart} key=${trend.key} trend=${trend} />`);
}

/** @param {string} recipe */
function titleOf(recipe) {
  return own(recipes.value.find((one) => one.id === recipe)?.title) || words(recipe);
}

/**
 * Whether the makes of one recipe are alike: a chart and a table for each figure.
 *
 * @param {{recipe?: string}} props
 */
export function TrendsScreen({ recipe }) {
  const shown = board.value;
  const all = [...new Set(recipes.value.map((one) => one.id))];
  const chosen = recipe ?? (all.length === 1 ? all[0] : null);
  const { charts, problem } = useCharts(chosen, shown);
  if (!chosen) {
    return html`<div class="sheet"><div class="scroll narrow"><h1>${t("nav.trends")}</h1>
      ${
        all.length
          ? html`<div class="rows">${all.map((id) => html`<${Row} key=${id} title=${titleOf(id)} onTap=${() => go("trends", id)} />`)}</div>`
          : html`<${First} says=${t("trends.none")} />`
      }</div></div>`;
  }
  return html`<${Sheet} isReadOnly title=${t("word.told", { name: t("nav.trends"), value: titleOf(chosen) })} onBack=${() => (recipe && all.length > 1 ? go("trends") : go("menu"))}>
    <p class="quiet">${t("trends.lead")}</p>
    ${problem ? html`<p class="is-bad" role="alert">${t("sums.failed", { why: problem })}</p>` : null}
    ${charts ? html`<${Charts} charts=${charts} />` : html`<p role="status">${t("sums.working")}</p>`}
  </${Sheet}>`;
}
