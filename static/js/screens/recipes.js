import { useEffect, useState } from "preact/hooks";
import { Empty } from "../parts/empty.js";
import { Facts } from "../parts/facts.js";
import { html } from "../parts/html.js";
import { Row, Sheet } from "../parts/sheet.js";
import { Table } from "../parts/table.js";
import { Tap } from "../parts/tap.js";
import { problemsText, whyOf } from "../parts/acts.js";
import { may } from "../parts/people-names.js";
import { freshenRecipes, get, post, recipes } from "../parts/source.js";
import { amountBand, bandIn, count, inOwnUnit, inUnit } from "../format.js";
import { inside, own, sourceWords, t, tFirst, words } from "../messages/index.js";
import { go } from "../router.js";
import { groups, withFigure } from "./recipes/figures.js";
import { FigureSheet } from "./recipes/figure-sheet.js";

/** @import { FigureAt } from "./recipes/figures.js" */

/**
 * The recipes known on this phone.
 *
 * @param {{id?: string}} props
 */
export function RecipesScreen({ id }) {
  useEffect(() => {
    freshenRecipes().catch(() => {});
  }, []);
  if (id) return html`<${RecipeScreen} key=${id} id=${id} />`;
  return html`<div class="sheet"><div class="scroll narrow"><h1>${t("nav.recipes")}</h1>
    <div class="rows">${recipes.value.map(
      (recipe) => html`<${Row} key=${recipe.id} title=${own(recipe.title)}
      detail=${html`<${Facts} isInKey rows=${headRows(recipe)} />`} onTap=${() => go("recipes", recipe.id)} />`,
    )}</div>
    ${recipes.value.length ? null : html`<${Empty} says=${t("new.no_recipes")} does=${t("empty.connect")} onTap=${() => go("device")} />`}
  </div></div>`;
}

/** @param {Recipe} recipe */
function headRows(recipe) {
  const { low_l: low, high_l: high } = recipe.milk;
  return [
    [t("fact.version"), count(recipe.version)],
    [t("fact.vat_milk"), amountBand(low ?? null, high ?? null, "L")],
    [t("fact.steps"), count(recipe.steps.length)],
  ];
}

/**
 * What goes into the milk, dose beside dose; each is changed where it stands below.
 *
 * @param {{recipe: Recipe}} props
 */
function Doses({ recipe }) {
  const added = recipe.ingredients ?? [];
  if (!added.length) return null;
  const columns = [
    { title: t("fact.into_milk") },
    { title: t("fact.dose"), isNumber: true },
  ];
  const rows = added.map((one) => {
    const { value, low, high, unit } = one.dose.amount;
    return {
      key: one.key,
      cells: [
        own(one.title),
        html`<b>${inUnit(value, unit)}</b><span class="row-detail">${bandIn(low, high, unit)}</span>`,
      ],
    };
  });
  return html`<div class="told"><${Table} label=${t("fact.into_milk")} columns=${columns} rows=${rows} /></div>`;
}

/** @param {string} id */
function useRecipe(id) {
  const known = recipes.value.find((recipe) => recipe.id === id) ?? null;
  const [asked, setAsked] = useState(/** @type {Recipe | null} */ (null));
  useEffect(() => {
    if (!known) get("/recipes/" + encodeURIComponent(id)).then(setAsked, () => {});
  }, [id, Boolean(known)]);
  return known ?? asked;
}

// The names on the way to a figure that are not said: it stands below them.
const UNSAID = [
  "figure",
  "figures",
  "steps",
  "ingredients",
  "moulds",
  "by_treatment",
  "heat_treatment",
];

/** @param {(string | number)[]} path */
function figureName(path) {
  const names = path.filter(
    (name) => !/^\d+$/.test(String(name)) && !UNSAID.includes(String(name)),
  );
  const said = names.map((name) => tFirst(["figure_name." + name, "field." + name]));
  return said.map((text, index) => (index ? inside(text) : text)).join(", ");
}

/**
 * @param {(string | number)[]} path
 * @param {RecipeTarget} target
 */
function quantityName(path, target) {
  const name = t("quantity." + target.quantity);
  const route = path[path.indexOf("by_treatment") + 1];
  if (!path.includes("by_treatment")) return name;
  return `${t("figure_name." + route)}, ${inside(name)}`;
}

