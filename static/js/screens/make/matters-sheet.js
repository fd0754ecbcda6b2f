import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { matterDo, matterText } from "../../parts/matter-line.js";
import { areBothOf, nameOf } from "../../parts/people-names.js";
import { useProof } from "../../parts/pin.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { StateMark } from "../../parts/state-mark.js";
import { WhyPad } from "../../parts/why-pad.js";
import { clockDay } from "../../format.js";
import { capital, inside, own, t, whyWords } from "../../messages/index.js";
import { noteWords } from "../sums/notes.js";

/**
 * How a matter stands, as a mark: one that is decided asks for nobody.
 *
 * @param {{matter: Matter}} props
 */
export function MatterMark({ matter }) {
  if (matter.decided)
    return html`<${StateMark} state="ok" word=${t("matters.mark")} />`;
  return html`<${StateMark} state=${matter.level === "wait" ? "due" : matter.level} />`;
}

/** @param {{matter: Matter}} props */
function Reasons({ matter }) {
  const texts = [
    ...new Set(matter.reasons.map((reason) => capital(noteWords(reason)))),
  ];
  if (!texts.length) return null;
  return html`<ul class="lines">${texts.map((text) => html`<li key=${text}>${text}</li>`)}</ul>`;
}

/** @param {{matter: Matter, steps: Step[]}} props */
function Stops({ matter, steps }) {
  if (!matter.stops.length) return null;
  const titleOf = (/** @type {?string} */ key) =>
    own(steps.find((step) => step.key === key)?.title);
  const whats = matter.stops.map(({ what, step }) =>
    t("matters.stop." + what, { step: titleOf(step) }),
  );
  return html`<p>${t("matters.stops")}</p><ul class="lines">${whats.map((what) => html`<li key=${what}>${what}</li>`)}</ul>`;
}

/** @param {{matter: Matter, nowMs: number}} props */
export function DecidedLine({ matter, nowMs }) {
  const said = matter.decided;
  if (!said) return null;
  return html`<p>${t("matters.decided", {
    name: nameOf(said.by),
    at: clockDay(said.at_ms, nowMs),
    way: t("way." + said.way),
    why: whyWords(said.why ?? ""),
  })}</p>`;
}

/**
 * By which section it stands; what was read where another quotes it says so.
 *
 * @param {{matter: Matter}} props
 */
export function RuleLine({ matter: { rule, status } }) {
  const key = status === "secondary" ? "matters.rule_secondary" : "matters.rule";
  return html`<p class="quiet">${t(key, { rule })}</p>`;
}

/** @param {{matter: Matter, onWay: (way: Way) => void}} props */
function Ways({ matter, onWay }) {
  if (!matter.ways.length) return html`<p class="quiet">${t("matters.nobody")}</p>`;
  const open = matter.ways.filter((way) => areBothOf(way.roles));
  const least = matter.ways[0].role;
  if (!open.length)
    return html`<p class="quiet">${t("matters.who", { role: inside(t("role." + least)) })}</p>`;
  return html`<h3>${t("matters.way")}</h3><div class="rows">${open.map(
    (
      way,
    ) => html`<${Row} key=${way.way} class=${way.way === "discard" ? "is-destructive" : ""}
    title=${t("way." + way.way)} detail=${t("way_means." + way.way)} onTap=${() => onWay(way)} />`,
  )}</div>`;
}

/**
 * One matter whole: why it stands, what it stops, what to do, who decides how.
 *
 * @param {{matter: Matter, shown: View, canAct: boolean, onWay: (way: Way) => void}} props
 */
function MatterBlock({ matter, shown, canAct, onWay }) {
  return html`<section class="block matter-block">
    <h2><${MatterMark} matter=${matter} /> ${matterText(matter)}</h2>
    <${Reasons} matter=${matter} />
    <p class="lead">${matterDo(matter)}</p>
    <${Stops} matter=${matter} steps=${shown.steps} />
    <${DecidedLine} matter=${matter} nowMs=${shown.now_ms} />
    <${RuleLine} matter=${matter} />
    ${canAct ? html`<${Ways} matter=${matter} onWay=${onWay} />` : null}
  </section>`;
}

/** @type {Record<string, string[]>} */
const REASONS = { discard: ["milk_bad"], hold_again: ["reading_off"] };

/**
 * What stands of a make, and the ways that the rules leave open to who may decide.
 *
 * @param {{make: string, shown: View, about?: string, canAct: boolean,
 *   onBack: () => void}} props
 */
export function MattersSheet({ make, shown, about, canAct, onBack }) {
  const [asked, setAsked] = useState(
    /** @type {{matter: Matter, way: Way} | null} */ (null),
  );
  const close = () => setAsked(null);
  const [record, over] = useProof(close);
  if (asked) {
    const { matter, way } = asked;
    const title = t("way." + way.way);
    const done = (/** @type {string} */ why) =>
      record({
        kind: way.event?.kind ?? "matter_decided",
        given: {
          make,
          data: { ...(way.event?.data ?? { matter: matter.id, way: way.way }), why },
        },
        said: t("said.matter_decided", { way: title }),
        title,
        doWord: t("matters.decide"),
      });
    return over(html`<${WhyPad} title=${title} lead=${t("way_means." + way.way)} reasons=${REASONS[way.way] ?? []}
      isGrave=${way.way === "discard"} doWord=${t("matters.decide")} onDone=${done} onBack=${close}>
      <p class="quiet">${matterText(matter)}</p></${WhyPad}>`);
  }
  const told = shown.matters.filter(
    (matter) => matter.level !== "wait" || matter.id === about,
  );
  const first = told.filter((matter) => matter.id === about);
  const rest = told.filter((matter) => matter.id !== about);
  return html`<${Sheet} title=${t("matters.title")} onBack=${onBack}>
    ${told.length ? null : html`<p class="lead">${t("matters.none")}</p>`}
    ${[...first, ...rest].map(
      (
        matter,
      ) => html`<${MatterBlock} key=${matter.id} matter=${matter} shown=${shown} canAct=${canAct}
      onWay=${(/** @type {Way} */ way) => setAsked({ matter, way })} />`,
    )}
  </${Sheet}>`;
}
