import { html } from "./html.js";
import { leftOutMs, Tap } from "./tap.js";
import { secondMs } from "./ticker.js";
import { leftOutAsNewMs } from "./touch-guard.js";
import { tapper } from "./people-names.js";
import { LockButton } from "./wet-lock.js";
import {
  applyUpdate,
  clockWarning,
  core,
  lastWordMs,
  needsLook,
  net,
  oldestUnsentMs,
  roleMay,
  serverDisk,
  unsent,
  updateReady,
} from "./source.js";
import { go } from "../router.js";
import { age } from "../format.js";
import { t, tn } from "../messages/index.js";

// It has nothing to send and nobody to hear from.
const isStranger = () => net.value === "not_paired";

function unsentWords() {
  if (unsent.value === null) return "";
  if (!unsent.value) return isStranger() ? "" : t("status.all_sent");
  const oldest = oldestUnsentMs.value;
  return tn("status.unsent", unsent.value, {
    age: oldest ? age(secondMs.value - oldest) : t("word.moment"),
  });
}

// That room is running out is for the owner to know; that there is none, for all.
/** @param {?Person} person */
function diskWords(person) {
  const state = serverDisk.value;
  // Of a server that is silent nothing is known.
  const isShown =
    net.value === "online" &&
    state !== "fine" &&
    (state !== "nearly_full" || roleMay(person?.role, "server"));
  return isShown ? t("disk." + state) : null;
}

const HINT_MS = 5000;

/**
 * @param {?number} ms
 * @returns {ms is number}
 */
function isFresh(ms) {
  return ms !== null && secondMs.value > 0 && performance.now() - ms < HINT_MS;
}

function TouchHint() {
  const [two, asNew] = [leftOutMs.value, leftOutAsNewMs.value];
  const key =
    isFresh(two) && !(asNew !== null && asNew > two)
      ? "status.two_touches"
      : isFresh(asNew)
        ? "status.just_changed"
        : null;
  return key ? html`<span class="hint" role="alert">${t(key)}</span>` : null;
}

/**
 * Always on top: what is not yet on the server, the network, who is tapping.
 *
 * @param {{title: string}} props
 */
export function StatusBar({ title }) {
  const person = tapper();
  const disk = diskWords(person);
  const isCut = net.value !== "online" && net.value !== "unknown";
  return html`<header class="status">
    <div class="status-row">
      <${Tap} class="status-button" means="menu" onTap=${() => go("menu")}>${t("nav.menu")}</${Tap}>
      <span class="status-title">${title}</span>
      ${person ? html`<${LockButton} /><${Tap} class="status-button" means="who" label=${t("status.person", { name: person.name })} onTap=${() => go("who")}>${person.name}</${Tap}>` : null}
    </div>
    <div class=${`status-words ${isCut || disk || unsent.value || core.value === "failed" ? "is-check" : ""}`} role="status">
      <${TouchHint} />
      <span>${disk ?? t("net." + net.value)}</span>
      <span>${unsentWords()}</span>
      ${isCut && !isStranger() && lastWordMs.value ? html`<span>${t("status.last_word", { age: age(secondMs.value - lastWordMs.value) })}</span>` : null}
      ${core.value === "failed" ? html`<span>${t("status.core_failed")}</span>` : null}
      ${clockWarning.value ? html`<span>${t("status.clock")}</span>` : null}
      ${needsLook.value ? html`<span>${tn("status.needs_look", needsLook.value)}</span>` : null}
    </div>
    ${
      updateReady.value
        ? html`<div class="bar"><span class="bar-text">${t("update.ready")}</span>
      <${Tap} class="bar-button" onTap=${applyUpdate}>${t("update.take")}</${Tap}></div>`
        : null
    }
  </header>`;
}
