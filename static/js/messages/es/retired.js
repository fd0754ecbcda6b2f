// Sources that no recipe names any more: makes that froze them still do.

export const RETIRED = {
  "sources.retired": "{source} (ya no se cita)",
  "retired.diffusion_model_brine_time":
    "modelo de difusión, salmuera al 20 %: 1,8 % de sal en 18 h a 1,5e-10 m²/s, en 12 h a 2,3e-10; 2,0 % en 23 h; es un punto de partida, decide un análisis de sal",
  "retired.encyclopaedia_after_dairy_handbook":
    "artículo de enciclopedia sobre el salado en salmuera, según un manual lechero",
  "retired.encyclopaedia_brine_salting":
    "artículo de enciclopedia sobre el salado en salmuera",
  "retired.farmhouse_press_programme":
    "programa de quesería de granja, saber del oficio; confírmelo con su queso",
  "retired.farmstead_textbook_quoted": "manual de queso de granja, según lo dan otros",
  "retired.fermentation_handbook_title_from_memory":
    "Handbook of Food and Beverage Fermentation Technology (título sin confirmar)",
  "retired.gouda_stores_abstract": "Resumen de un texto lechero sobre cavas de Gouda",
  "retired.mirror_copy": "una copia del texto",
  "retired.printed_gouda_curve":
    "impreso para Gouda: fermento, cuajo, corte, primer suero, desmolde, mínimo tras una semana; tiempos desde añadir el fermento",
  "retired.published_brine_days":
    "publicado: de 1 a 3 días para 2 a 12 kg; se muestra el medio; costumbre, unos 3 días para una pieza de 10 kg; es un punto de partida, decide un análisis de sal",
  "retired.published_brine_temp": "publicado: de 10 a 15 °C; se muestra el medio",
  "retired.published_ph_after_press":
    "publicado: de 5,3 a 5,5 tras la prensa; Hill y Ferrer dan 5,40 a las 8 h",
  "retired.published_ripening_days":
    "publicado: 28 días; el extremo bajo es 3 semanas a 10 a 17 °C según el Codex, que las piezas de menos de 2,5 kg no tienen que alcanzar; el extremo alto no tiene fuente",
  "retired.published_salt_of_semi_hard":
    "publicado: 1,6 a 2,2 % en queso semiduro de 2 a 12 kg; el valor no tiene fuente",
  "retired.published_store_humidity": "publicado: de 85 a 90 %",
  "retired.published_store_temp":
    "publicado: de 12 a 13 °C; el Codex para Gouda dice de 10 a 17 °C",
  "retired.range_published_value_ours":
    "el intervalo está publicado; el valor de partida no tiene fuente y se ajusta con sus piezas",
  "retired.supplier_page_title":
    "Página de un proveedor sobre cuajo y cloruro de calcio para Gouda",
  "retired.trade_knowledge_bed_density": "saber del oficio, de 1050 a 1100",
  "retired.web_page": "página web",
};
