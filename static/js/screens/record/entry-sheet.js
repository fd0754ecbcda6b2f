import { useEffect, useState } from "preact/hooks";
import { Facts } from "../../parts/facts.js";
import { html } from "../../parts/html.js";
import { Keypad } from "../../parts/keypad.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { TextField } from "../../parts/text-field.js";
import { TimePad } from "../../parts/time-pad.js";
import { WhyPad } from "../../parts/why-pad.js";
import { problemsText } from "../../parts/acts.js";
import { areBothOf, nameOf } from "../../parts/people-names.js";
import { useProof } from "../../parts/pin.js";
import { ask, hand, nowMs } from "../../parts/source.js";
import {
  amount,
  amountTyped,
  clock,
  day,
  decimalsTyped,
  plain,
  quantity,
  typedFrom,
  unitName,
  unitRead,
} from "../../format.js";
import { own, t, words } from "../../messages/index.js";
import { useForm } from "../make/reading-sheet.js";
import { EquipmentPad } from "../new-make/equipment-pad.js";
import { useRows } from "../new-make/equipment-words.js";
import { lineParts, lineRows, setText } from "./line-text.js";
import { correctionWords, markWords, struckWords } from "./line-words.js";

/**
 * What may be changed of an entry, and by whom; null until the core has told.
 *
 * @param {string} make
 * @param {LogLine} line
 * @returns {Changeable | null}
 */
function useChangeable(make, line) {
  const [changeable, setChangeable] = useState(/** @type {Changeable | null} */ (null));
  useEffect(() => {
    let isCurrent = true;
    ask.changeable({ make, entry: line.id, hand: hand() }).then(
      (answer) => isCurrent && setChangeable(answer),
      () => {},
    );
    return () => {
      isCurrent = false;
    };
  }, [make, line]);
  return changeable;
}

/** @typedef {{line: LogLine, field: Mendable, onBack: () => void,
 *   onValue: (set: Record<string, any>) => void}} MendProps */

/** @param {MendProps} props */
function NumberPad({
  line,
  field: { name: field, form: kind, unit: ownUnit },
  onValue,
  onBack,
}) {
  const name = kind === "reading" ? line.data.quantity : null;
  const form = useForm(name);
  const before = line.data[field];
  const kept = ownUnit ?? "";
  const [unit] = useState(unitRead(kept));
  const decimals = name ? form.decimals : kind === "count" ? 0 : decimalsTyped(unit);
  const own = kept ? amount(before, kept) : plain(before);
  const save = async (/** @type {number} */ value, /** @type {string} */ typed) => {
    // What was typed in another unit is judged as it was typed, also when put right.
    onValue(form.typed ? { value, typed, typed_unit: form.typed } : { [field]: value });
    return true;
  };
  return html`<div class="sheet">
    <${Keypad} onBack=${onBack} title=${t("correct.number", { what: name ? t("quantity." + name) : t("field." + field) })} quantity=${name}
      unit=${unitName(name ? form.unit : unit)} decimals=${decimals} signed=${name ? form.signed : false}
      last=${{ typed: name ? typedFrom(name, before) : amountTyped(before, kept, decimals), text: name ? quantity(name, before) : own }}
      askText=${(/** @type {Problem} */ ask) => t("keypad.ask", { limit: name ? quantity(name, ask.limit) : "", side: t("keypad." + ask.key) })}
      read=${(/** @type {string} */ typed) => (name ? ask.readTyped({ quantity: name, typed, unit: form.typed }) : ask.readField({ kind: line.kind, field, typed, unit, kept }))}
      save=${save} saveWord=${t("correct.next")} />
  </div>`;
}

/**
 * @param {{line: LogLine, onValue: (set: Record<string, any>) => void, onBack: () => void}} props
 */
function TimeSheet({ line, onValue, onBack }) {
  const [ms, setMs] = useState(line.at_ms);
  return html`<${Sheet} title=${t("correct.time")} onBack=${onBack}
    foot=${html`<${Tap} class="primary" disabled=${ms === line.at_ms} onTap=${() => onValue({ at_ms: ms })}>${t("correct.next")}</${Tap}>`}>
    <${TimePad} startMs=${line.at_ms} latestMs=${nowMs()} onChange=${setMs} />
  </${Sheet}>`;
}

/** @param {MendProps} props */
function TextSheet({ line, field: { name: field, longest }, onValue, onBack }) {
  const [text, setText_] = useState(line.data[field] ?? "");
  return html`<${Sheet} title=${t("field." + field)} onBack=${onBack}
    foot=${html`<${Tap} class="primary" disabled=${text.trim() === ""} onTap=${() => onValue({ [field]: text.trim() })}>${t("correct.next")}</${Tap}>`}>
    <${TextField} isLong=${field === "text"} label=${t("field." + field)} value=${text} onInput=${setText_} longest=${longest} />
  </${Sheet}>`;
}

/**
 * Problem why, let the core look at the change, and record it beside the first value.
 *
 * @param {{
 *   make: string, line: LogLine, set: Record<string, any>, onBack: () => void, onDone: () => void,
 * }} props
 */
