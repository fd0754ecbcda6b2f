// English texts of language and units: each person's own.

export const WORDS = {
  "nav.words": "Words and units",
  "nav_detail.words": "Language, °C or °F, litres or gallons",
  "words.language": "Language",
};
