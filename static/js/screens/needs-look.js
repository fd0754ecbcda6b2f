import { useEffect, useState } from "preact/hooks";
import { Empty } from "../parts/empty.js";
import { Facts } from "../parts/facts.js";
import { html } from "../parts/html.js";
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
import { go } from "../router.js";
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

/**
 * @param {string} person
 * @param {number} atMs
 * @param {any} why
 */
function asideRows(person, atMs, why) {
  return [
    [t("fact.by"), nameOf(person)],
    [t("fact.when"), clockDay(atMs, nowMs())],
    [t("fact.why"), reasonText(why), { isLong: true }],
  ];
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
    <${Facts} rows=${asideRows(entry.event.person, entry.event.at_ms + entry.event.off_ms, entry.why)} />
    <${Tap} class="second" onTap=${() => sendAgain(entry.id).catch(() => {})}>${t("look.send_again")}</${Tap}>
  </div>`,
  );
}

/** @typedef {{entry: PutAside, as: string}} Open what is decided of which entry */

/** @param {{rows: PutAside[], onOpen: (open: Open) => void}} props */
function OnServer({ rows, onOpen }) {
  return rows.map(
    (entry) => html`<div class="alert alert-check" key=${entry.n}>
    <p class="alert-says">${eventText(entry.event)}</p>
    <${Facts} rows=${asideRows(entry.person, entry.recv_ms, entry.why)} />
    <div class="pair">
      <${Tap} class="second" onTap=${() => onOpen({ entry, as: "accept" })}>${t("look.accept")}</${Tap}>
      <${Tap} class="second" onTap=${() => onOpen({ entry, as: "keep_aside" })}>${t("look.keep_aside")}</${Tap}>
    </div></div>`,
  );
}

/** @param {{open: Open, onDone: () => void, onBack: () => void}} props */
function Settle({ open, onDone, onBack }) {
  const [refused, setRefused] = useState("");
  const settle = (/** @type {string} */ why) =>
    post(`/needs-look/${open.entry.n}/settle`, { why, as: open.as }).then(
      onDone,
      (/** @type {any} */ failure) => setRefused(whyOf(failure)),
    );
  return html`<${WhyPad} title=${t("look." + open.as)} lead=${eventText(open.entry.event)} reasons=${["looked_again", "maker_decides"]}
    doWord=${t("look." + open.as)} onDone=${settle} onBack=${onBack}>
    ${refused ? html`<p class="is-bad" role="alert">${refused}</p>` : null}
  </${WhyPad}>`;
}

/**
 * @typedef {object} AskedOfServer its entries, null until they came; or why not
 * @property {?PutAside[]} value
 * @property {?string} problem
 */

/**
 * What there is to look at; where it is nothing, that in one sentence.
 *
 * @param {{server?: AskedOfServer, onOpen?: (open: Open) => void}} props server: for
 *   who may decide
 */
function Lists({ server, onOpen = () => {} }) {
  const isServerDone = !server || server.value?.length === 0;
  const isNothing = !unsaved.value.length && !needsLook.value && isServerDone;
  return html`<div class="sheet"><div class="scroll narrow"><h1>${t("nav.look")}</h1>
    ${isNothing ? html`<${Empty} says=${t("empty.look")} does=${t("empty.to_now")} onTap=${() => go("now")} />` : html`<p class="quiet">${t("look.lead")}</p>`}
    ${unsaved.value.length ? html`<h2>${t("look.unsaved")}</h2><${Unsaved} />` : null}
    ${needsLook.value ? html`<h2>${t("look.phone")}</h2><${OnPhone} />` : null}
    ${server?.value?.length ? html`<h2>${t("look.server")}</h2><${OnServer} rows=${server.value} onOpen=${onOpen} />` : null}
    ${server?.problem ? html`<h2>${t("look.server")}</h2><p class="is-bad" role="alert">${server.problem}</p>` : null}
  </div></div>`;
}

function WithServer() {
  const server = useAsked("/needs-look");
  const [open, setOpen] = useState(/** @type {Open | null} */ (null));
  const close = () => setOpen(null);
  const done = () => {
    close();
    server.again();
  };
  if (open) return html`<${Settle} open=${open} onDone=${done} onBack=${close} />`;
  return html`<${Lists} server=${server} onOpen=${setOpen} />`;
}

/** Entries that a person must judge: not saved, put aside here, put aside there. */
export function NeedsLookScreen() {
  return may("needs_look") ? html`<${WithServer} />` : html`<${Lists} />`;
}
