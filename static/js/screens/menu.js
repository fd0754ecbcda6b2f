import { html } from "../parts/html.js";
import { Row } from "../parts/sheet.js";
import { Tap } from "../parts/tap.js";
import { may } from "../parts/people-names.js";
import { t } from "../messages/index.js";
import { go } from "../router.js";

// Each place, and what one must be allowed to do to find anything there.
/** @type {[string, string?][]} */
const PLACES = [
  ["now"],
  ["alarms"],
  ["live"],
  ["wall"],
  ["new", "make_opened"],
  ["makes"],
  ["sums"],
  ["store"],
  ["trends"],
  ["recipes"],
  ["people", "people"],
  ["look"],
  ["words"],
  ["device"],
];

function places() {
  return PLACES.filter(([, act]) => !act || may(act)).map(([name]) => name);
}

/** Every place of the app, as rows. */
export function MenuScreen() {
  return html`<div class="sheet"><div class="scroll narrow"><h1>${t("nav.menu")}</h1>
    <div class="rows">${places().map((name) => html`<${Row} key=${name} title=${t("nav." + name)} detail=${t("nav_detail." + name)} onTap=${() => go(name)} />`)}</div>
  </div></div>`;
}

/**
 * The same places at the side of a wide screen.
 *
 * @param {{current: string}} props
 */
export function SideNav({ current }) {
  return html`<nav class="side-nav" aria-label=${t("nav.menu")}>
    <div class="side-name">Vatside</div>
    ${places().map(
      (
        name,
      ) => html`<${Tap} key=${name} class=${"side-link " + (name === current ? "is-chosen" : "")}
      pressed=${name === current} onTap=${() => go(name)}>${t("nav." + name)}</${Tap}>`,
    )}
  </nav>`;
}
