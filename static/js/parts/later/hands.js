// On the screen of this phone: its pedal or clicker, and its voice.

const USUAL = {
  do: ["PageDown", "ArrowRight", "Enter", "Space", "AudioVolumeUp"],
  other: ["PageUp", "ArrowLeft", "KeyB", "F5", "AudioVolumeDown"],
};
// These lead through a page for whoever has no pedal.
const NEVER = ["Tab", "Escape", "ShiftLeft", "ShiftRight"];

/** @typedef {ReturnType<typeof import("./voice.js").make>} Voice */

/**
 * The section of a phone's hands.
 *
 * @param {import("../later.js").Kit} kit
 */
export function make(kit) {
  const { html, later, learning, pedal, Row, t, useEffect, useState, voice } = kit;

  /** @param {string[]} names */
  function shownKeys(names) {
    return (
      names
        .map((name) =>
          name.replace(/^(Key|Digit)/, "").replace(/([a-z])([A-Z])/g, "$1 $2"),
        )
        .join(", ") || "–"
    );
  }

  /** @param {KeyboardEvent} event */
  function learn(event) {
    if (!learning.value || !pedal.value) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    const name = event.code || event.key;
    if (event.repeat) return;
    if (!NEVER.includes(name) && name) {
      const without = (/** @type {string[]} */ names) =>
        names.filter((one) => one !== name);
      const other = learning.value === "do" ? "other" : "do";
      pedal.value = {
        ...pedal.value,
        [learning.value]: [name],
        [other]: without(pedal.value[other]),
      };
    }
    learning.value = null;
  }

  /** @param {{way: import("../hands.js").Way}} props */
  function KeyRow({ way }) {
    const isLearning = learning.value === way;
    return html`<${Row} class=${isLearning ? "is-due" : ""} title=${isLearning ? t("pedal.press") : t("pedal." + way)}
      detail=${isLearning ? t("pedal.press_detail") : t("pedal.keys", { keys: shownKeys(pedal.value?.[way] ?? []) })}
      onTap=${() => {
        learning.value = isLearning ? null : way;
      }} />`;
  }

  function Pedal() {
    useEffect(() => {
      addEventListener("keydown", learn, true);
      return () => {
        learning.value = null;
        removeEventListener("keydown", learn, true);
      };
    }, []);
    const isOn = Boolean(pedal.value);
    return html`<${Row} title=${t("pedal.use")} detail=${t("pedal.use_detail")} side=${t(isOn ? "word.on" : "word.off")}
        onTap=${() => {
          learning.value = null;
          pedal.value = isOn ? null : USUAL;
        }} />
      ${
        isOn
          ? html`<${KeyRow} way="do" /><${KeyRow} way="other" />
        <${Row} title=${t("pedal.usual")} onTap=${() => {
          pedal.value = USUAL;
        }} />`
          : null
      }`;
  }

  function VoiceRow() {
    const [made, setMade] = useState(/** @type {?Voice} */ (null));
    useEffect(() => {
      later("voice").then(
        (speaker) => setMade(speaker),
        () => {},
      );
    }, []);
    const has = Boolean(made?.voiceNow());
    const toggle = () => {
      voice.value = !voice.value;
      if (voice.value) made?.say(t("voice.test")); // a phone speaks after a tap only
    };
    return html`<${Row} title=${t("voice.use")} detail=${has ? t("voice.use_detail") : t("voice.none")} disabled=${!has && !voice.value}
      side=${t(voice.value ? "word.on" : "word.off")} onTap=${toggle} />`;
  }

  function Hands() {
    return html`<h2>${t("hands.title")}</h2><div class="rows"><${Pedal} /><${VoiceRow} /></div>`;
  }

  return { Hands };
}
