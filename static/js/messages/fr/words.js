// French texts of language and units.

export const WORDS = {
  "nav.words": "Langue et unités",
  "nav_detail.words": "Langue, °C ou °F, litres ou gallons",
  "words.lead": "Pour {name}. Ce qui est noté reste inchangé.",
  "words.language": "Langue",
  "words.temp_unit": "Température",
  "words.volume_unit": "Volume",
  "words.mass_unit": "Poids",
  "words.pressure_unit": "Pression",
  "words.sending": "Gardé sur ce téléphone. Envoyé à la prochaine connexion.",
  "words.here":
    "Gardé sur ce téléphone seulement. Depuis son propre téléphone, cela vaut partout.",
  "words.missing":
    "Cette langue n’est pas encore sur le téléphone. Elle arrive à la prochaine connexion.",
};
