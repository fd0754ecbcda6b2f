import { useEffect } from "preact/hooks";
import { html } from "../parts/html.js";
import { dayEndWords } from "../parts/day-end.js";
import { AlertLine } from "../parts/alert-line.js";
import { NotePad } from "../parts/note-pad.js";
import { StepCard } from "../parts/step-card.js";
import { Tap } from "../parts/tap.js";
import { TaskLine } from "../parts/task-line.js";
import { BrokenLines, UnreadLines } from "../parts/broken-lines.js";
import { ClashLines } from "../parts/clash-lines.js";
import { Whose, whoseOf } from "../parts/whose.js";
import { board, keepAwake, openMake, view } from "../parts/source.js";
import { may } from "../parts/people-names.js";
import { own, t, tn } from "../messages/index.js";
import { swap } from "../router.js";
import { AddSheet } from "./make/add-sheet.js";
import { Adds, Curd, Moulds, Readings, Timers } from "./make/blocks.js";
import { BrokenMake } from "./make/broken-make.js";
import { Cautions, hasUnreadCautions } from "./make/cautions.js";
import { chooseStep, leaveMake, stepShown } from "../parts/chosen.js";
import { JudgeSheet } from "./make/curd.js";
import { useFullStep } from "./make/full-step.js";
import { HoldVerdict } from "./make/hold.js";
import { JudgeDuplicates } from "./make/judge-duplicates.js";
import { More } from "./make/more.js";
import { MouldSheet } from "./make/mould-sheet.js";
import { LeftOpen, NextList } from "./make/next-list.js";
import { OtherReading, TimerSheet } from "./make/other-sheets.js";
import { PrimaryButton } from "./make/primary.js";
import { ReadingSheet } from "./make/reading-sheet.js";
import { WeighSheet } from "./make/weigh-sheet.js";
import { BeginWhy, EndWhy, SkipWhy } from "./make/why-sheets.js";
import { Late } from "./late.js";
import { StepsScreen } from "./steps.js";

// More than a few alerts at once are read by nobody; each one seen lets in the next.
const OTHERS_SHOWN = 3;

/**
 * @param {string} make
 * @param {View} shown
 * @param {string[]} rest
 * @param {Step | null} step
 */
function sheetFor(make, shown, rest, step) {
  const [name, key, arg, size] = rest;
  const onBack = () => swap("make", make);
  if (name === "steps")
    return html`<${StepsScreen} make=${make} view=${shown} onBack=${onBack} />`;
  if (name === "record")
    return html`<${Late} screen="RecordScreen" make=${make} view=${shown} entry=${key} onBack=${onBack} />`;
  if (name === "curve")
    return html`<${Late} screen="CurveScreen" make=${make} view=${shown} onBack=${onBack} />`;
  if (name === "batch")
    return html`<${Late} screen="BatchSheet" make=${make} view=${shown} onBack=${onBack} />`;
  if (name === "equipment")
    return html`<${Late} screen="EquipmentSheet" make=${make} shown=${shown} start=${key} onBack=${onBack} />`;
  if (name === "lab")
    return html`<${Late} screen="LabSheet" make=${make} shown=${shown} onBack=${onBack} />`;
  if (name === "note")
    return html`<${NotePad} make=${make} step=${key} onBack=${onBack} />`;
  if (name === "other")
    return html`<${OtherReading} make=${make} step=${key} onBack=${onBack} />`;
  if (name === "timer")
    return html`<${TimerSheet} make=${make} step=${key} onBack=${onBack} />`;
  if (name === "reading" && arg === "wheel_mass_kg")
    return html`<${WeighSheet} make=${make} shown=${shown} step=${step} size=${size} onBack=${onBack} />`;
  if (name === "reading")
    return html`<${ReadingSheet} make=${make} step=${step?.key} name=${arg}
    target=${step?.targets.find((target) => target.quantity === arg)} onBack=${onBack} />`;
  if (!step) return null;
  const add = step.adds.find((dose) => dose.ingredient === arg);
  if (name === "add" && add)
    return html`<${AddSheet} make=${make} step=${step.key} add=${add} onBack=${onBack} />`;
  if (name === "judge" && step.judge)
    return html`<${JudgeSheet} make=${make} step=${step} onBack=${onBack} />`;
  if (name === "mould")
    return html`<${MouldSheet} make=${make} step=${step} size=${arg} onBack=${onBack} />`;
  if (name === "sum")
    return html`<${Late} screen="StepSumPage" make=${make} shown=${shown} step=${step} rest=${rest.slice(2)} onBack=${onBack} />`;
  if (name === "begin")
    return html`<${BeginWhy} make=${make} view=${shown} step=${step} onBack=${onBack} />`;
  if (name === "end")
    return html`<${EndWhy} make=${make} step=${step} onBack=${onBack} />`;
  if (name === "skip")
    return html`<${SkipWhy} make=${make} step=${step} onBack=${onBack} />`;
  return null;
}

