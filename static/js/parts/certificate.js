import { html } from "./html.js";
import { useAsked } from "./asked.js";
import { day } from "../format.js";
import { t, tFirst } from "../messages/index.js";

/** What the owner must see to of the server's certificate; nothing while all is well. */
export function Certificate() {
  const told = useAsked("/health").value?.certificate;
  if (!told?.findings.length) return null;
  const values = { day: told.ends_ms === null ? "–" : day(told.ends_ms) };
  return html`<h2>${t("certificate.title")}</h2>
    ${told.findings.map((/** @type {string} */ key) => html`<p class="is-bad" key=${key}>${tFirst(["certificate." + key, "certificate.other"], values)}</p>`)}`;
}
