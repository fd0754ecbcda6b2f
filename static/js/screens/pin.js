import { useState } from "preact/hooks";
import { html } from "../parts/html.js";
import { Later } from "../parts/later.js";
import { Sheet } from "../parts/sheet.js";
import { t } from "../messages/index.js";

/** The PIN of who taps; the pad comes when it is first wanted. */
export function PinScreen() {
  const [isMissing, setMissing] = useState(false);
  return html`<${Later} part="pin" name="PinScreen" onFail=${() => setMissing(true)}>
    <${Sheet} title=${t("nav.pin")} onBack=${() => history.back()}><p class="lead" role="status">${t(isMissing ? "pin.missing" : "pin.opening")}</p></${Sheet}>
  </${Later}>`;
}
