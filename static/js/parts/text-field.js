import { useEffect, useRef } from "preact/hooks";
import { html } from "./html.js";

/**
 * A labelled line of text, on the phone's own keyboard; what is wrong is said above it.
 *
 * @param {{label: string, value: string, onInput: (text: string) => unknown,
 *   hint?: any, longest?: number, type?: string, isLong?: boolean,
 *   problem?: string}} props
 */
export function TextField({
  label,
  value,
  onInput,
  hint,
  longest,
  type = "text",
  isLong = false,
  problem = "",
}) {
  const input = useRef(/** @type {?HTMLElement} */ (null));
  useEffect(() => {
    if (!problem) return;
    input.current?.focus({ preventScroll: true });
    input.current?.parentElement?.scrollIntoView({ block: "center" });
  }, [problem]);
  const shared = {
    ref: input,
    value,
    maxlength: longest,
    class: "text-field",
    autocomplete: "off",
    autocapitalize: "sentences",
    "aria-invalid": problem ? "true" : null,
    onInput: (/** @type {{currentTarget: HTMLInputElement}} */ event) =>
      onInput(event.currentTarget.value),
  };
  return html`<label class="field">
    <span class="field-label">${label}</span>
    ${problem ? html`<span class="field-problem is-bad" role="alert">${problem}</span>` : null}
    ${isLong ? html`<textarea rows="4" ...${shared}></textarea>` : html`<input type=${type} ...${shared} />`}
    ${hint ? html`<span class="field-hint">${hint}</span>` : null}
  </label>`;
}
