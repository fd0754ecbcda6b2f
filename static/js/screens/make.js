import { useEffect } from "preact/hooks";
import { html } from "../parts/html.js";
import { notInBar, topAlarm } from "../parts/alarm-bar.js";
import { AlertLine } from "../parts/alert-line.js";
import { MatterLine, openOf, toldOf } from "../parts/matter-line.js";
import { MainFigure, StepCard } from "../parts/step-card.js";
import { Tap } from "../parts/tap.js";
import { TaskLine } from "../parts/task-line.js";
import { BrokenLines, UnreadLines } from "../parts/broken-lines.js";
import { Whose, whoseOf } from "../parts/whose.js";
import { board, keepAwake, openMake, view } from "../parts/source.js";
import { may } from "../parts/people-names.js";
import { own, t, tn } from "../messages/index.js";
import { awaitsCautions, cautionBand } from "./make/caution-band.js";
import { Adds, Curd, Moulds, Readings, Timers, Turns } from "./make/blocks.js";
import { chooseStep, leaveMake, stepShown } from "../parts/chosen.js";
import { useFullStep } from "./make/full-step.js";
import { More } from "./make/more.js";
import { LeftOpen, NextList } from "./make/next-list.js";
import { PrimaryButton } from "./make/primary.js";
import { sheetFor } from "./make/sheets.js";
import { hasLate, Late } from "./late.js";

// More than a few alerts at once are read by nobody; each one seen lets in the next.
const OTHERS_SHOWN = 3;

/** @param {{make: string, shown: View, step: Step | null}} props */
function Tabs({ make, shown, step }) {
  const open = shown.steps.filter(
    (tab) =>
      tab.status === "running" || tab.key === step?.key || tab.key === shown.focus,
  );
  if (open.length < 2) return null;
  return html`<div class="tabs" role="group" aria-label=${t("make.side_by_side")}>${open.map(
    (tab) => html`<${Tap}
    key=${tab.key} class=${"tab " + (tab.key === step?.key ? "is-chosen" : "")} pressed=${tab.key === step?.key}
    onTap=${() => chooseStep(make, tab.key)}>${own(tab.title)}</${Tap}>`,
  )}</div>`;
}

/** @type {(shown: View, step: Step | null) => StepCautions | undefined} */
const cautionsOf = (shown, step) =>
  shown.cautions?.find((row) => row.step !== null && row.step === step?.key);

// In a hold its thermometers and the next round stand where the number else does.
/** @type {(step: Step, shown: View) => any} */
function holdLead(step, shown) {
  if (!step.hold) return null;
  const figure = html`<${MainFigure} step=${step} alerts=${shown.alerts} />`;
  return html`<${Late} screen="HoldLead" isPart instead=${figure} step=${step} />`;
}

// What is looked up comes after what is to be done.
/** @type {(make: string, shown: View, step: Step, canAct: boolean) => any} */
function below(make, shown, step, canAct) {
  return html`<${TaskLine} make=${make} step=${step} canAct=${canAct} />
    ${step.hold ? html`<${Late} screen="HoldMore" isPart step=${step} />` : html`<${Late} screen="FigureFacts" isPart step=${step} />`}
    ${step.verdict || step.chart ? html`<${Late} screen="HoldVerdict" isPart missing="hold.missing" make=${make} step=${step} canAct=${canAct} />` : null}<${Late} screen="StepSums" isPart key=${step.key} make=${make} shown=${shown} step=${step} />`;
}

