import { useState } from "preact/hooks";
import { Empty } from "../parts/empty.js";
import { Facts } from "../parts/facts.js";
import { html } from "../parts/html.js";
import { Choices, Row, Sheet } from "../parts/sheet.js";
import { Tap } from "../parts/tap.js";
import { TextField } from "../parts/text-field.js";
import { Certificate } from "../parts/certificate.js";
import { useAsked } from "../parts/asked.js";
import { whyOf } from "../parts/acts.js";
import { me, post, remove, roleMay } from "../parts/source.js";
import { clock, clockDay } from "../format.js";
import { t } from "../messages/index.js";
import { nowMs } from "../parts/source.js";
import { LinkForm, Links } from "./people/links.js";

/**
 * @typedef {{
 *   id: string, name: string, seen_ms: number, removed_ms: number | null,
 * }} PairedPhone
 */

const ROLES = ["helper", "maker", "owner", "viewer"];

function roleOptions() {
  return ROLES.map((key) => ({
    key,
    title: t("role." + key),
    detail: t("role_detail." + key),
  }));
}

// The owner never sees a PIN, and lets who forgot it choose another.
/** @param {{person: Person}} props */
function PinRow({ person }) {
  const [said, setSaid] = useState("");
  const reset = () =>
    post(`/people/${person.id}/pin/reset`, {}).then(
      ({ until_ms: untilMs }) =>
        setSaid(t("people.pin_until", { name: person.name, at: clock(untilMs) })),
      (failure) => setSaid(whyOf(failure)),
    );
  return html`<div class="rows rows-apart"><${Row} title=${t("people.pin")} detail=${html`<span role="status">${said || t("people.pin_detail")}</span>`} onTap=${reset} /></div>`;
}

/** @param {{person: Person | null, onDone: () => void, onBack: () => void}} props */
function PersonForm({ person, onDone, onBack }) {
  const [name, setName] = useState(person?.name ?? "");
  const [role, setRole] = useState(person?.role ?? "helper");
  const [problem, setProblem] = useState("");
  const send = async (extra = {}) => {
    try {
      await post(person ? `/people/${person.id}` : "/people", {
        name: name.trim(),
        role,
        ...extra,
      });
      onDone();
    } catch (failure) {
      setProblem(whyOf(failure));
    }
  };
  return html`<${Sheet} title=${person ? person.name : t("people.add")} onBack=${onBack}
    foot=${html`<${Tap} class="primary" disabled=${name.trim() === ""} onTap=${() => send()}>${t("people.save")}</${Tap}>`}>
    <${TextField} label=${t("people.name")} value=${name} onInput=${setName} longest=${60} />
    <h2>${t("people.role")}</h2>
    <${Choices} label=${t("people.role")} options=${roleOptions()} chosen=${role} onChoose=${setRole} />
    ${problem ? html`<p class="is-bad" role="alert">${problem}</p>` : null}
    ${person && roleMay(person.role, "pin") && person.id !== me.value?.person.id ? html`<${PinRow} person=${person} />` : null}
    ${person ? html`<div class="rows rows-apart"><${Row} class="is-destructive" title=${t("people.retire")} detail=${t("people.retire_detail")} onTap=${() => send({ active: false })} /></div>` : null}
  </${Sheet}>`;
}

/** @param {{person: Person, onBack: () => void}} props */
function Pairing({ person, onBack }) {
  const [pairing, setPairing] = useState(
    /** @type {{qr_svg: string, code: string, expires_ms: number} | null} */ (null),
  );
  const [problem, setProblem] = useState("");
  const ask = () =>
    post(`/people/${person.id}/pairing`, {}).then(setPairing, (failure) =>
      setProblem(whyOf(failure)),
    );
  return html`<${Sheet} title=${t("people.pair", { name: person.name })} onBack=${onBack}
    foot=${html`<${Tap} class="primary" onTap=${ask}>${t(pairing ? "people.pair_again" : "people.pair_make")}</${Tap}>`}>
    <p class="lead">${t("people.pair_lead")}</p>
    ${problem ? html`<p class="is-bad" role="alert">${problem}</p>` : null}
    ${
      pairing
        ? html`<img class="qr" alt=${t("people.qr", { name: person.name })} src=${"data:image/svg+xml," + encodeURIComponent(pairing.qr_svg)} />
      <p>${t("people.code")}</p><p class="code">${pairing.code}</p>
      <p class="quiet">${t("people.until", { at: clock(pairing.expires_ms) })}</p>`
        : null
    }
  </${Sheet}>`;
}

