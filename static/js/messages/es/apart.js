// What cannot be shown in Spanish: the keys of en/apart.js, in its order.

export const APART = {
  "broken.mark": "No se muestra",
  "broken.name": "{name}, lote {batch}",
  "broken.tank_name": "Salmuera {name}",
  "broken.no_name": "Todas las elaboraciones",
  "broken.opening":
    "No se puede leer su inicio: faltan sus pasos, temporizadores y alarmas.",
  "broken.view": "No se puede mostrar: faltan sus pasos, temporizadores y alarmas.",
  "broken.alarms": "No se pueden calcular sus alarmas: nada suena por ella.",
  "broken.due": "En esta lista falta lo que le toca.",
  "broken.acts": "No se dice qué coincide con ella.",
  "broken.clashes": "No se dice qué coincide.",
  "broken.tank": "No se puede calcular su cuenta.",
  "broken.tank_due": "En esta lista falta cuándo salen sus piezas.",
  "broken.start": "Su equipo no se puede ofrecer a una elaboración nueva.",
  "broken.learnt": "De ella no se puede aprender nada para las demás.",
  "broken.trends": "Falta en las tendencias.",
  "broken.since": "Desde {at}.",
  "broken.newer":
    "Se inició con una versión más nueva de la aplicación. Instale aquí también la versión nueva.",
  "broken.unsound": "Motivo: {problems}",
  "broken.fault":
    "El programa tiene un fallo ({fault}). Se guarda todo lo anotado. Avise a quien cuida del servidor.",
  "broken.open": "Abrirla",
  "broken.what_now":
    "Siga a mano y con un temporizador propio. Las demás elaboraciones siguen. Un quesero puede cerrarla o abandonarla.",
  "unread.newer.one":
    "Se guarda 1 anotación de una versión más nueva de la aplicación, pero no se puede mostrar. Instale la versión nueva para verla.",
  "unread.newer.many":
    "Se guardan {n} anotaciones de una versión más nueva de la aplicación, pero no se pueden mostrar. Instale la versión nueva para verlas.",
  "unread.unsound.one":
    "Se guarda 1 anotación que no se puede leer. El registro dice cuándo y de quién es.",
  "unread.unsound.many":
    "Se guardan {n} anotaciones que no se pueden leer. El registro dice cuándo y de quién son.",
  "line.unread_newer":
    "Anotación de una versión más nueva de la aplicación ({kind}): guardada, pero aquí no se puede mostrar",
  "line.unread_unsound":
    "Anotación que no se puede leer ({kind}): guardada tal como llegó",
};