/** @param {{make: string, rest: string[], shown: View | null}} props */
function MakePage({ make, rest, shown }) {
  const [sheetName, sheetKey] = rest;
  const isAbout = shown?.steps.some((one) => one.key === sheetKey);
  const key = isAbout ? sheetKey : shown && stepShown(shown)?.key;
  const step = useFullStep(make, shown, key);
  const broken = shown ? null : board.value?.broken?.find((one) => one.make === make);
  if (broken)
    return html`<${Late} screen="BrokenMake" make=${make} row=${broken} nowMs=${board.value?.now_ms} rest=${rest} />`;
  if (!shown || (key && !step))
    return html`<div class="sheet"><div class="scroll"><p class="lead">${t("make.loading")}</p></div></div>`;
  const sheet = sheetName ? sheetFor(make, shown, rest, isAbout ? step : null) : null;
  if (sheet) return html`<div class="sheet-frame" key=${rest.join("/")}>${sheet}</div>`;
  const canAct = may("work") && shown.make.is_open;
  const cautions = canAct ? cautionsOf(shown, step) : undefined;
  const number = shown.steps.findIndex((one) => one.key === key) + 1;
  // One alert at most stands within the step, below its number; the rest follow. A
  // matter goes before alerts.
  const matters = notInBar(make, openOf(shown.matters));
  const alerts = notInBar(make, shown.alerts);
  const asks = openOf(shown.matters).length
    ? []
    : alerts.filter((one) => !one.acknowledged);
  const first = [...matters, ...asks].slice(0, 1);
  // Of what the bar says, what to do about it follows, where the recipe names it.
  const advised = shown.alerts.filter((one) => one.do && !alerts.includes(one));
  const others = [...advised, ...matters, ...alerts].filter(
    (one) => !first.includes(one),
  );
  const line = (/** @type {Alert | Matter} */ one) =>
    "ways" in one
      ? html`<${MatterLine} key=${one.id} matter=${one} make=${make} isShort=${step?.stopped_by?.includes(one.id)} />`
      : html`<${AlertLine} key=${one.id} alert=${one} make=${make} steps=${shown.steps} isReadOnly=${!canAct || advised.includes(one)} />`;
  const page = html`<div class="sheet make">
    ${shown.band?.length ? html`<div class="make-band"><${Late} screen="DayBand" isPart isThin band=${shown.band} /></div>` : null}
    <${Tabs} make=${make} shown=${shown} step=${step} />
    <div class="scroll">
      ${cautionBand(make, cautions)}
      <div class="columns">
        <div class="column">
          ${shown.make.state !== "running" ? html`<p class="lead">${t("make_state." + shown.make.state)}</p>` : null}
          ${step ? null : first.map(line)}
          ${
            step
              ? html`<${StepCard} step=${step} number=${number} total=${shown.steps.length} alerts=${shown.alerts} lead=${holdLead(step, shown)}
            ends=${html`<${Late} screen="StepEnd" isPart step=${step} />`} rest=${below(make, shown, step, canAct)} alert=${first.map(line)} isUnderBar=${Boolean(topAlarm())} />`
              : html`<p class="lead">${t("make.no_step")}</p>`
          }
          <${BrokenLines} rows=${board.value?.broken?.filter((row) => row.make === make)} nowMs=${shown.now_ms} />
          <${UnreadLines} unread=${shown.unread} />
          <${LeftOpen} make=${make} view=${shown} step=${step} />
          ${others.slice(0, OTHERS_SHOWN).map(line)}
          ${others.length > OTHERS_SHOWN ? html`<p class="quiet">${tn("now.more_alerts", others.length - OTHERS_SHOWN)}</p>` : null}
          <${Late} screen="ClashLines" isPart clashes=${board.value?.clashes} nowMs=${shown.now_ms} make=${make} />
          ${shown.to_judge?.length ? html`<${Late} screen="JudgeDuplicates" isPart make=${make} view=${shown} />` : null}
        </div>
        <div class="column">
          <${Late} screen="MakeFacts" isPart shown=${shown} />
          <div inert=${!canAct}>
            ${
              step
                ? html`<${Curd} make=${make} step=${step} /><${Readings} make=${make} step=${step} />
              <${Adds} make=${make} step=${step} /><${Moulds} make=${make} step=${step} /><${Turns} make=${make} step=${step} />`
                : null
            }
            <${Timers} make=${make} timers=${shown.timers} />
          </div>
          <${NextList} make=${make} view=${shown} step=${step} />
          <${More} make=${make} step=${step} canAct=${canAct} stands=${toldOf(shown.matters).length} milk=${shown.make.milk} />
        </div>
      </div>
    </div>
    ${step && canAct ? html`<div class="foot"><${PrimaryButton} make=${make} step=${step} awaitsCautions=${awaitsCautions(shown, cautions)} /></div>` : null}
  </div>`;
  if (!step || cautions?.stands !== "before" || !hasLate()) return page;
  return html`<${Late} screen="CautionSheet" key=${step.key + cautions.owed.length} make=${make} step=${step} row=${cautions} />`;
}

/**
 * One step at a time: what to do, its number, and one large button.
 *
 * @param {{make: string, rest: string[]}} props
 */
export function MakeScreen({ make, rest }) {
  useEffect(() => {
    openMake(make);
  }, [make]);
  useEffect(() => {
    keepAwake(true); // wet hands cannot unlock a phone
    return () => {
      keepAwake(false);
    };
  }, []);
  useEffect(() => () => leaveMake(make), [make]);
  const shown = view.value?.make.id === make ? view.value : null;
  return html`<${Whose.Provider} value=${shown && whoseOf(shown.make)}><${MakePage} make=${make} rest=${rest} shown=${shown} /></${Whose.Provider}>`;
}
