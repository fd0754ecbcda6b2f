// Textos en español de lo que está pendiente: asuntos, qué hacer, quién decide.

export const MATTERS = {
  "matter.drug_test_wait": "Primero va la prueba de antibióticos.",
  "matter.drug_test_missing":
    "No se ha anotado ninguna prueba de antibióticos y la leche ya salió de su paso.",
  "matter.drug_test_positive": "La prueba de antibióticos es positiva.",
  "matter.hold_wait": "Primero va la retención.",
  "matter.hold_not_met": "La retención no cumple sus valores.",
  "matter.hold_not_assessed": "La retención está sin evaluar.",
  "matter.recorder_wait": "Primero se leen el indicador y el registrador.",
  "matter.recorder_above": "El registrador marca más que el indicador.",
  "matter.thermometer_out": "El termómetro indicador no pasa el control.",
  "matter.acid_wait": "Primero se lee la acidez a su hora.",
  "matter.acid_too_slow": "El pH no se alcanzó a su hora.",
  "matter.acid_missed": "Ni el pH ni la acidez se leyeron a su hora.",
  "matter.acid_not_assessed":
    "La acidez se tituló; aquí no se conoce un límite para ella.",
  "matter.check_overdue": "La comprobación del termómetro está vencida.",
  "matter.curing_wait": "Los días de curado no han pasado.",
  "matter.curing_days_left": "Los días de curado no han pasado.",
  "matter.curing_not_shown":
    "Los días de curado han pasado y las lecturas no los muestran.",
  "matter.lab_wait": "Se esperan resultados del laboratorio.",
  "matter.lab_awaited": "Se esperan resultados del laboratorio.",
  "matter.lab_failed": "Un resultado del laboratorio no cumple su límite.",
  "matter_do.drug_test_wait": "Haga la prueba y anote el resultado.",
  "matter_do.drug_test_missing":
    "Haga la prueba y anote el resultado. Hasta entonces, deje la leche donde está.",
  "matter_do.drug_test_positive":
    "Deje la leche donde está, apártela y márquela. Siga el procedimiento de la casa y avise a su autoridad como ella pide.",
  "matter_do.hold_wait":
    "Termine primero la retención; entonces se evalúan sus lecturas.",
  "matter_do.hold_not_met":
    "Deje la leche en la cuba, agitada y caliente, y pregunte a un quesero. Deciden el gráfico y su autoridad.",
  "matter_do.hold_not_assessed":
    "Deje la leche en la cuba y pregunte a un quesero. Deciden el gráfico y su autoridad.",
  "matter_do.recorder_wait": "Lea los dos en la marca y anótelos.",
  "matter_do.recorder_above":
    "Ajuste el registrador al indicador, nunca al revés, y lea los dos otra vez. Anótelo en el gráfico.",
  "matter_do.thermometer_out":
    "Ajuste o cambie el termómetro según su procedimiento y lea los dos otra vez. Sus lecturas de esta retención son dudosas.",
  "matter_do.check_overdue":
    "Compruébelo en el punto de hielo o con el de referencia, y anote la lectura del termómetro de control, antes de la retención.",
  "matter_do.acid_wait": "Lea el pH de la cuajada a su hora, o titule su suero.",
  "matter_do.acid_too_slow":
    "Aparte el queso y márquelo. No lo sale antes de que decida un quesero; hágalo analizar según su plan.",
  "matter_do.acid_missed":
    "Lea el pH o titule el suero ahora y anote por qué va tarde. Un quesero decide cómo se sigue.",
  "matter_do.acid_not_assessed":
    "Haga contar los estafilococos cuando más hay, o lea el pH. Un quesero decide cómo se sigue.",
  "matter_do.curing_wait": "Deje las piezas en la cava y lea su temperatura cada día.",
  "matter_do.curing_days_left":
    "Deje las piezas en la cava y lea su temperatura cada día.",
  "matter_do.curing_not_shown":
    "Busque el registro de la cava de esos días, o siga leyendo hasta mostrar días suficientes.",
  "matter_do.lab_wait": "Envíe las muestras y anote los resultados cuando lleguen.",
  "matter_do.lab_awaited": "Anote los resultados cuando lleguen. Antes no sale nada.",
  "matter_do.lab_failed":
    "Aparte todas las piezas de la elaboración y márquelas. Siga el procedimiento de la casa y a su autoridad.",
  "more.matters": "Lo que est\u00e1 pendiente",
  "more.matters.one": "1 asunto",
  "more.matters.many": "{n} asuntos",
  "button.stands": "Ver lo pendiente",
  "button.stopped": "Detenido: qué hacer",
  "problem.stopped": "No se anotó. {matter}",
  "problem.stopped_role": "No se anotó. {matter} Puede decidir el rol {role}.",
  "problem.way_not_open": "Este camino no está abierto en este asunto.",
  "problem.matter_is_gone": "Este asunto ya no está pendiente: mire otra vez.",
  "problem.was_discarded":
    "No se anotó: esta elaboración se desechó. Quien tacha esa decisión dice que no fue así.",
  "kind.matter_decided": "decisión de un asunto",
  "line.matter_decided": "Decidido. {way}. {why}",
  "said.matter_decided": "Decidido. {way}",
  "quantity.check_temp_c": "Termómetro de control",
  "quantity.staph_per_g": "Estafilococos por gramo",
  "quantity.listeria_test": "Prueba de Listeria",
  "quantity.salmonella_test": "Prueba de salmonela",
};
