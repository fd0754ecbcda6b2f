import { useState } from "preact/hooks";
import { html } from "../parts/html.js";
import { LanguagePick } from "../parts/language-pick.js";
import { Tap } from "../parts/tap.js";
import { TextField } from "../parts/text-field.js";
import { whyOf } from "../parts/acts.js";
import { net, pair } from "../parts/source.js";
import { faultOf } from "../data/join-faults.js";
import { has, t } from "../messages/index.js";
import { swap } from "../router.js";

/**
 * @param {any} failure
 * @returns {Record<string, string>}
 */
function told(failure) {
  const { field, says, values } = faultOf(failure);
  return { [field]: has(says) ? t(says, values) : whyOf(failure) };
}

/**
 * Join this phone to the creamery, by the link's code or a typed one.
 *
 * @param {{code?: string}} props
 */
export function PairScreen({ code: given }) {
  const [code, setCode] = useState(given ?? "");
  const [device, setDevice] = useState("");
  const [name, setName] = useState("");
  const [fault, setFault] = useState(
    /** @type {Record<string, string> | null} */ (null),
  );
  const [isBusy, setBusy] = useState(false);
  const join = async () => {
    setBusy(true);
    setFault(null);
    /** @type {{device_name: string, person_name?: string}} */
    const names = { device_name: device.trim() || t("pair.phone") };
    if (name.trim()) names.person_name = name.trim();
    try {
      await pair(code.trim(), names);
      swap("now");
    } catch (failure) {
      setFault(told(failure));
    }
    setBusy(false);
  };
  return html`<div class="sheet">
    <div class="scroll narrow">
      <h1>${t("pair.title")}</h1>
      <${LanguagePick} />
      <p class="lead">${t(net.value === "removed" ? "pair.removed" : "pair.lead")}</p>
      <${TextField} label=${t("pair.code")} value=${code} onInput=${setCode} problem=${fault?.code} longest=${80} />
      <${TextField} label=${t("pair.device")} hint=${t("pair.device_hint")} value=${device} onInput=${setDevice} problem=${fault?.device} longest=${60} />
      <${TextField} label=${t("pair.name")} hint=${t("pair.name_hint")} value=${name} onInput=${setName} problem=${fault?.name} longest=${60} />
    </div>
    <div class="foot"><${Tap} class="primary" disabled=${code.trim() === "" || isBusy} onTap=${join}>${t("pair.join")}</${Tap}></div>
  </div>`;
}