/** @param {{devices: PairedPhone[], again: () => void}} props */
function Devices({ devices, again }) {
  const [asked, setAsked] = useState(/** @type {string | null} */ (null));
  const [problem, setProblem] = useState("");
  const take = (/** @type {PairedPhone} */ device) =>
    remove(`/devices/${device.id}`).then(
      () => {
        setAsked(null);
        again();
      },
      (failure) => setProblem(whyOf(failure)),
    );
  return html`<h2>${t("people.devices")}</h2>
    ${problem ? html`<p class="is-bad" role="alert">${problem}</p>` : null}
    <div class="rows">${devices.map(
      (device) => html`<div class="row row-still" key=${device.id}>
      <span class="row-main"><span class="row-title">${device.name}</span>
        <${Facts} rows=${[[t("fact.heard"), device.seen_ms && clockDay(device.seen_ms, nowMs())]]} /></span>
      ${
        device.removed_ms
          ? html`<span class="row-side">${t("people.removed")}</span>`
          : asked === device.id
            ? html`<${Tap} class="second is-destructive" onTap=${() => take(device)}>${t("people.remove_sure")}</${Tap}>`
            : html`<${Tap} class="second" onTap=${() => setAsked(device.id)}>${t("people.remove")}</${Tap}>`
      }
    </div>`,
    )}</div>`;
}

/**
 * @param {{person: Person,
 *   open: (what: {name: string, person: Person}) => void}} props
 */
function PersonRow({ person, open }) {
  const rows = [
    [t("fact.role"), t("role." + person.role)],
    person.active === false && [t("fact.state"), t("people.retired")],
  ];
  return html`<div class="row row-still">
    <span class="row-main"><span class="row-title">${person.name}</span><${Facts} rows=${rows} /></span>
    <span class="row-buttons">
      <${Tap} class="second" onTap=${() => open({ name: "pairing", person })}>${t("people.pair_short")}</${Tap}>
      <${Tap} class="second" onTap=${() => open({ name: "form", person })}>${t("word.change")}</${Tap}>
    </span></div>`;
}

/** Who may do what, and which phones belong to the creamery. */
export function PeopleScreen() {
  const all = useAsked("/people");
  const devices = useAsked("/devices");
  const [open, setOpen] = useState(
    /** @type {{name: string, person?: Person | null} | null} */ (null),
  );
  const close = () => setOpen(null);
  const done = () => {
    close();
    all.again();
  };
  if (open?.name === "form")
    return html`<${PersonForm} person=${open.person} onDone=${done} onBack=${close} />`;
  if (open?.name === "link") return html`<${LinkForm} onBack=${close} />`;
  if (open?.name === "pairing")
    return html`<${Pairing} person=${open.person} onBack=${close} />`;
  const add = () => setOpen({ name: "form", person: null });
  const isAlone = all.value?.length === 1;
  return html`<div class="sheet"><div class="scroll"><h1>${t("nav.people")}</h1>
    ${all.problem ? html`<p class="is-bad" role="alert">${all.problem}</p>` : null}
    <${Certificate} />
    <div class="columns"><div class="column">
      <div class="rows">${(all.value ?? []).map((/** @type {Person} */ person) => html`<${PersonRow} key=${person.id} person=${person} open=${setOpen} />`)}</div>
      ${
        isAlone
          ? html`<div class="rows rows-apart"><${Empty} says=${t("empty.people")} does=${t("people.add")} onTap=${add} /></div>`
          : html`<div class="rows rows-apart"><${Row} title=${t("people.add")} onTap=${add} /></div>`
      }
    </div><div class="column">${devices.value ? html`<${Devices} devices=${devices.value} again=${devices.again} />` : null}
      <${Links} onNew=${() => setOpen({ name: "link" })} /></div></div>
  </div></div>`;
}