function Confirm({ make, line, set, onBack, onDone }) {
  const [refused, setRefused] = useState("");
  const [record, over] = useProof(onDone);
  const before = Object.fromEntries(
    Object.keys(set).map((name) => [
      name,
      name === "at_ms" ? line.at_ms : line.data[name],
    ]),
  );
  const done = async (/** @type {string} */ why) => {
    const problems = await ask.checkCorrection({ make, entry: line.id, set });
    if (problems.length) return setRefused(problemsText(problems, line.data.quantity));
    return record({
      kind: "entry_corrected",
      about: line.kind,
      given: { make, ref: line.id, data: { set, why } },
      said: t("said.corrected"),
      title: t("correct.why"),
      doWord: t("correct.save"),
    });
  };
  return over(html`<${WhyPad} title=${t("correct.why")} reasons=${["mistyped", "looked_again", "wrong_step", "entered_late"]}
    doWord=${t("correct.save")} onDone=${done} onBack=${onBack}>
    <p class="lead">${setText({ set, before }, line)}</p>
    ${refused ? html`<p class="is-bad" role="alert">${refused}</p>` : null}
  </${WhyPad}>`);
}

// A figure of the equipment is put right on the pad that it was entered on.
/**
 * @param {{line: LogLine, onValue: (set: Record<string, any>) => void, onBack: () => void}} props
 */
function EquipmentAgain({ line, onValue, onBack }) {
  const row = useRows()?.find((one) => one.name === line.data.key);
  if (!row)
    return html`<${Sheet} title=${t("entry.title")} onBack=${onBack}><p class="lead" role="status">${t("sums.loading")}</p></${Sheet}>`;
  const done = (/** @type {EquipmentSet} */ { value, typed, agreed_with: name }) =>
    onValue({
      value,
      ...(typed ? { typed: typed[0], typed_unit: typed[1] } : {}),
      ...(name ? { agreed_with: name } : {}),
    });
  return html`<${EquipmentPad} row=${row} equipment=${{ typed: {}, gap_agreed_with: line.data.agreed_with }} onSet=${done} onBack=${onBack} />`;
}

const PADS = {
  number: NumberPad,
  count: NumberPad,
  reading: NumberPad,
  text: TextSheet,
  equipment: EquipmentAgain,
};

/** @param {Mendable} field */
function mendTitle({ name, form }) {
  return form === "text"
    ? t("correct.text", { field: t("field." + name) })
    : t("correct.value");
}

/**
 * One entry: what it says, what was changed, and the ways to put it right.
 *
 * @param {{make: string, line: LogLine, steps: Step[], onBack: () => void}} props
 */
export function EntrySheet({ make, line, steps, onBack }) {
  const [open, setOpen] = useState(
    /** @type {Mendable | "time" | "strike" | null} */ (null),
  );
  const changeable = useChangeable(make, line);
  const [set, setSet] = useState(/** @type {Record<string, any> | null} */ (null));
  const close = () => {
    setOpen(null);
    setSet(null);
  };
  const [record, over] = useProof(close);
  if (set)
    return html`<${Confirm} make=${make} line=${line} set=${set} onBack=${close} onDone=${close} />`;
  if (open === "time")
    return html`<${TimeSheet} line=${line} onValue=${setSet} onBack=${close} />`;
  if (open === "strike") {
    const strike = (/** @type {string} */ why) =>
      record({
        kind: "entry_struck",
        about: line.kind,
        given: { make, ref: line.id, data: { why } },
        said: t("said.struck"),
        title: t("strike.title"),
        doWord: t("strike.do"),
      });
    return over(html`<${WhyPad} title=${t("strike.title")} lead=${t("strike.lead")} reasons=${["mistyped", "wrong_step", "not_done", "twice"]}
      isGrave doWord=${t("strike.do")} onDone=${strike} onBack=${close} />`);
  }
  if (open) {
    const Pad = PADS[open.form];
    return html`<${Pad} line=${line} field=${open} onValue=${setSet} onBack=${close} />`;
  }
  const isStruck = Boolean(line.struck);
  const [what, value] = lineParts(line, steps);
  const step = steps.find((one) => one.key === line.step)?.title;
  const rows = [
    ...lineRows(line),
    [t("fact.when"), t("entry.when", { day: day(line.at_ms), at: clock(line.at_ms) })],
    [t("fact.by"), nameOf(line.by)],
    [
      t("fact.step"),
      line.step && (own(line.leads_nowhere?.title ?? step) || words(line.step)),
    ],
  ];
  const more = [...correctionWords(line), ...struckWords(line), ...markWords(line)];
  return html`<${Sheet} title=${t("entry.title")} onBack=${onBack} backWord=${t("record.title")}>
    <section class="told"><p class=${isStruck ? "lead struck" : "lead"}>${what}</p>
      ${value === null ? null : html`<p class=${isStruck ? "told-value struck" : "told-value"}>${value}</p>`}
      <${Facts} rows=${rows} />
      ${more.map((text) => html`<p key=${text}>${text}</p>`)}</section>
    ${
      changeable && areBothOf(changeable.correct)
        ? html`<div class="rows">
      ${changeable.fields.map((field) => html`<${Row} key=${field.name} title=${mendTitle(field)} onTap=${() => setOpen(field)} />`)}
      <${Row} title=${t("correct.time")} onTap=${() => setOpen("time")} />
    </div>`
        : null
    }
    ${changeable && areBothOf(changeable.strike) ? html`<div class="rows rows-apart"><${Row} class="is-destructive" title=${t("strike.title")} detail=${t("strike.detail")} onTap=${() => setOpen("strike")} /></div>` : null}
  </${Sheet}>`;
}
