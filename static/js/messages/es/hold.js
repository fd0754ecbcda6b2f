// Lo que guía una retención en marcha, y lo que se sabe para su gráfico.

export const HOLD = {
  "hold.lead": "La retención ahora",
  "hold.of.milk_temp_c": "Leche",
  "hold.of.air_space_temp_c": "Espacio de aire",
  "hold.at_least": "al menos {temp}",
  "hold.other_unit": "Leído en otra unidad: aquí no cuenta.",
  "hold.next": "Próxima lectura",
  "hold.counts_for": "Cuenta si se lee en {time}.",
  "hold.says.meets_so_far": "Cumple, hasta las {end}",
  "hold.says.whole": "Mantenida hasta el final. Se puede terminar.",
  "hold.says.waiting":
    "Lea ambos. La retención cuenta desde la primera lectura con calor suficiente.",
  "hold.says.last_round":
    "Se cumplió el tiempo. Lea ambos una vez más para completarla.",
  "hold.says.milk_cold":
    "Leche demasiado fría: {value}, al menos {limit}. La retención empieza de nuevo; acaba a las {end} como pronto.",
  "hold.says.air_cold":
    "Espacio de aire demasiado frío: {value}, al menos {limit}. La retención empieza de nuevo; acaba a las {end} como pronto.",
  "hold.says.lost":
    "Nada se leyó en más de {span}. La retención empieza de nuevo con la próxima lectura.",
  "hold.says.again_milk_cold":
    "Empezó de nuevo a las {start}: la leche estaba a {value} a las {at}. Nuevo final: {end}.",
  "hold.says.again_air_cold":
    "Empezó de nuevo a las {start}: el espacio de aire estaba a {value} a las {at}. Nuevo final: {end}.",
  "hold.says.again_gap":
    "Empezó de nuevo a las {start}: nada se leyó durante {span} desde las {at}; cuentan {gap}. Nuevo final: {end}. Si el gráfico está completo, el quesero puede decidir otra cosa.",
  "hold.says.fat_decides":
    "Anote la grasa: desde {fat} se piden al menos {raised} a la leche.",
  "hold.says.chart_lacks": "Aún sin anotar, y el gráfico lo pide: {fields}.",
  "hold.chart": "Para el gráfico",
  "hold.not_known": "sin anotar",
  "hold.product": "{title}, lote {batch}",
  "hold.extent": "de {from} a {until}",
  "hold.at": "{temp} a las {at}",
  "chart.date": "fecha",
  "chart.plant_name": "nombre de la planta",
  "chart.product_name": "nombre del producto",
  "chart.product_amount": "cantidad",
  "chart.hold_extent": "duración de la retención",
  "chart.indicating_reading": "termómetro indicador",
  "chart.airspace_reading": "termómetro del espacio de aire",
  "chart.operator_initials": "iniciales",
  "chart.recorder_number": "número del registrador",
  "in.chart_recorder_number": "En el gráfico: número del registrador",
  "blocker.hold_not_whole": "No se leyeron ambos termómetros al final de la retención.",
};
