// Spanish texts of language and units.

export const WORDS = {
  "nav.words": "Idioma y unidades",
  "nav_detail.words": "Idioma, °C o °F, litros o galones",
  "words.lead": "Para {name}. Lo ya anotado queda como está.",
  "words.language": "Idioma",
  "words.temp_unit": "Temperatura",
  "words.volume_unit": "Volumen",
  "words.mass_unit": "Peso",
  "words.pressure_unit": "Presión",
  "words.sending": "Guardado en este teléfono. Se envía con la próxima conexión.",
  "words.here":
    "Guardado solo en este teléfono. Desde su propio teléfono vale para todos.",
  "words.missing":
    "Este idioma aún no está en el teléfono. Llega con la próxima conexión.",
};
