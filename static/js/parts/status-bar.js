import { html } from "./html.js";
import { MARKS } from "./marks.js";
import { leftOutMs, Tap } from "./tap.js";
import { secondMs } from "./ticker.js";
import { leftOutAsNewMs } from "./touch-guard.js";
import { tapper } from "./people-names.js";
import { LockButton } from "./wet-lock.js";
import { whoseOf } from "./whose.js";
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

// An entry is on its way for a moment after each tap: a line of words that came and
// went with it would move everything below.
const ON_ITS_WAY_MS = 15000;

function isWaitingLong() {
  const oldest = oldestUnsentMs.value;
  return Boolean(unsent.value && oldest && secondMs.value - oldest > ON_ITS_WAY_MS);
}

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

/** @param {{make: Make}} props */
function WhichMake({ make }) {
  const milk = make.milk?.is.class;
  return html`<span class="status-title is-make">
    <b class="make-whose">${whoseOf(make)}</b>
    ${make.vat ? html`<span class="make-name">${make.name}</span>` : null}
    ${milk && milk !== "pasteurised" ? html`<span class="make-milk"><span class="heard">${t("milk.short." + milk)}</span><span aria-hidden="true">${t("milk.word." + milk)}</span></span>` : null}
  </span>`;
}

/**
 * Always on top, in one line: the menu, which vat, who is tapping. That all is well is
 * a mark; what is not stands below in words.
 *
 * @param {{title: string, make: ?Make}} props make: the one that is shown
 */
export function StatusBar({ title, make }) {
  const person = tapper();
  const disk = diskWords(person);
  const isCut = net.value !== "online" && net.value !== "unknown";
  const isFailed = core.value === "failed";
  const isWaiting = isWaitingLong();
  const isWell = !(isCut || disk || isFailed || isWaiting);
  const isQuiet = isWell && !clockWarning.value && !needsLook.value;
  const isDone = net.value === "online" && !unsent.value;
  return html`<header class="status">
    <div class="status-row">
      <${Tap} class="status-button is-icon" means="menu" label=${t("nav.menu")} onTap=${() => go("menu")}><svg viewBox="0 0 24 24" aria-hidden="true"><path d="M3 5.5h18M3 12h18M3 18.5h18" /></svg></${Tap}>
      ${make ? html`<${WhichMake} make=${make} />` : html`<span class="status-title">${title}</span>`}
      ${isQuiet ? html`<svg class="status-mark" viewBox="0 0 24 24" aria-hidden="true"><path d=${isDone ? "M4 13l5.5 5.5L20.5 6" : MARKS.running.line} /></svg>` : null}
      ${person ? html`<${LockButton} /><${Tap} class="status-button" means="who" label=${t("status.person", { name: person.name })} onTap=${() => go("who")}>${person.name}</${Tap}>` : null}
    </div>
    <div class=${`status-words ${isQuiet ? "heard" : isWell ? "" : "is-check"}`} role="status">
      <span>${disk ?? t("net." + net.value)}</span>
      <span>${unsentWords()}</span>
      ${isCut && !isStranger() && lastWordMs.value ? html`<span>${t("status.last_word", { age: age(secondMs.value - lastWordMs.value) })}</span>` : null}
      ${isFailed ? html`<span>${t("status.core_failed")}</span>` : null}
      ${clockWarning.value ? html`<span>${t("status.clock")}</span>` : null}
      ${needsLook.value ? html`<span>${tn("status.needs_look", needsLook.value)}</span>` : null}
    </div>
    <${TouchHint} />
    ${
      updateReady.value
        ? html`<div class="bar"><span class="bar-text">${t("update.ready")}</span>
      <${Tap} class="bar-button" onTap=${applyUpdate}>${t("update.take")}</${Tap}></div>`
        : null
    }
  </header>`;
}
