import { render } from "preact";
import { beginAlarms } from "../data/alarm.js";
import { AlarmBar } from "../parts/alarm-bar.js";
import { html } from "../parts/html.js";
import { PracticeMark } from "../parts/practice-mark.js";
import { StatusBar } from "../parts/status-bar.js";
import { UndoBar } from "../parts/undo-bar.js";
import { me, net, view } from "../parts/source.js";
import { t } from "../messages/index.js";
import { route } from "../router.js";
import { Late } from "./late.js";
import { MakeScreen } from "./make.js";
import { MenuScreen, SideNav } from "./menu.js";
import { NowScreen } from "./now.js";
import { PairScreen } from "./pair.js";
import { WhoScreen } from "./who.js";

/** @type {Record<string, (rest: string[]) => any>} */
const SCREENS = {
  now: () => html`<${NowScreen} />`,
  make: ([make, ...rest]) =>
    make
      ? html`<${MakeScreen} key=${make} make=${make} rest=${rest} />`
      : html`<${NowScreen} />`,
  makes: () => html`<${Late} screen="MakesScreen" />`,
  new: () => html`<${Late} screen="NewMakeScreen" />`,
  live: () => html`<${Late} screen="LiveScreen" />`,
  recipes: ([id]) => html`<${Late} screen="RecipesScreen" id=${id} />`,
  people: () => html`<${Late} screen="PeopleScreen" />`,
  alarms: (rest) => html`<${Late} screen="AlarmsScreen" rest=${rest} />`,
  wall: () => html`<${Late} screen="WallScreen" />`,
  look: () => html`<${Late} screen="NeedsLookScreen" />`,
  device: () => html`<${Late} screen="DeviceScreen" />`,
  sums: ([topic]) => html`<${Late} screen="SumsScreen" topic=${topic} />`,
  sum: ([name, input]) =>
    html`<${Late} screen="SumScreen" name=${name} input=${input} />`,
  store: (rest) => html`<${Late} screen="StoreScreen" rest=${rest} />`,
  trends: ([recipe]) => html`<${Late} screen="TrendsScreen" recipe=${recipe} />`,
  who: () => html`<${WhoScreen} />`,
  words: () => html`<${Late} screen="WordsScreen" />`,
  pin: () => html`<${Late} screen="PinScreen" />`,
  menu: () => html`<${MenuScreen} />`,
  pair: ([code]) => html`<${PairScreen} key=${code} code=${code} />`,
};

// Also over the pads and sheets of such a make, which do not name it.
/** @param {{make: ?Make}} props */
function PracticeBar({ make }) {
  if (!make?.practice) return null;
  return html`<div class="practice-bar"><${PracticeMark} of=${make} /></div>`;
}

/**
 * The make that a screen is about, once it is known.
 *
 * @param {string} name
 * @param {(string | undefined)[]} rest
 */
function makeOf(name, [id]) {
  const make = view.value?.make;
  return name === "make" && make && make.id === id ? make : null;
}

function App() {
  const [asked = "now", ...rest] = route.value;
  // Behind a read-only link there is no phone, no person and no menu.
  if (asked === "guest")
    return html`<div class="app"><div class="main"><main class="screen"><${Late} screen="GuestScreen" rest=${rest} /></main></div></div>`;
  const mustPair = me.value === null || net.value === "removed";
  const name =
    mustPair && asked !== "device" ? "pair" : asked in SCREENS ? asked : "now";
  if (name === "wall") return html`<${Late} screen="WallScreen" />`;
  const make = makeOf(name, rest);
  return html`<div class="app">
    ${mustPair ? null : html`<${SideNav} current=${name} />`}
    <div class="main">
      <${StatusBar} title=${t("nav." + name)} make=${make} />
      <${PracticeBar} make=${make} />
      <${UndoBar} />
      <${AlarmBar} />
      <main class="screen" key=${name}>${SCREENS[name](name === asked ? rest : [])}</main>
    </div>
  </div>`;
}

/**
 * Paint the screens into an element; they follow the signals from there on.
 *
 * @param {HTMLElement} root
 */
export function startScreens(root) {
  root.replaceChildren(); // the page's own word until here
  render(html`<${App} />`, root);
  beginAlarms();
}
