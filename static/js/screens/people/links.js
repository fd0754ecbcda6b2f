import { useState } from "preact/hooks";
import { Empty } from "../../parts/empty.js";
import { Facts } from "../../parts/facts.js";
import { html } from "../../parts/html.js";
import { Choices, Row, Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { TextField } from "../../parts/text-field.js";
import { useAsked } from "../../parts/asked.js";
import { whyOf } from "../../parts/acts.js";
import { board, nowMs, post, remove } from "../../parts/source.js";
import { clockDay, count, day } from "../../format.js";
import { t, tn } from "../../messages/index.js";

/**
 * @typedef {{
 *   id: string, name: string, makes: string[], until_ms: number,
 *   revoked_ms: number | null, opened_ms: number | null,
 * }} Link
 */

const DAY_MS = 86400000;
// A little short of the whole days, since a phone's clock may be ahead.
const SLACK_MS = 60000;
const DAYS = [1, 7, 30, 90];

/**
 * @param {{link: Link & {url: string, qr_svg: string}, onBack: () => void}} props
 */
function Made({ link, onBack }) {
  const [isCopied, setCopied] = useState(false);
  const copy = () =>
    navigator.clipboard?.writeText(link.url).then(
      () => setCopied(true),
      () => {},
    );
  return html`<${Sheet} title=${t("links.made", { name: link.name })} onBack=${onBack}
    foot=${html`<${Tap} class="primary" onTap=${copy}>${t(isCopied ? "links.copied" : "links.copy")}</${Tap}>`}>
    <p class="lead">${t("links.made_lead", { at: clockDay(link.until_ms, nowMs()) })}</p>
    <img class="qr" alt=${t("links.qr", { name: link.name })} src=${"data:image/svg+xml," + encodeURIComponent(link.qr_svg)} />
    <p class="link-address">${link.url}</p>
  </${Sheet}>`;
}

/** @param {{make: MakeSummary, isChosen: boolean, onTap: () => void}} props */
function MakeChoice({ make, isChosen, onTap }) {
  return html`<${Tap} class=${"choice " + (isChosen ? "is-chosen" : "")} pressed=${isChosen} onTap=${onTap}>
    <span class="choice-title">${make.name}</span>
    <${Facts} isInKey rows=${[
      [t("fact.batch"), make.batch],
      [t("fact.opened"), day(make.opened_ms)],
      [t("fact.state"), t("make_state.short_" + make.state)],
    ]} /></${Tap}>`;
}

/**
 * Whom a link is for, which makes it shows, and for how long.
 *
 * @param {{onBack: () => void}} props
 */
export function LinkForm({ onBack }) {
  const [name, setName] = useState("");
  const [makes, setMakes] = useState(/** @type {string[]} */ ([]));
  const [days, setDays] = useState(7);
  const [made, setMade] = useState(
    /** @type {(Link & {url: string, qr_svg: string}) | null} */ (null),
  );
  const [problem, setProblem] = useState("");
  const toggle = (/** @type {string} */ id) =>
    setMakes(
      makes.includes(id) ? makes.filter((other) => other !== id) : [...makes, id],
    );
  const send = () =>
    post("/links", {
      name: name.trim(),
      makes,
      until_ms: nowMs() + days * DAY_MS - SLACK_MS,
    }).then(setMade, (failure) => setProblem(whyOf(failure)));
  if (made) return html`<${Made} link=${made} onBack=${onBack} />`;
  return html`<${Sheet} title=${t("links.new")} onBack=${onBack}
    foot=${html`<${Tap} class="primary" disabled=${name.trim() === "" || !makes.length} onTap=${send}>${t("links.make")}</${Tap}>`}>
    <p>${t("links.lead")}</p>
    ${problem ? html`<p class="is-bad" role="alert">${problem}</p>` : null}
    <${TextField} label=${t("links.name")} value=${name} onInput=${setName} longest=${80} />
    <h2>${t("links.makes")}</h2>
    <div class="choices" role="group" aria-label=${t("links.makes")}>${(
      board.value?.makes ?? []
    ).map(
      (make) => html`<${MakeChoice}
      key=${make.id} make=${make} isChosen=${makes.includes(make.id)} onTap=${() => toggle(make.id)} />`,
    )}</div>
    ${board.value?.makes.length ? null : html`<${Empty} says=${t("now.none_known")} />`}
    <h2>${t("links.how_long")}</h2>
    <${Choices} label=${t("links.how_long")} chosen=${days} onChoose=${setDays}
      options=${DAYS.map((key) => ({ key, title: tn("links.days", key) }))} />
  </${Sheet}>`;
}

/** @param {Link} link */
function linkRows(link) {
  const until =
    !link.revoked_ms && link.until_ms > nowMs() && clockDay(link.until_ms, nowMs());
  const ended = link.revoked_ms ? t("links.revoked") : t("links.ended");
  return [
    [t("fact.makes"), count(link.makes.length)],
    until ? [t("fact.link_until"), until] : [t("fact.state"), ended],
    [
      t("fact.link_opened"),
      link.opened_ms ? clockDay(link.opened_ms, nowMs()) : t("links.not_opened"),
    ],
  ];
}

/**
 * Links handed to guests, each to be taken back.
 *
 * @param {{onNew: () => void}} props
 */
export function Links({ onNew }) {
  const links = useAsked("/links");
  const [sure, setSure] = useState(/** @type {string | null} */ (null));
  const [problem, setProblem] = useState("");
  const take = (/** @type {Link} */ link) =>
    remove(`/links/${link.id}`).then(
      () => {
        setSure(null);
        links.again();
      },
      (failure) => setProblem(whyOf(failure)),
    );
  const stands = (/** @type {Link} */ link) =>
    !link.revoked_ms && link.until_ms > nowMs();
  return html`<h2>${t("links.title")}</h2>
    ${problem || links.problem ? html`<p class="is-bad" role="alert">${problem || links.problem}</p>` : null}
    <div class="rows">${(links.value ?? []).map(
      (/** @type {Link} */ link) => html`<div class="row row-still" key=${link.id}>
      <span class="row-main"><span class="row-title">${link.name}</span>
        <${Facts} rows=${linkRows(link)} /></span>
      ${
        !stands(link)
          ? null
          : sure === link.id
            ? html`<${Tap} class="second is-destructive" onTap=${() => take(link)}>${t("links.take_sure")}</${Tap}>`
            : html`<${Tap} class="second" onTap=${() => setSure(link.id)}>${t("links.take")}</${Tap}>`
      }
    </div>`,
    )}</div>
    <div class="rows rows-apart"><${Row} title=${t("links.new")} detail=${t("links.new_detail")} onTap=${onNew} /></div>`;
}
