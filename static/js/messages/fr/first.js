// The few French texts of the first picture, apart from the catalogue: they come
// over a thin link before anything else.

export const FIRST = {
  "first.title": "En direct",
  "first.as_of": "Vu par le serveur, {at}. Le reste arrive.",
  "first.batch": "Lot {batch}",
  "first.act": "AGIR",
  "first.check": "VÉRIFIER",
  "first.ok": "OK",
  "first.late": "{step}\u00a0: RETARD de {by}",
  "first.end": "Fin de journée vers {at}",
  "first.ended": "Journée finie\u00a0: {at}",
  "first.end_late": "{end}, {by} de retard",
  "first.word": "Dernière saisie de la salle il y a {age}",
  "first.not_open":
    "L’application ne s’est pas encore ouverte. Ce qui a été saisi sur ce téléphone y est toujours.",
  "first.again": "Recharger l’application",
};
