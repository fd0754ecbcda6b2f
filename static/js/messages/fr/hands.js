// The wet lock, a pedal or clicker, and the voice, in French.

export const HANDS = {
  "lock.button_label": "Verrouiller l’écran contre l’eau",
  "lock.title": "Verrouillé\u00a0: toucher ne fait rien",
  "lock.hint": "Pour déverrouiller\u00a0: tenez la barre 2\u00a0secondes, puis lâchez.",
  "lock.hint_alarm":
    "Pour couper le son\u00a0: tenez la barre 2\u00a0secondes, puis lâchez.",
  "lock.hold": "Tenir pour déverrouiller",
  "lock.hold_alarm": "Tenir pour couper l’alarme",
  "lock.let_go": "Lâchez maintenant",
  "lock.water": "Essuyez la barre, puis réessayez",
  "hold.hint": "Tenez 1\u00a0seconde, puis lâchez.",
  "hold.again": "Appuyez encore une fois",
  "lock.opening": "Déverrouillage.",
  "make.left_open": "Encore ouverte\u00a0: {step}",
  "make.left_open_detail":
    "Elle pouvait commencer, et une étape plus loin est en cours",

  "keypad.ask_jump": "De {last} à {value}\u00a0: un grand saut. Garder\u00a0?",
  "keypad.ask_far": "{value} est loin de la cible, {limit}. Garder\u00a0?",
  "keypad.one_point": "Il y a déjà une virgule.",
  "keypad.decimals": "Décimales ici\u00a0: {n} au plus.",
  "keypad.full": "Trop long pour un chiffre de plus.",

  "hands.title": "Pédale, bouton, voix",
  "pedal.use": "Utiliser une pédale ou un bouton",
  "pedal.use_detail": "Appuie sur le gros bouton d’une étape, même verrouillé",
  "pedal.do": "Appuie sur le gros bouton",
  "pedal.other": "Coupe l’alarme, ou redit la phrase",
  "pedal.keys": "{keys}. Touchez pour changer.",
  "pedal.press": "Appuyez sur votre pédale",
  "pedal.press_detail": "Ou touchez ici pour ne rien changer",
  "pedal.usual": "Reprendre les touches habituelles",
  "voice.use": "Lire les saisies à voix haute",
  "voice.use_detail": "Dit ce qui est enregistré et ce qui suit",
  "voice.none": "Ce téléphone n’a pas de voix pour cette langue",
  "voice.test": "Voici le son des saisies.",
  "voice.next": "Ensuite\u00a0: {what}.",
  "voice.minus": "moins {figure}",
  "word.on": "Oui",
  "word.off": "Non",
};
