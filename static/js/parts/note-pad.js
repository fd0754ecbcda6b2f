import { useState } from "preact/hooks";
import { html } from "./html.js";
import { Tap } from "./tap.js";
import { Sheet } from "./sheet.js";
import { TextField } from "./text-field.js";
import { act } from "./acts.js";
import { useDraft } from "./draft.js";
import { nowMs } from "./source.js";
import { t } from "../messages/index.js";

/**
 * Write a note into the make, beside the step it was written at.
 *
 * @param {{make: string, step?: ?string, onBack: () => unknown}} props
 */
export function NotePad({ make, step, onBack }) {
  const draft = useDraft("note", nowMs);
  const [text, setText] = useState(draft.found?.typed ?? "");
  const write = (/** @type {string} */ next) => {
    setText(next);
    draft.hold(next);
  };
  const [isBad, setBad] = useState(false);
  const save = async () => {
    const data = step ? { text: text.trim(), step } : { text: text.trim() };
    const event = await act("note_added", { make, data }, t("said.note"));
    setBad(!event);
    if (!event) return;
    draft.drop();
    onBack();
  };
  return html`<${Sheet} title=${t("note.title")} onBack=${onBack}
    foot=${html`<${Tap} class="primary" disabled=${text.trim() === ""} onTap=${save}>${t("note.save")}</${Tap}>`}>
    <div class=${isBad ? "is-bad" : ""}>
      <${TextField} isLong label=${t("note.label")} value=${text} onInput=${write} longest=${2000} />
    </div>
  </${Sheet}>`;
}
