// Reads aloud what was just entered, with its unit, and what comes next.

const SAID_MS = 60; // the view that follows an entry is there by then

/**
 * Read entries aloud from now on, while that is wanted.
 *
 * @param {import("../later.js").Kit} kit
 */
export function make(kit) {
  const {
    buttonWords,
    effect,
    lastAct,
    own,
    signal,
    stepShown,
    stepTitle,
    t,
    view,
    voice,
  } = kit;
  const speech = globalThis.speechSynthesis;
  const changes = signal(0);
  let lastWords = "";

  /** The phone's voice for the language of the screens, or null. */
  function voiceNow() {
    changes.value; // voices come in one after another
    const wanted = (document.documentElement.lang || "en").slice(0, 2).toLowerCase();
    const mine = (speech?.getVoices() ?? []).filter(
      (offered) => offered.lang.slice(0, 2).toLowerCase() === wanted,
    );
    return mine.find((offered) => offered.localService) ?? mine[0] ?? null;
  }

  /**
   * Say a text now; what is still being said is broken off.
   *
   * @param {string} text
   */
  function say(text) {
    const chosen = voiceNow();
    if (!chosen) return false;
    const words = new SpeechSynthesisUtterance(
      text
        .replace(/−(?=\d)/g, t("voice.minus", { figure: "" }))
        .replace(/[\u00a0\u202f]/g, " "),
    );
    words.voice = chosen;
    words.lang = chosen.lang;
    speech.cancel();
    speech.speak(words);
    return true;
  }

  function nextWords() {
    const step = view.value && stepShown(view.value);
    if (!step) return "";
    const isWaiting = (step.button?.act ?? "none") === "none";
    const what = isWaiting ? own(step.do?.[0]) || stepTitle(step) : buttonWords(step);
    return t("voice.next", { what: what.replace(/\.$/, "") });
  }

  /** @param {string} said */
  function sayEntry(said) {
    lastWords = `${said}. ${nextWords()}`;
    say(lastWords);
  }

  let heard = lastAct.peek()?.event.id;
  effect(() => {
    const last = lastAct.value;
    if (!voice.value || !last || last.event.id === heard) return;
    heard = last.event.id;
    setTimeout(() => sayEntry(last.said), SAID_MS);
  });
  speech?.addEventListener("voiceschanged", () => {
    changes.value += 1;
  });

  /** Say the last words again, or else what comes next. */
  function repeat() {
    say(lastWords || nextWords());
  }

  return { repeat, say, voiceNow };
}
