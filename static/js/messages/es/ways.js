// Textos en español de la hoja de lo pendiente y de los caminos para decidir.

export const WAYS = {
  "figure_name.window_s":
    "El pH a las 6 h, leído como mucho a esta distancia de su hora",
  "matters.title": "Lo que está pendiente",
  "matters.none": "Nada está pendiente en esta elaboración.",
  "matters.rule": "Según: {rule}",
  "matters.rule_secondary": "Según: {rule}, leído donde otro lo cita",
  "matters.decided": "Decidido por {name} a las {at}. {way}. {why}",
  "matters.who": "Para decidir hace falta el rol {role}.",
  "matters.nobody": "Aquí no decide nadie: se va cuando cambia el hecho.",
  "matters.stops": "Detiene:",
  "matters.stop.begin": "empezar «{step}» y lo que sigue",
  "matters.stop.end": "terminar «{step}»",
  "matters.stop.close": "cerrar la elaboración",
  "matters.stop.release": "dar salida al queso",
  "matters.mark": "DECIDIDO",
  "matters.way": "¿Qué se hace?",
  "matters.decide": "Decidir",
  "way.hold_again": "Hacer otra vez la retención",
  "way.handle_as_heat_treated": "Tratarla como leche tratada con calor",
  "way.handle_as_raw": "Tratarla como leche cruda",
  "way.discard": "Desecharla",
  "way.chart_shows": "Seguir: el gráfico muestra la retención",
  "way.tested_elsewhere": "Seguir: el resultado está en otro registro",
  "way.confirmed_negative": "Seguir: la prueba confirmada fue negativa",
  "way.recorder_set": "Seguir: el registrador se ajustó y se anotó",
  "way.authority_agreed": "Seguir: la autoridad está de acuerdo",
  "way.keep_apart": "Apartarlo y analizarlo",
  "way.tests_met": "Seguir: los análisis cumplen sus límites",
  "way.goes_by_time": "Seguir por tiempo: no se pudo medir el pH",
  "way.days_shown_elsewhere": "Seguir: el registro de la cava muestra los días",
  "way.not_in_our_plan": "Seguir: este análisis no está en nuestro plan",
  "way_means.hold_again":
    "La retención se abre otra vez y su tiempo empieza de nuevo con la próxima lectura bastante caliente.",
  "way_means.handle_as_heat_treated":
    "Los pasos pasan a ser los de la leche tratada con calor; cuentan los días de curado.",
  "way_means.handle_as_raw":
    "Los pasos pasan a ser los de la leche cruda; cuentan los días de curado.",
  "way_means.discard":
    "La elaboración termina: ningún paso sigue, nada se guarda ni sale. Diga adónde fue.",
  "way_means.chart_shows":
    "La elaboración sigue. La leche queda sin decidir: se trata como no pasteurizada.",
  "way_means.tested_elsewhere": "Diga en qué registro y su número.",
  "way_means.confirmed_negative":
    "Diga quién la confirmó y cómo, según su procedimiento y autoridad.",
  "way_means.recorder_set": "Diga quién lo ajustó y en cuánto.",
  "way_means.authority_agreed": "Diga quién está de acuerdo y con qué.",
  "way_means.keep_apart":
    "El trabajo sigue; la elaboración no se cierra y nada sale hasta tener los análisis.",
  "way_means.tests_met": "Diga qué análisis y dónde se guardan los resultados.",
  "way_means.goes_by_time": "El trabajo sigue; solo por esto el queso no sale.",
  "way_means.days_shown_elsewhere": "Diga dónde se guarda el registro.",
  "way_means.not_in_our_plan": "Diga dónde lo dice su plan.",
  "field.matter": "Asunto",
  "field.way": "Camino",
  "note.hold_rule_unknown": "la norma de la retención no se conoce aquí",
  "note.hold_skipped": "la retención se saltó",
  "note.ph_not_reached": "pH {value} después de {after_s}; se pide como máximo {limit}",
  "note.mark_missed": "no se leyó ni pH ni acidez alrededor de {value} desde el inicio",
  "note.acidity_without_limit":
    "acidez {value} a las {after_s}; ninguna fuente fija un límite para este queso",
  "note.acidity_not_reached":
    "acidez {value} a las {after_s}; se pide al menos {limit}",
  "note.curing_days": "se muestran {value} de {limit} días",
  "note.curing_start_unknown":
    "no se anotó el fin del moldeo, así que ningún día es el primero",
  "note.lab_failed": "no cumple: {test}",
  "note.lab_awaited": "se espera: {test}",
  "note.lab_samples": "{value} de {limit} muestras llegaron: {test}",
  "note.lab_above":
    "{value} de {samples} en la serie del {at_ms} por encima de {limit} por gramo, donde no se permite ninguna",
  "note.lab_between":
    "{value} de {samples} en la serie del {at_ms} entre {low} y {high} por gramo, donde se permiten {limit} como mucho",
  "note.check_overdue":
    "comprobación del termómetro vencida desde {since_ms}; se ha fijado una cada {limit} días",
  "note.check_not_on_record":
    "no consta ninguna comprobación del termómetro hasta {since_ms}; se ha fijado una cada {limit} días",
  "note.thermometer_off": "se desvía {value}; se admite como máximo {limit}",
  "of.cheese_phosphatase": "fosfatasa del queso",
  "of.staph_counts": "estafilococos",
  "of.listeria": "Listeria monocytogenes",
  "of.salmonella": "Salmonella",
};