/** @param {{entry: FigureAt, recipe: Recipe, onEdit: (() => void) | null}} props */
function Figure({ entry, recipe, onEdit }) {
  const { figure, path } = entry;
  /** @type {any} */
  const parent = path.slice(0, -1).reduce((part, name) => part?.[name], recipe);
  const name = parent?.quantity ? quantityName(path, parent) : figureName(path);
  // A figure that stands in each unit for itself is never told in the other.
  const isPrinted = parent && "F" in parent && "C" in parent;
  const told = isPrinted ? inOwnUnit : inUnit;
  const band = isPrinted ? [figure.low, figure.high].filter((end) => end != null) : [];
  const source = recipe.sources[figure.source];
  const rows = [
    [
      t("fact.band"),
      isPrinted
        ? band.map((end) => inOwnUnit(end, figure.unit)).join(" – ")
        : bandIn(figure.low, figure.high, figure.unit),
    ],
    [t("fact.known_as"), t("status." + figure.status)],
    [t("fact.source"), sourceWords(source?.title ?? figure.source), { isLong: true }],
    [t("fact.note"), figure.note && sourceWords(figure.note), { isLong: true }],
  ];
  const text = html`<span class="row-main">
    <span class="told-head"><span class="row-title">${name}</span> <b>${told(figure.value, figure.unit)}</b></span>
    <${Facts} isInKey rows=${rows} />
  </span>`;
  return onEdit
    ? html`<${Tap} class="row figure-key" onTap=${onEdit}>${text}<span class="row-side">${t("word.change")}</span></${Tap}>`
    : html`<div class="row row-still">${text}</div>`;
}

/** @param {Recipe | null} recipe */
function useDraft(recipe) {
  const [draft, setDraft] = useState(/** @type {Recipe | null} */ (null));
  const [problem, setProblem] = useState("");
  const [said, setSaid] = useState("");
  const save = async () => {
    try {
      const saved = await post("/recipes", draft);
      await freshenRecipes({ now: true });
      setDraft(null);
      setSaid(t("recipe.saved", { n: saved.version }));
    } catch (/** @type {any} */ failure) {
      const problems = failure.body?.problems ?? failure.body?.error?.problems;
      setProblem(problems ? problemsText(problems) : whyOf(failure));
    }
  };
  const change = (/** @type {Recipe | null} */ next) => {
    setDraft(next);
    setProblem("");
    setSaid("");
  };
  return { shown: draft ?? recipe, draft, problem, said, save, change };
}

/**
 * Read a recipe with the source of each figure; a maker may change figures.
 *
 * @param {{id: string}} props
 */
function RecipeScreen({ id }) {
  const recipe = useRecipe(id);
  const { shown, draft, problem, said, save, change } = useDraft(recipe);
  const [open, setOpen] = useState(/** @type {FigureAt | null} */ (null));
  if (!shown)
    return html`<${Sheet} title=${t("nav.recipes")} onBack=${() => go("recipes")}><p class="lead">${t("recipe.loading")}</p></${Sheet}>`;
  if (open) {
    return html`<${FigureSheet} title=${figureName(open.path)} figure=${open.figure} sources=${shown.sources} onBack=${() => setOpen(null)}
      onKeep=${(/** @type {FigureAt["figure"]} */ figure) => {
        change(withFigure(shown, open.path, figure));
        setOpen(null);
      }} />`;
  }
  const edit = may("recipes")
    ? (/** @type {FigureAt} */ entry) => () => setOpen(entry)
    : () => null;
  return html`<${Sheet} title=${own(shown.title)} onBack=${() => go("recipes")}
    foot=${draft ? html`<${Tap} class="second" onTap=${() => change(null)}>${t("recipe.drop")}</${Tap}><${Tap} class="primary" onTap=${save}>${t("recipe.save")}</${Tap}>` : null}>
    ${draft ? html`<p class="lead">${t("recipe.draft")}</p>` : null}
    ${said ? html`<p class="lead" role="status">${said}</p>` : null}
    ${problem ? html`<p class="is-bad" role="alert">${problem}</p>` : null}
    <section class="told"><${Facts} rows=${headRows(shown)} /><p>${own(shown.about)}</p></section>
    <${Doses} recipe=${shown} />
    ${groups(shown)
      .filter((group) => group.figures.length || group.text?.do)
      .map(
        (group) => html`<section class="block" key=${group.key}>
      <h2>${group.title ? own(group.title) : t("recipe.whole")}${group.text?.rounds ? " " + t("step.round", { n: group.text.round, total: group.text.rounds }) : ""}</h2>
      ${group.text?.do ? html`<ul class="lines">${group.text.do.map((/** @type {Words} */ line, /** @type {number} */ index) => html`<li key=${index}>${own(line)}</li>`)}</ul>` : null}
      <div class="rows">${group.figures.map((entry) => html`<${Figure} key=${entry.path.join(".")} entry=${entry} recipe=${shown} onEdit=${edit(entry)} />`)}</div>
    </section>`,
      )}
    <section class="block"><h2>${t("recipe.sources")}</h2><ul class="lines">${Object.entries(shown.sources).map(([key, source]) => html`<li key=${key}><b>${sourceWords(source.title)}</b> ${sourceWords(source.where ?? "")} (${tFirst(["status." + source.status, words(source.status ?? "")])})</li>`)}</ul></section>
  </${Sheet}>`;
}
