import { html } from "../parts/html.js";
import { Choices, Row, Sheet } from "../parts/sheet.js";
import { people, setPerson } from "../parts/source.js";
import { may, tapper } from "../parts/people-names.js";
import { t } from "../messages/index.js";
import { go } from "../router.js";

/** Say who taps on this phone from now on. */
export function WhoScreen() {
  const all = (people.value ?? []).filter((person) => person.active !== false);
  const choose = async (/** @type {string} */ id) => {
    await setPerson(id);
    history.back();
  };
  return html`<${Sheet} title=${t("who.title")} onBack=${() => history.back()}>
    <p class="lead">${t("who.lead")}</p>
    <${Choices} label=${t("who.title")} chosen=${tapper()?.id} onChoose=${choose}
      options=${all.map((person) => ({ key: person.id, title: person.name, detail: t("role." + person.role) }))} />
    <div class="rows rows-apart"><${Row} title=${t("nav.words")} detail=${t("nav_detail.words")} onTap=${() => go("words")} />
      ${may("pin") ? html`<${Row} title=${t("nav.pin")} detail=${t("nav_detail.pin")} onTap=${() => go("pin")} />` : null}</div>
  </${Sheet}>`;
}
