import { html } from './html.js';

/** A labelled line of text, on the phone's own keyboard. */
export function TextField({ label, value, onInput, hint, longest, type = 'text', isLong = false }) {
  const shared = {
    value, maxlength: longest, class: 'text-field',
    autocomplete: 'off', autocapitalize: 'sentences',
    onInput: (event) => onInput(event.currentTarget.value),
  };
  return html`<label class="field">
    <span class="field-label">${label}</span>
    ${isLong ? html`<textarea rows="4" ...${shared}></textarea>` : html`<input type=${type} ...${shared} />`}
    ${hint ? html`<span class="field-hint">${hint}</span>` : null}
  </label>`;
}