/** @param {{shown: View}} props */
function MakeHead({ shown }) {
  const { make, day } = shown;
  return html`<div class="make-head">
    <b class="make-whose">${whoseOf(make)}</b>
    ${make.vat ? html`<span class="make-name make-more">${make.name}</span>` : null}
    <span class="make-more">${t("make.batch", { batch: make.batch })}</span>
    <span class="make-more">${dayEndWords(day, shown.now_ms)}</span>
  </div>`;
}

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

/** @param {{make: string, rest: string[], shown: View | null}} props */
function MakePage({ make, rest, shown }) {
  const [sheetName, sheetKey] = rest;
  const isAbout = shown?.steps.some((one) => one.key === sheetKey);
  const key = isAbout ? sheetKey : shown && stepShown(shown)?.key;
  const step = useFullStep(make, shown, key);
  const broken = shown ? null : board.value?.broken?.find((one) => one.make === make);
  if (broken)
    return html`<${BrokenMake} make=${make} row=${broken} nowMs=${board.value?.now_ms} rest=${rest} />`;
  if (!shown || (key && !step))
    return html`<div class="sheet"><div class="scroll"><p class="lead">${t("make.loading")}</p></div></div>`;
  const sheet = sheetName ? sheetFor(make, shown, rest, isAbout ? step : null) : null;
  if (sheet) return html`<div class="sheet-frame" key=${rest.join("/")}>${sheet}</div>`;
  const canAct = may("work") && shown.make.is_open;
  if (step && canAct && hasUnreadCautions(make, step))
    return html`<${Cautions} make=${make} step=${step} />`;
  const number = shown.steps.findIndex((one) => one.key === key) + 1;
  // One alert at most stands within the step, below its number; the rest follow.
  const first = shown.alerts.filter((alert) => !alert.acknowledged).slice(0, 1);
  const others = shown.alerts.filter((alert) => !first.includes(alert));
  const line = (/** @type {Alert} */ alert) =>
    html`<${AlertLine} key=${alert.id} alert=${alert} make=${make} steps=${shown.steps} isReadOnly=${!canAct} />`;
  return html`<div class="sheet make">
    <${MakeHead} shown=${shown} />
    <${Tabs} make=${make} shown=${shown} step=${step} />
    <div class="scroll">
      <div class="columns">
        <div class="column">
          ${shown.make.state !== "running" ? html`<p class="lead">${t("make_state." + shown.make.state)}</p>` : null}
          ${step ? null : first.map(line)}
          ${step ? html`<${StepCard} step=${step} number=${number} total=${shown.steps.length} alerts=${shown.alerts}><${TaskLine} make=${make} step=${step} canAct=${canAct} />${first.map(line)}<${HoldVerdict} make=${make} step=${step} canAct=${canAct} /><${Late} screen="StepSums" isPart key=${step.key} make=${make} shown=${shown} step=${step} /></${StepCard}>` : html`<p class="lead">${t("make.no_step")}</p>`}
          <${BrokenLines} rows=${board.value?.broken?.filter((row) => row.make === make)} nowMs=${shown.now_ms} />
          <${UnreadLines} unread=${shown.unread} />
          <${LeftOpen} make=${make} view=${shown} step=${step} />
          ${others.slice(0, OTHERS_SHOWN).map(line)}
          ${others.length > OTHERS_SHOWN ? html`<p class="quiet">${tn("now.more_alerts", others.length - OTHERS_SHOWN)}</p>` : null}
          <${ClashLines} clashes=${board.value?.clashes} nowMs=${shown.now_ms} make=${make} />
          <${JudgeDuplicates} make=${make} view=${shown} />
        </div>
        <div class="column">
          <div inert=${!canAct}>
            ${
              step
                ? html`<${Curd} make=${make} step=${step} /><${Readings} make=${make} step=${step} />
              <${Adds} make=${make} step=${step} /><${Moulds} make=${make} step=${step} />`
                : null
            }
            <${Timers} make=${make} timers=${shown.timers} />
          </div>
          <${NextList} make=${make} view=${shown} step=${step} />
          <${More} make=${make} step=${step} canAct=${canAct} />
        </div>
      </div>
    </div>
    ${step && canAct ? html`<div class="foot"><${PrimaryButton} make=${make} step=${step} /></div>` : null}
  </div>`;
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
