import { html } from "../parts/html.js";
import { Row } from "../parts/sheet.js";
import { Tap } from "../parts/tap.js";
import { may } from "../parts/people-names.js";
import { t } from "../messages/index.js";
import { go } from "../router.js";

// By what one comes for; and what one must be allowed to do to find anything there.
/** @type {{group: string, places: [string, string?][]}[]} */
const GROUPS = [
  {
    group: "work",
    places: [["now"], ["new", "make_opened"], ["makes"], ["store"], ["sums"], ["look"]],
  },
  { group: "watch", places: [["live"], ["wall"], ["alarms"], ["trends"]] },
  {
    group: "set_up",
    places: [["recipes"], ["people", "people"], ["words"], ["device"]],
  },
];

function groups() {
  return GROUPS.map(({ group, places }) => ({
    title: t("nav_group." + group),
    names: places.filter(([, act]) => !act || may(act)).map(([name]) => name),
  }));
}

/** Every place of the app, as rows. */
export function MenuScreen() {
  return html`<div class="sheet"><div class="scroll"><h1>${t("nav.menu")}</h1>
    <div class="menu-groups">${groups().map(
      ({ title, names }) => html`<section key=${title}><h2>${title}</h2>
      <div class="rows">${names.map((name) => html`<${Row} key=${name} title=${t("nav." + name)} detail=${t("nav_detail." + name)} onTap=${() => go(name)} />`)}</div></section>`,
    )}</div>
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
    ${groups().map(
      ({ title, names }) =>
        html`<section class="side-group" key=${title}><h2>${title}</h2>${names.map(
          (
            name,
          ) => html`<${Tap} key=${name} class=${"side-link " + (name === current ? "is-chosen" : "")}
        pressed=${name === current} onTap=${() => go(name)}>${t("nav." + name)}</${Tap}>`,
        )}</section>`,
    )}
  </nav>`;
}
