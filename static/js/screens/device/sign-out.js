import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { whyOf } from "../../parts/acts.js";
import {
  exportQueue,
  me,
  refresh,
  signOut,
  unsaved,
  unsent,
} from "../../parts/source.js";
import { t, tn } from "../../messages/index.js";
import { swap } from "../../router.js";

/** @param {{count: number, isLeft: boolean, onLeave: () => void}} props */
function Waiting({ count, isLeft, onLeave }) {
  const save = async () => {
    await exportQueue();
    onLeave();
  };
  return html`<p class="is-bad" role="alert">${tn("signout.waits", count)}</p>
    <div class="rows">
      <${Row} title=${t("signout.send")} detail=${t("signout.send_detail")} onTap=${() => refresh()} />
      <${Row} title=${t("signout.save")} detail=${t("signout.save_detail")} onTap=${save} />
      <${Row} title=${t("signout.leave")} detail=${t("signout.leave_detail")} onTap=${onLeave} disabled=${isLeft} />
    </div>`;
}

/**
 * Take the person off this phone; what is not sent yet is asked about first.
 *
 * @param {{onBack: () => void}} props
 */
export function SignOut({ onBack }) {
  const [isLeft, setLeft] = useState(false);
  const [problem, setProblem] = useState("");
  const count = (unsent.value ?? 0) + unsaved.value.length;
  const mayGo = count === 0 || isLeft;
  const go = () =>
    signOut({ leave: isLeft }).then(
      () => swap("pair"),
      (failure) => setProblem(whyOf(failure)),
    );
  return html`<${Sheet} title=${t("signout.title")} onBack=${onBack}
    foot=${html`<${Tap} class="primary" disabled=${!mayGo} onTap=${go}>${count && isLeft ? tn("signout.do_leaving", count) : t("signout.do")}</${Tap}>`}>
    <p class="lead">${t("signout.lead", { name: me.value?.person.name ?? "" })}</p>
    ${count ? html`<${Waiting} count=${count} isLeft=${isLeft} onLeave=${() => setLeft(true)} />` : null}
    <p>${t("signout.again")}</p>
    ${problem ? html`<p class="is-bad" role="alert">${problem}</p>` : null}
  </${Sheet}>`;
}
