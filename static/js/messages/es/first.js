// The few Spanish texts of the first picture: the keys of en/first.js.

export const FIRST = {
  "first.title": "En vivo",
  "first.as_of": "Como lo ve el servidor a las {at}. Lo demás está en camino.",
  "first.batch": "Lote {batch}",
  "first.act": "ACTÚE YA",
  "first.check": "REVISAR",
  "first.ok": "OK",
  "first.late": "{step}: RETRASO de {by}",
  "first.end": "Fin del día hacia {at}",
  "first.ended": "Fin del día: {at}",
  "first.end_late": "{end}, {by} de retraso",
  "first.word": "Última anotación de la sala hace {age}",
  "first.not_open":
    "La aplicación aún no se ha abierto. Lo anotado en este teléfono sigue en él.",
  "first.again": "Cargar la aplicación de nuevo",
};
