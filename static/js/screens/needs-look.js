import { useEffect, useState } from "preact/hooks";
import { html } from "../parts/html.js";
import { Row } from "../parts/sheet.js";
import { Tap } from "../parts/tap.js";
import { WhyPad } from "../parts/why-pad.js";
import { useAsked } from "../parts/asked.js";
import { problemsText, whyOf } from "../parts/acts.js";
import { may, nameOf } from "../parts/people-names.js";
import {
  dropUnsaved,
  needsLook,
  nowMs,
  post,
  putAside,
  retryUnsaved,
  sendAgain,
  unsaved,
} from "../parts/source.js";
import { clockDay } from "../format.js";
import { has, t } from "../messages/index.js";
import { lineText } from "./record/line-text.js";

/**
 * @typedef {{
 *   n: number, person: string, recv_ms: number, why: any, event: any,
 * }} PutAside an entry as the server put it aside
 */

/** @param {any} why */
function reasonText(why) {
  const list = Array.isArray(why) ? why : why ? [why] : [];
  return list
    .map((reason) =>
      typeof reason === "string" ? t("look_reason." + reason) : problemsText([reason]),
    )
    .join(" ");
}

/** @param {any} event */
function eventText(event) {
  const kind = "line." + event?.kind;
  return event?.data && has(kind)
    ? lineText({ ...event, step: event.data.step }, [])
    : t("look.unknown");
}

function Unsaved() {
  return unsaved.value.map(
    (entry) => html`<div class="alert alert-act" key=${entry.id} role="alert">
    <p class="alert-says">${eventText(entry)}</p>
    <p>${entry.problems.length ? problemsText(entry.problems, entry.data?.quantity) : t("unsaved." + entry.key)}</p>
    <div class="pair">
      <${Tap} class="second" onTap=${() => retryUnsaved(entry.id).catch(() => {})}>${t("unsaved.retry")}</${Tap}>
      <${Tap} class="second is-destructive" onTap=${() => dropUnsaved(entry.id)}>${t("unsaved.drop")}</${Tap}>
    </div></div>`,
  );
}

function OnPhone() {
  const [rows, setRows] = useState(/** @type {any[]} */ ([]));
  useEffect(() => {
    putAside().then(setRows, () => setRows([]));
  }, [needsLook.value]);
  return rows.map(
    (entry) => html`<div class="alert alert-check" key=${entry.id}>
    <p class="alert-says">${eventText(entry.event)}</p>
    <p>${t("look.by", { name: nameOf(entry.event.person), at: clockDay(entry.event.at_ms + entry.event.off_ms, nowMs()) })}</p>
    <p>${reasonText(entry.why)}</p>
    <${Tap} class="second" onTap=${() => sendAgain(entry.id).catch(() => {})}>${t("look.send_again")}</${Tap}>
  </div>`,
  );
}

function OnServer() {
  const { value, problem, again } = useAsked("/needs-look");
  const [open, setOpen] = useState(
    /** @type {{entry: PutAside, as: string} | null} */ (null),
  );
  const [refused, setRefused] = useState("");
  if (open) {
    const settle = (/** @type {string} */ why) =>
      post(`/needs-look/${open.entry.n}/settle`, { why, as: open.as }).then(
        () => {
          setOpen(null);
          again();
        },
        (/** @type {any} */ failure) => setRefused(whyOf(failure)),
      );
    return html`<${WhyPad} title=${t("look." + open.as)} lead=${eventText(open.entry.event)} reasons=${["looked_again", "maker_decides"]}
      doWord=${t("look." + open.as)} onDone=${settle} onBack=${() => setOpen(null)}>
      ${refused ? html`<p class="is-bad" role="alert">${refused}</p>` : null}
    </${WhyPad}>`;
  }
  if (problem) return html`<p class="is-bad">${problem}</p>`;
  if (value?.length === 0) return html`<p>${t("look.none")}</p>`;
  return (value ?? []).map(
    (
      /** @type {PutAside} */ entry,
    ) => html`<div class="alert alert-check" key=${entry.n}>
    <p class="alert-says">${eventText(entry.event)}</p>
    <p>${t("look.by", { name: nameOf(entry.person), at: clockDay(entry.recv_ms, nowMs()) })}</p>
    <p>${reasonText(entry.why)}</p>
    <div class="pair">
      <${Tap} class="second" onTap=${() => setOpen({ entry, as: "accept" })}>${t("look.accept")}</${Tap}>
      <${Tap} class="second" onTap=${() => setOpen({ entry, as: "keep_aside" })}>${t("look.keep_aside")}</${Tap}>
    </div></div>`,
  );
}

/** Entries that a person must judge: not saved, put aside here, put aside there. */
export function NeedsLookScreen() {
  return html`<div class="sheet"><div class="scroll narrow"><h1>${t("nav.look")}</h1>
    <p class="quiet">${t("look.lead")}</p>
    <h2>${t("look.unsaved")}</h2>${unsaved.value.length ? html`<${Unsaved} />` : html`<p>${t("look.none")}</p>`}
    <h2>${t("look.phone")}</h2>${needsLook.value ? html`<${OnPhone} />` : html`<p>${t("look.none")}</p>`}
    ${may("needs_look") ? html`<h2>${t("look.server")}</h2><${OnServer} />` : null}
  </div></div>`;
}
