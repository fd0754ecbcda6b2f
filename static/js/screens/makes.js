import { html } from "../parts/html.js";
import { Row } from "../parts/sheet.js";
import { board } from "../parts/source.js";
import { clockDay } from "../format.js";
import { own, t } from "../messages/index.js";
import { go } from "../router.js";

/** Every make known on this phone, newest first, with its record. */
export function MakesScreen() {
  const { makes, now_ms: nowMs } = board.value ?? { makes: [], now_ms: 0 };
  return html`<div class="sheet"><div class="scroll"><h1>${t("now.past")}</h1>
    <div class="rows">${makes.map(
      (make) => html`<${Row} key=${make.id} title=${`${make.name} · ${make.batch}`}
      detail=${`${own(make.recipe_title)} · ${clockDay(make.opened_ms, nowMs)}`}
      side=${t("make_state.short_" + make.state)} onTap=${() => go("make", make.id, "record")} />`,
    )}</div>
    ${makes.length ? null : html`<p class="lead">${t("now.none_known")}</p>`}
  </div></div>`;
}
