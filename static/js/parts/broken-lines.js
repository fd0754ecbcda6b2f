import { html } from "./html.js";
import { problemsText } from "./acts.js";
import { PracticeMark } from "./practice-mark.js";
import { StateMark } from "./state-mark.js";
import { Tap } from "./tap.js";
import { clockDay } from "../format.js";
import { t, tn } from "../messages/index.js";

/** @param {Broken} row */
function nameText(row) {
  if (row.is_tank) return t("broken.tank_name", { name: row.name ?? "–" });
  if (!row.make) return t("broken.no_name");
  return t("broken.name", { name: row.name ?? "–", batch: row.batch ?? "–" });
}

/** @param {Broken} row */
function whyText(row) {
  if (row.why === "newer") return t("broken.newer");
  if (row.why === "unsound")
    return t("broken.unsound", { problems: problemsText(row.problems ?? []) });
  return t("broken.fault", { fault: row.fault ?? "–" });
}

/**
 * One make, tank or part that cannot be shown: which, what is missing, since when.
 *
 * @param {{row: Broken, nowMs: number, children?: any}} props
 */
export function BrokenLine({ row, nowMs, children }) {
  return html`<div class="alert alert-act" role="alert">
    <p class="alert-says"><${StateMark} state="act" word=${t("broken.mark")} /> ${nameText(row)}${row.vat ? " · " + row.vat : ""} <${PracticeMark} of=${row} /></p>
    <p>${t("broken." + row.what)} ${row.since_ms ? t("broken.since", { at: clockDay(row.since_ms, nowMs) }) : ""}</p>
    ${row.why ? html`<p>${whyText(row)}</p>` : null}
    ${children}
  </div>`;
}

/**
 * All that cannot be shown.
 *
 * @param {{rows: ?Broken[], nowMs: number, onOpen?: (make: string) => unknown}} props
 *   onOpen: where one may be opened from here
 */
export function BrokenLines({ rows, nowMs, onOpen }) {
  return (rows ?? []).map(
    (row) => html`<${BrokenLine} key=${row.make + row.what} row=${row} nowMs=${nowMs}>
    ${onOpen && row.make && !row.is_tank ? html`<${Tap} class="second" onTap=${() => onOpen(row.make)}>${t("broken.open")}</${Tap}>` : null}
  </${BrokenLine}>`,
  );
}

/**
 * How many entries are kept and cannot be shown here: of a newer app, and others.
 *
 * @param {{unread: ?Unread}} props
 */
export function UnreadLines({ unread }) {
  if (!unread) return [];
  return /** @type {(keyof Unread)[]} */ (["newer", "unsound"])
    .filter((why) => unread[why])
    .map(
      (why) => html`<p class="unread" key=${why}>
    <${StateMark} state="check" /> ${tn("unread." + why, unread[why])}</p>`,
    );
}
