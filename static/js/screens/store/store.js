import { Empty } from "../../parts/empty.js";
import { Facts } from "../../parts/facts.js";
import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { may } from "../../parts/people-names.js";
import { amount, count, quantity } from "../../format.js";
import { t } from "../../messages/index.js";
import { go, swap } from "../../router.js";
import { AgeingList, AgeingScreen } from "./ageing.js";
import { useTanks } from "./asked.js";
import { NewTank } from "./new-tank.js";
import { TankScreen } from "./tank.js";

/** @param {{tank: Tank}} props */
function TankRow({ tank }) {
  const inside = tank.loads.filter((load) => load.out_ms === null).length;
  const rows = [
    [
      t("store.expected"),
      quantity("brine_salt_frac", tank.salt_frac),
      { bar: tank.band?.bar },
    ],
    [t("fact.brine"), amount(tank.mass_kg, "kg")],
    [t("fact.loads"), inside ? count(inside) : t("store.no_loads")],
  ];
  return html`<${Row} title=${tank.name} detail=${html`<${Facts} isInKey rows=${rows} />`}
    onTap=${() => go("store", "tank", tank.id)} />`;
}

/** @param {{tanks: Tank[] | null, problem: string}} props */
function Tanks({ tanks, problem }) {
  const open = may("tank_opened") ? () => go("store", "new") : undefined;
  return html`<section class="block"><h2>${t("store.tanks")}</h2>
    ${problem ? html`<p class="is-bad" role="alert">${t("sums.failed", { why: problem })}</p>` : null}
    ${tanks === null ? html`<p role="status">${t("store.loading")}</p>` : null}
    ${tanks?.length === 0 ? html`<${Empty} says=${t("store.no_tanks")} does=${t("store.open_tank")} onTap=${open} />` : null}
    ${
      tanks?.length
        ? html`<div class="rows">${tanks.map((tank) => html`<${TankRow} key=${tank.id} tank=${tank} />`)}</div>
    ${open ? html`<div class="rows rows-apart"><${Row} title=${t("store.open_tank")} onTap=${open} /></div>` : null}`
        : null
    }
  </section>`;
}

function Overview() {
  const { value: tanks, problem } = useTanks();
  return html`<div class="sheet"><div class="scroll"><h1>${t("nav.store")}</h1>
    <div class="columns"><div class="column"><${Tanks} tanks=${tanks} problem=${problem} /></div>
      <div class="column"><${AgeingList} /></div></div></div></div>`;
}

/** @param {{id: string, rest: string[]}} props */
function OneTank({ id, rest }) {
  const { value: tanks, problem } = useTanks();
  const tank = tanks?.find((one) => one.id === id);
  if (tank) return html`<${TankScreen} tank=${tank} rest=${rest} />`;
  return html`<${Sheet} title=${t("store.tanks")} onBack=${() => swap("store")}>
    <p role="status">${problem || t(tanks ? "store.no_tank" : "store.loading")}</p></${Sheet}>`;
}

/**
 * Brine tanks and ageing wheels.
 *
 * @param {{rest: string[]}} props
 */
export function StoreScreen({ rest }) {
  const [name, id, ...more] = rest;
  if (name === "new") return html`<${NewTank} onBack=${() => swap("store")} />`;
  if (name === "tank") return html`<${OneTank} key=${id} id=${id} rest=${more} />`;
  if (name === "make")
    return html`<${AgeingScreen} key=${id} make=${id} rest=${more} />`;
  return html`<${Overview} />`;
}
