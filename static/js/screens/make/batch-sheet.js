import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { TextField } from "../../parts/text-field.js";
import { WhyPad } from "../../parts/why-pad.js";
import { useProof } from "../../parts/pin.js";
import { nameOf } from "../../parts/people-names.js";
import { clock } from "../../format.js";
import { t, whyWords } from "../../messages/index.js";

/** @type {Record<string, string[]>} */
const REASONS = {
  hold_placed: ["reading_missing", "reading_off", "looks_wrong"],
  hold_lifted: ["looked_again", "test_back"],
  make_closed: ["all_done"],
  make_abandoned: ["milk_bad", "set_failed", "equipment_down"],
};

/** @param {{onSign: (statement: string) => void, onBack: () => void}} props */
function SignOff({ onSign, onBack }) {
  const [text, setText] = useState(t("batch.statement"));
  return html`<${Sheet} title=${t("batch.sign")} onBack=${onBack}
    foot=${html`<${Tap} class="primary" disabled=${text.trim() === ""} onTap=${() => onSign(text.trim())}>${t("batch.sign_do")}</${Tap}>`}>
    <${TextField} isLong label=${t("batch.sign_label")} value=${text} onInput=${setText} longest=${400} />
  </${Sheet}>`;
}

/**
 * What concerns the whole make: hold, sign off, close, abandon.
 *
 * @param {{make: string, view: View, onBack: () => void}} props
 */
export function BatchSheet({ make, view, onBack }) {
  const [open, setOpen] = useState(
    /** @type {{kind: string, ref?: string} | null} */ (null),
  );
  const close = () => setOpen(null);
  const [record, over] = useProof(close);
  if (open?.kind === "signed_off") {
    const sign = (/** @type {string} */ statement) =>
      record({
        kind: "signed_off",
        given: { make, data: { statement } },
        said: t("said.signed"),
        title: t("batch.sign"),
        doWord: t("batch.sign_do"),
      });
    return over(html`<${SignOff} onSign=${sign} onBack=${close} />`);
  }
  if (open) {
    const title = t("batch." + open.kind);
    const doWord = t("batch." + open.kind + "_do");
    const done = (/** @type {string} */ why) =>
      record({
        kind: open.kind,
        given: { make, ref: open.ref ?? null, data: { why } },
        said: t("said." + open.kind),
        title,
        doWord,
      });
    return over(html`<${WhyPad} title=${title} lead=${t("batch." + open.kind + "_lead")} reasons=${REASONS[open.kind]}
      isGrave=${open.kind === "make_abandoned"} isHeld=${open.kind === "make_abandoned" || open.kind === "make_closed"} doWord=${doWord} onDone=${done} onBack=${close} />`);
  }
  const state = view.make.state;
  const isOpen = view.make.is_open;
  return html`<${Sheet} title=${t("batch.title", { name: view.make.name })} onBack=${onBack}>
    <p class="lead">${t("make_state." + state)}</p>
    <div class="rows">
      ${view.make.holds.map(
        (hold) => html`<${Row} key=${hold.id} title=${t("batch.hold_lifted")}
        detail=${t("batch.hold", { why: whyWords(hold.why), name: nameOf(hold.by), at: clock(hold.at_ms) })}
        onTap=${() => setOpen({ kind: "hold_lifted", ref: hold.id })} />`,
      )}
      ${isOpen ? html`<${Row} title=${t("batch.hold_placed")} detail=${t("batch.hold_placed_lead")} onTap=${() => setOpen({ kind: "hold_placed" })} />` : null}
      <${Row} title=${t("batch.sign")} onTap=${() => setOpen({ kind: "signed_off" })} />
      ${isOpen ? html`<${Row} title=${t("batch.make_closed")} onTap=${() => setOpen({ kind: "make_closed" })} />` : null}
    </div>
    ${isOpen ? html`<div class="rows rows-apart"><${Row} class="is-destructive" title=${t("batch.make_abandoned")} onTap=${() => setOpen({ kind: "make_abandoned" })} /></div>` : null}
  </${Sheet}>`;
}
