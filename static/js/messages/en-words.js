// English texts of language and units: each person's own.

export const EN_WORDS = {
  "nav.words": "Words and units",
  "nav_detail.words": "Language, °C or °F, litres or gallons",
  "words.lead": "For {name}. What was entered stays as it is.",
  "words.language": "Language",
  "words.temp_unit": "Temperature",
  "words.volume_unit": "Volume",
  "words.mass_unit": "Weight",
  "words.pressure_unit": "Pressure",
  "words.sending": "Kept on this phone. It is sent with the next connection.",
  "words.here": "Kept on this phone only. On their own phone it is kept for all.",
  "words.missing":
    "This language is not on the phone yet. It comes with the next connection.",
};
