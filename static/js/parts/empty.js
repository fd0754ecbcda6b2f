import { html } from "./html.js";
import { Tap } from "./tap.js";

/**
 * A place with nothing in it yet: what to do first, and the key that does it.
 *
 * @param {{says: any, does?: string | false, onTap?: () => unknown}} props
 */
export function Empty({ says, does, onTap }) {
  return html`<div class="empty"><p class="lead" role="status">${says}</p>
    ${does && onTap ? html`<${Tap} class="second" onTap=${onTap}>${does}</${Tap}>` : null}</div>`;
}
