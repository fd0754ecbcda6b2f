import { useEffect, useState } from "preact/hooks";
import { html } from "../parts/html.js";
import { Later } from "../parts/later.js";
import { Row } from "../parts/sheet.js";
import { StateMark } from "../parts/state-mark.js";
import { secondMs } from "../parts/ticker.js";
import {
  clockWarning,
  core,
  coreProblem,
  exportQueue,
  get,
  lastWordMs,
  me,
  net,
  netProblem,
  offlineReady,
  refresh,
  storage,
  unsent,
} from "../parts/source.js";
import { age, bytes, count, span } from "../format.js";
import { t, tFirst } from "../messages/index.js";
import { go } from "../router.js";
import { SignOut } from "./device/sign-out.js";

/** @param {{label: string, value: string, isGood: boolean, word?: string}} props */
function Fact({ label, value, isGood, word }) {
  return html`<li><span>${label}</span><b>${value}</b>
    <${StateMark} state=${isGood ? "ok" : "check"} word=${word ?? (isGood ? t("state.ok") : t("state.check"))} /></li>`;
}

function clockText() {
  const warning = clockWarning.value;
  if (!warning) return t("device.clock_good");
  if (warning.off_ms === null)
    return t("device.clock_moved", { by: span(warning.jumped_ms / 1000) });
  return t("device.clock_off", { by: span(warning.off_ms / 1000) });
}

// At a plain address the server may know a secure one.
function SecureWay() {
  const [url, setUrl] = useState(/** @type {string | null} */ (null));
  useEffect(() => {
    get("/health").then(
      (told) => setUrl(told.secure_url ?? null),
      () => {},
    );
  }, []);
  return (
    url &&
    html`<${Row} title=${t("device.secure_way")} detail=${t("device.secure_way_detail")} onTap=${() => location.assign(url)} />`
  );
}

/** What this phone can and cannot do now, and how to put it on the home screen. */
export function DeviceScreen() {
  const kept = storage.value;
  const isSecure = globalThis.isSecureContext;
  const [isLeaving, setLeaving] = useState(false);
  if (isLeaving && me.value)
    return html`<${SignOut} onBack=${() => setLeaving(false)} />`;
  return html`<div class="sheet"><div class="scroll narrow"><h1>${t("nav.device")}</h1>
    <ul class="facts facts-wide">
      <${Fact} label=${t("device.net")} value=${t("net." + net.value)} isGood=${net.value === "online"} />
      <${Fact} label=${t("device.word")} value=${lastWordMs.value ? age(secondMs.value - lastWordMs.value) : "–"} isGood=${Boolean(lastWordMs.value)} />
      <${Fact} label=${t("device.unsent")} value=${count(unsent.value)} isGood=${unsent.value === 0} />
      <${Fact} label=${t("device.core")} value=${tFirst(["device.core_" + core.value, core.value])} isGood=${core.value === "ready"} />
      <${Fact} label=${t("device.offline")} value=${tFirst(["device.offline_" + offlineReady.value, offlineReady.value])} isGood=${offlineReady.value === "ready"} />
      <${Fact} label=${t("device.secure")} value=${t(isSecure ? "word.yes" : "word.no")} isGood=${isSecure} />
      <${Fact} label=${t("device.kept")} value=${kept.persisted === null ? "–" : t(kept.persisted ? "word.yes" : "device.kept_no")} isGood=${kept.persisted === true} />
      <${Fact} label=${t("device.room")} value=${t("device.usage", { used: bytes(kept.usage), of: bytes(kept.quota) })} isGood=${!kept.problem} />
      <${Fact} label=${t("device.clock")} value=${clockText()} isGood=${!clockWarning.value} />
      <li><span>${t("device.id")}</span><b class="small">${me.value?.device ?? "–"}</b></li>
    </ul>
    ${coreProblem.value ? html`<p class="is-bad">${coreProblem.value}</p>` : null}
    ${netProblem.value ? html`<p class="quiet">${tFirst(["error." + netProblem.value.key, netProblem.value.text ?? netProblem.value.key])}</p>` : null}
    ${kept.problem ? html`<p class="is-bad">${tFirst(["unsaved." + kept.problem, kept.problem])}</p>` : null}
    <div class="rows">
      ${isSecure ? html`<${Row} title=${t("device.check")} detail=${t("device.check_detail")} onTap=${() => location.assign("/setup")} />` : html`<${SecureWay} />`}
      <${Row} title=${t("device.ask")} detail=${t("device.ask_detail")} onTap=${() => refresh()} />
      ${net.value === "not_paired" || net.value === "removed" ? html`<${Row} title=${t("device.join")} detail=${t("device.join_detail")} onTap=${() => go("pair")} />` : null}
      <${Row} title=${t("device.export")} detail=${t("device.export_detail")} onTap=${() => exportQueue()} />
      ${me.value ? html`<${Row} title=${t("signout.title")} detail=${t("signout.detail", { name: me.value.person.name })} onTap=${() => setLeaving(true)} />` : null}
    </div>
    <${Later} part="hands" name="Hands" />
    <h2>${t("install.title")}</h2>
    <p>${t("install.why")}</p>
    <h3>iPhone</h3><ol class="lines"><li>${t("install.iphone_1")}</li><li>${t("install.iphone_2")}</li><li>${t("install.iphone_3")}</li></ol>
    <h3>Android</h3><ol class="lines"><li>${t("install.android_1")}</li><li>${t("install.android_2")}</li><li>${t("install.android_3")}</li></ol>
    <p>${t("install.locked")}</p>
  </div></div>`;
}
