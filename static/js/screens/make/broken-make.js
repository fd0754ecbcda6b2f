import { html } from "../../parts/html.js";
import { BrokenLine } from "../../parts/broken-lines.js";
import { Row } from "../../parts/sheet.js";
import { may } from "../../parts/people-names.js";
import { t } from "../../messages/index.js";
import { swap } from "../../router.js";
import { RecordScreen } from "../record.js";
import { BatchSheet } from "./batch-sheet.js";

/** @type {any[]} */
const NOTHING = [];

/**
 * A make that cannot be shown: what is wrong, its record, and the ways to end it.
 *
 * @param {{make: string, row: Broken, nowMs: number, rest: string[]}} props
 */
export function BrokenMake({ make, row, nowMs, rest: [name, entry] }) {
  const onBack = () => swap("make", make);
  const view = {
    now_ms: nowMs,
    steps: NOTHING,
    log: NOTHING,
    make: {
      name: row.name ?? "–",
      batch: row.batch ?? "–",
      practice: row.practice,
      opened_ms: row.opened_ms,
      state: row.state,
      is_open: row.is_open,
      holds: row.holds,
    },
  };
  if (name === "record")
    return html`<${RecordScreen} make=${make} view=${view} entry=${entry} onBack=${onBack} />`;
  if (name === "batch")
    return html`<${BatchSheet} make=${make} view=${view} onBack=${onBack} />`;
  return html`<div class="sheet"><div class="scroll narrow">
    <${BrokenLine} row=${row} nowMs=${nowMs} />
    <p class="lead">${t("broken.what_now")}</p>
    <div class="rows">
      <${Row} title=${t("record.title")} onTap=${() => swap("make", make, "record")} />
      ${may("make_abandoned") ? html`<${Row} title=${t("batch.title", { name: view.make.name })} onTap=${() => swap("make", make, "batch")} />` : null}
    </div>
  </div></div>`;
}
