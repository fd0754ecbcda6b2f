import { html } from "./html.js";
import { Tap } from "./tap.js";
import { secondMs } from "./ticker.js";
import { lastAct, trouble, undo } from "./acts.js";
import { unsaved } from "./source.js";
import { whoseId } from "./whose.js";
import { t, tn } from "../messages/index.js";
import { go } from "../router.js";

/** What was just recorded, with a way back; and what could not be saved, in red. */
export function UndoBar() {
  const last = lastAct.value;
  const isOpen = last && secondMs.value < last.untilMs;
  const lost = unsaved.value ?? [];
  return html`<div class="undo-area" aria-live="polite">
    ${
      trouble.value || lost.length
        ? html`<div class="bar bar-act" role="alert">
          <span class="bar-text">${trouble.value ?? tn("unsaved.some", lost.length)}</span>
          ${
            lost.length
              ? html`<${Tap} class="bar-button" onTap=${() => {
                  trouble.value = null;
                  go("look");
                }}>${t("word.show")}</${Tap}>`
              : null
          }
          ${
            trouble.value
              ? html`<${Tap} class="bar-button" onTap=${() => {
                  trouble.value = null;
                }}>${t("word.seen")}</${Tap}>`
              : null
          }
        </div>`
        : null
    }
    ${
      isOpen
        ? html`<div class="bar">
          <span class="bar-text">${last.said} ${whoseId(last.event.make) ? html`<b class="whose">${whoseId(last.event.make)}</b>` : null}</span>
          ${last.isFinal ? null : html`<${Tap} class="bar-button" means=${"undo/" + last.event.id} onTap=${undo}>${t("undo.button")}</${Tap}>`}
        </div>`
        : null
    }
  </div>`;
}
