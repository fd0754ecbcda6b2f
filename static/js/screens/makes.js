import { DayBand } from "../parts/day-band.js";
import { Empty } from "../parts/empty.js";
import { Facts } from "../parts/facts.js";
import { html } from "../parts/html.js";
import { may } from "../parts/people-names.js";
import { Row } from "../parts/sheet.js";
import { board } from "../parts/source.js";
import { Table } from "../parts/table.js";
import { Tap } from "../parts/tap.js";
import { useWide } from "../parts/wide.js";
import { clockDay } from "../format.js";
import { own, t } from "../messages/index.js";
import { go } from "../router.js";

/** @param {MakeSummary} make */
function open(make) {
  return () => go("make", make.id, "record");
}

/** @param {{make: MakeSummary, nowMs: number}} props */
function MakeRow({ make, nowMs }) {
  const rows = [
    [t("fact.batch"), make.batch],
    [t("fact.recipe"), own(make.recipe_title)],
    [t("fact.opened"), clockDay(make.opened_ms, nowMs)],
    [t("fact.state"), t("make_state.short_" + make.state)],
  ];
  return html`<${Row} title=${make.name} detail=${html`<${Facts} isInKey rows=${rows} />`} onTap=${open(make)} />`;
}

/** @param {{makes: MakeSummary[], nowMs: number}} props */
function MakesTable({ makes, nowMs }) {
  const titles = ["make", "batch", "recipe", "opened", "band_now", "state"];
  const rows = makes.map((make) => ({
    key: make.id,
    class: "has-key",
    cells: [
      html`<${Tap} class="row" onTap=${open(make)}>${make.name}</${Tap}>`,
      make.batch,
      own(make.recipe_title),
      clockDay(make.opened_ms, nowMs),
      make.is_open ? html`<${DayBand} band=${make.band} isThin />` : "",
      t("make_state.short_" + make.state),
    ],
  }));
  return html`<div class="told makes-table"><${Table} label=${t("now.past")} columns=${titles.map((name) => ({ title: t("fact." + name) }))} rows=${rows} /></div>`;
}

/** Every make known on this phone, newest first, with its record. */
export function MakesScreen() {
  const isWide = useWide();
  const { makes, now_ms: nowMs } = board.value ?? { makes: [], now_ms: 0 };
  return html`<div class="sheet"><div class="scroll"><h1>${t("now.past")}</h1>
    ${
      makes.length === 0
        ? html`<${Empty} says=${t("now.none_known")} does=${may("make_opened") && t("empty.start")} onTap=${() => go("new")} />`
        : isWide
          ? html`<${MakesTable} makes=${makes} nowMs=${nowMs} />`
          : html`<div class="rows">${makes.map((make) => html`<${MakeRow} key=${make.id} make=${make} nowMs=${nowMs} />`)}</div>`
    }
  </div></div>`;
}
