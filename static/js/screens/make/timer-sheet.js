import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Choices, Row, Sheet } from "../../parts/sheet.js";
import { Keypad } from "../../parts/keypad.js";
import { Tap } from "../../parts/tap.js";
import { TextField } from "../../parts/text-field.js";
import { act } from "../../parts/acts.js";
import { ask } from "../../parts/source.js";
import { span } from "../../format.js";
import { t } from "../../messages/index.js";

const LENGTHS_MIN = [5, 10, 15, 20, 30, 60];

/**
 * Start a timer of one's own.
 *
 * @param {{make: string, step?: string, onBack: () => void}} props
 */
export function TimerSheet({ make, step, onBack }) {
  const [label, setLabel] = useState("");
  const [minutes, setMinutes] = useState(/** @type {number | null} */ (null));
  const [isTyping, setTyping] = useState(false);
  const start = async (/** @type {number} */ lastsS) => {
    const name = label.trim() || t("timer.name", { span: span(lastsS) });
    /** @type {Record<string, any>} */
    const data = { label: name, lasts_s: lastsS };
    if (step) data.step = step;
    const event = await act(
      "timer_started",
      { make, data },
      t("said.timer", { label: name }),
    );
    if (event) onBack();
    return Boolean(event);
  };
  const readMinutes = (/** @type {string} */ typed) =>
    ask.readField({
      kind: "timer_started",
      field: "lasts_s",
      typed,
      unit: "min",
    });
  if (isTyping) {
    return html`<div class="sheet"><${Keypad} onBack=${() => setTyping(false)} title=${t("timer.how_long")} unit="min" decimals=${0} read=${readMinutes} save=${start} saveWord=${t("timer.start")} /></div>`;
  }
  const options = LENGTHS_MIN.map((lengthMin) => ({
    key: lengthMin,
    title: span(lengthMin * 60),
  }));
  return html`<${Sheet} title=${t("more.timer")} onBack=${onBack}
    foot=${html`<${Tap} class="primary" disabled=${!minutes} onTap=${() => minutes && start(minutes * 60)}>${t("timer.start")}</${Tap}>`}>
    <${TextField} label=${t("timer.label")} value=${label} onInput=${setLabel} longest=${60} />
    <${Choices} label=${t("timer.how_long")} options=${options} chosen=${minutes} onChoose=${setMinutes} />
    <div class="rows"><${Row} title=${t("timer.other")} onTap=${() => setTyping(true)} /></div>
  </${Sheet}>`;
}
