// What the figures rest on, in Spanish; titles stay.

export const SOURCES = {
  "source.abstract_table": "resumen y tabla",
  "source.against_opening_volume":
    "frente al volumen con que se abrió la elaboración; las dosis siguen a lo medido",
  "source.acidity_of_first_whey":
    "cifra redonda sin fuente para el primer suero de cuajada lavada, con su margen; no sale de ningún pH, y sus propias elaboraciones lo dicen mejor",
  "source.acidity_of_fresh_milk":
    "cifra redonda sin fuente para leche fresca, de 14 a 18 °D; no sale de ningún pH, y su propia leche lo dice mejor",
  "source.air_space_above_required":
    "al menos 3 °C (5 °F) por encima de lo exigido a la leche: 66 °C, o 150 °F; la meta está igual de lejos por encima de 63,9 °C",
  "source.as_the_bottle_states": "como lo dice la botella",
  "source.band_each_way_ours": "margen de 0,1 a cada lado, sin fuente",
  "source.band_ours": "margen sin fuente",
  "source.before_brine": "antes de la salmuera",
  "source.between_published_z": "entre los 5,8 y 9,46 K publicados",
  "source.both_washes_of_milk":
    "con el primer lavado, 22 % de la leche; publicado: de 20 a 25 %",
  "source.bradshaw_1985_whole_milk":
    "Bradshaw et al., J Food Prot 48:743 (1985), leche entera",
  "source.calcium_band_and_limit":
    "cifra redonda con su margen, costumbre; el límite legal está entre las cifras de la receta; si es líquido, use la concentración de la etiqueta",
  "source.california_ccr_584":
    "California, 3 CCR 584(b) y (c), espacio de aire y marca de fin de retención al pasteurizar en cuba",
  "source.california_code_34061": "California F&A Code 34061 a 34065",
  "source.can_j_microbiol_1977_milk":
    "Can J Microbiol 23:1034 (1977), leche, D60 0,87 min",
  "source.cfr_1240_61_footnote": "21 CFR 1240.61, nota al pie 1",
  "source.cfr_1240_61_footnote_and_131_3": "21 CFR 1240.61, nota al pie 1; 131.3(b)",
  "source.cfr_133_102_dairy_textbook":
    "21 CFR 133.102, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "source.cfr_133_104_dairy_textbook":
    "21 CFR 133.104, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "source.cfr_133_106_dairy_textbook":
    "21 CFR 133.106, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "source.cfr_133_133_dairy_textbook":
    "21 CFR 133.133, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "source.cfr_133_138_and_others": "21 CFR 133.138 y otros de la parte 133",
  "source.cfr_133_158_dairy_textbook":
    "21 CFR 133.158, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "source.cfr_133_162_dairy_textbook":
    "21 CFR 133.162, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "source.cfr_133_181_dairy_textbook":
    "21 CFR 133.181, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "source.cfr_133_184_dairy_textbook":
    "21 CFR 133.184, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "source.cfr_133_188_dairy_textbook":
    "21 CFR 133.188, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "source.cfr_133_calcium_anhydrous":
    "21 CFR 133.138(b)(3), 133.182: de la leche, como anhidro",
  "source.cfr_133_phenol_equivalent":
    "21 CFR 133.113, .138, .195: equivalente en fenol de 0,25 g",
  "source.cfr_editions_2006_2010":
    "Code of Federal Regulations, ediciones de 2006 y 2010",
  "source.choose_animal": "elija el animal",
  "source.choose_where_licensed": "elija dónde tiene la licencia",
  "source.choose_where_sold": "elija dónde se vende el queso",
  "source.chosen_for_recipe": "elegido o calculado para esta receta",
  "source.coated_wheel_some_weeks": "pieza recubierta, unas semanas",
  "source.codex_cheese_1978": "Codex, norma general para el queso, A-6-1978",
  "source.codex_cxs_266": "Norma Codex CXS 266 para Gouda, maduración",
  "source.codex_french_text": "Codex Alimentarius, texto francés",
  "source.cold_limit": "el límite es 7 °C (45 °F); la meta de 4 °C es costumbre",
  "source.cold_limit_until_processed":
    "el límite es 7 °C (45 °F) hasta procesarla; la meta de 4 °C es costumbre",
  "source.comar_citing_pmo_19r":
    "Pasteurized Milk Ordinance, punto 19r (Grade A), como se imprime en COMAR 10.15.09.08; la sección de Maryland sobre queso de granja es COMAR 10.15.08.08",
  "source.common_practice": "costumbre, sin fuente",
  "source.convention_pounds_in_gallon": "convenio de 8,6 lb por galón de EE. UU.",
  "source.cows_milk_casein_number": "leche de vaca, de 0,75 a 0,82",
  "source.cxs_266_three_weeks": "CXS 266-1966, 2: normalmente 3 semanas como mínimo",
  "source.cxs_283_current": "CXS 283-1978, texto vigente",
  "source.cylinder_straight_on_plate": "cilindro directo sobre la placa",
  "source.brine_time_of_salt_wanted":
    "modelo de difusión a 1,5e-10 m2/s en salmuera al 20 % para la sal que se quiere, 2,0 %; extremos: 1,6 y 2,2 %. La página de Gouda da 20 h para 0,5 kg y 3 días para Edam de 1,5 a 3 kg, sin decir la sal; una estimación de partida, decide un análisis de sal",
  "source.ec_2073_2005_amended": "Reglamento (CE) 2073/2005 modificado por 1441/2007",
  "source.ec_853_2004_annex_iii": "Reglamento (CE) 853/2004, anexo III, sección IX",
  "source.ec_853_2004_italian_text":
    "Reglamento (CE) 853/2004, anexo III, sección IX, texto italiano",
  "source.ec_853_2004_quoted_in_french":
    "Reglamento (CE) 853/2004, anexo III, sección IX, capítulo II, citado en francés en una página de derecho alimentario francés",
  "source.ec_853_2004_raw_milk":
    "Reglamento (CE) 853/2004, anexo I, 4.1: la leche cruda nunca pasó de aquí",
  "source.end_of_moulding_to_agree": "fin del moldeo; acuérdelo con el inspector",
  "source.eu_protected_indication": "indicación geográfica protegida de la UE",
  "source.press_programme_of_our_own":
    "cifras redondas sin fuente, sobre el queso: 5 a 10, 10 a 20 y después 20 a 40 kPa; dos relatos de prensas de granja caen dentro",
  "source.brine_limits_of_our_own":
    "cifras redondas para una salmuera, costumbre: ninguna ley ni un solo texto las dice",
  "source.fermentation_handbook_brine_temp":
    "Handbook of Food and Beverage Fermentation: de 10 a 15 °C",
  "source.brine_times_quoted":
    "tabla de tiempos de salmuera por tipo de queso de un manual lechero, según la da otro texto",
  "source.filled_emptied_outside_hold": "se llena y se vacía fuera de la retención",
  "source.first_wash_heat_balance":
    "balance de calor desde 32 °C tras el primer suero, con 1 K perdido; con el segundo lavado, el 20 a 25 % de la leche publicado",
  "source.five_schedules_against_curve":
    "cinco horarios publicados frente a esta curva: de 0,044 a 0,076",
  "source.floury_2010":
    "Floury et al. 2010, Dairy Science and Technology 90:477-508, resumen y tabla II: difusión de la sal en el queso",
  "source.floury_2010_start_of_ours":
    "Floury et al. 2010, Dairy Sci Technol 90:477: 2,3e-10 para un tipo Gouda; la cifra de partida no tiene fuente",
  "source.follower_not_counted": "sin contar la tapa",
  "source.from_memory": "por confirmar",
  "source.general_dairy_texts": "textos lecheros generales",
  "source.general_yield_from_memory":
    "constantes de la fórmula general de rendimiento, sin confirmar; ajústelas con sus elaboraciones",
  "source.grade_a_cooling_19r":
    "Pasteurized Milk Ordinance, punto 19r, enfriamiento de la leche Grade A, como se imprime en COMAR 10.15.09.08; el queso de granja está en COMAR 10.15.08.08",
  "source.guelph_density_table":
    "tabla de densidad de lácteos líquidos, D. Goff, University of Guelph",
  "source.guelph_density_table_whole_milk":
    "tabla de densidad de lácteos líquidos, D. Goff, University of Guelph, leche con 4,0 % de grasa",
  "source.guelph_food_science_gouda":
    "A. Hill, University of Guelph Food Science, página «Gouda»",
  "source.guelph_gouda": "A. Hill, University of Guelph, página «Gouda»",
  "source.guelph_gouda_colour_in_winter":
    "A. Hill, University of Guelph, página «Gouda»: de 1 a 2 mL en invierno",
  "source.guelph_gouda_dilution":
    "A. Hill, University of Guelph, página «Gouda»; otra página da unos 20",
  "source.guelph_gouda_scald_time":
    "A. Hill, University of Guelph, página «Gouda»: de 15 a 20 min",
  "source.guelph_gouda_third_of_whey":
    "A. Hill, University of Guelph, página «Gouda»: un tercio del suero",
  "source.guelph_rennet_activity":
    "University of Guelph Food Science, página «Rennet Activity»",
  "source.guelph_yield_prediction":
    "University of Guelph Food Science, página «Yield Prediction»",
  "source.guinee_fox_1983": "Guinee y Fox 1983, J Dairy Res: de 0,5 a 2,42",
  "source.half_way_to_second_wash":
    "a medio camino entre el cuajado y el segundo lavado",
  "source.hill_ferrer_gouda":
    "Hill y Ferrer, Cheese Making Technology e-Book, capítulo 15, Gouda",
  "source.hill_ferrer_gouda_process_table":
    "Hill y Ferrer, Cheese Making Technology e-Book, capítulo 15, tabla de control del proceso, Gouda",
  "source.hill_ferrer_process_table":
    "Hill y Ferrer, Cheese Making Technology e-Book, capítulo 15, tabla de control del proceso",
  "source.hold_aim_and_floor":
    "meta de 147 °F; extremo bajo: la retención mínima de la receta",
  "source.hold_without_break":
    "30 minutos sin interrupción; el extremo alto no tiene fuente",
  "source.hotter_water_cooks_curd": "agua más caliente cuece la piel de la cuajada",
  "source.iafp_2017_whey":
    "IAFP, resumen de la reunión anual (2017), suero, D60 1,32 min",
  "source.j_food_prot_2006":
    "J Food Prot 69(9):2161 (2006), queso semiduro de leche cruda y pasta no cocida, resumen",
  "source.j_food_prot_2006_saint_nectaire":
    "J Food Prot 69(9):2161 (2006), queso semiduro de leche cruda y pasta no cocida, resumen, tipo Saint-Nectaire",
  "source.j_food_prot_2006_salers":
    "J Food Prot 69(9):2161 (2006), queso semiduro de leche cruda y pasta no cocida, resumen, tipo Salers",
  "source.jacket_steady_temperature": "una camisa a temperatura constante",
  "source.light_pressing_under_whey": "prensado suave bajo suero",
  "source.longer_blocks_do_not_fill": "bloques más largos no llenan un molde redondo",
  "source.look_every_two_minutes": "una mirada cada dos minutos",
  "source.magnus_sprung_from_memory":
    "constantes de Magnus y Sprung, sin confirmar; a menos de 0,35 % de las tablas de vapor",
  "source.makes_differ_in_lag": "las elaboraciones difieren en un cuarto de hora",
  "source.makes_differ_in_pace": "las elaboraciones difieren en un séptimo de ritmo",
  "source.makes_end_apart": "elaboraciones de una misma receta acaban así de separadas",
  "source.mass_out_of_press": "masa al salir de la prensa",
  "source.mcl_288_697_two_tables":
    "MCL 288.697 (Michigan), que imprime los pares de cuba y de flujo continuo en dos tablas",
  "source.medvedova_mixed_starter": "Medvedova et al., fermento mixto",
  "source.medvedova_mixed_starter_at_32":
    "Medvedova et al., Fermentation 5(1):2, fermento mixto a 32 °C",
  "source.meter_set_day": "un medidor ajustado ese día",
  "source.meter_shape_curve_together": "el medidor y la forma de la curva juntos",
  "source.milk_age_limit":
    "el límite es 48 h a 4 °C o menos, contadas desde la aceptación en el establecimiento; aquí se compara con la edad de la leche más vieja, que es más estricto; la meta de 24 h es costumbre",
  "source.milk_for_cheese": "leche para queso",
  "source.milk_planned": "la leche prevista",
  "source.new_york_nycrr_2_49":
    "Nueva York, 1 NYCRR 2.49, leche cruda guardada en la planta",
  "source.nist_handbook_ewma_weight": "NIST/SEMATECH e-Handbook, 6.3.2.4: de 0,2 a 0,3",
  "source.no_blank_run": "sin ensayo en blanco",
  "source.no_friction_counted": "sin contar el roce",
  "source.nothing_sweet_added": "a la leche de quesería no se le añade nada dulce",
  "source.nycrr_2_48_and_3_27": "1 NYCRR 2.48 (punto 16p(D)) y 3.27",
  "source.one_cylinder": "un cilindro",
  "source.one_size_only": "un solo tamaño",
  "source.one_wheel_or_in_series": "una pieza, o piezas apiladas en serie",
  "source.own_setting_of_tool": "ajuste propio de esta herramienta",
  "source.own_setting_to_agree":
    "ajuste propio de esta herramienta, por acordar con el inspector",
  "source.own_settings_say_better": "mejor lo dicen sus propios cuajados; de 0 a 3 min",
  "source.ph_after_a_night":
    "cifra redonda sin fuente para piezas que pasan la noche en la prensa; la tabla de Hill y Ferrer da 5,40 a las 8 h y 5,20 como mínimo. Los 5,3 a 5,5 de la página de Gouda se miden tras 5 a 8 h de prensado",
  "source.ph_when_the_wheels_are_turned":
    "las piezas se alcanzan al voltearlas, unas 6 h 20 min desde el fermento; con tiempo para una mano que tarda",
  "source.ph_on_a_straight_line":
    "en línea recta entre 6,35 a las 3 h y 5,40 a las 8 h, unas 6 h 20 min desde el fermento; margen ancho porque la curva no es recta",
  "source.plate_follower_not_counted": "sin contar placa ni tapa",
  "source.pmo_appendix_n": "Pasteurized Milk Ordinance, apéndice N",
  "source.pmo_older_texts_differ":
    "Pasteurized Milk Ordinance; los textos antiguos dicen 1 000 000",
  "source.pmo_section_6_appendix_n":
    "Pasteurized Milk Ordinance, sección 6 y apéndice N",
  "source.pmo_table": "Pasteurized Milk Ordinance, tabla",
  "source.pmo_table_quoted": "Pasteurized Milk Ordinance, tabla citada en otra fuente",
  "source.practice_alkali_tenth_normal": "costumbre: álcali 0,1 N",
  "source.practice_sample_size": "costumbre: muestra de 10 mL",
  "source.printed_above_required":
    "impreso como 5 °F por encima de la temperatura exigida",
  "source.printed_gouda_curve_and_night":
    "impreso para Gouda: fermento, cuajo, corte, primer suero, desmolde a las 8 h, mínimo tras una semana; tiempos desde añadir el fermento. El punto de 5,25 a las 18 h, tras una noche en la prensa, no tiene fuente",
  "source.printed_hold_floor": "impreso como 145 °F (63 °C)",
  "source.printed_press_pressure":
    "impreso como 14 psi; la página no dice si en el manómetro o sobre el queso, así que no es una meta",
  "source.process_table_allows_an_hour":
    "la tabla de control del proceso de Hill y Ferrer permite 60 minutos",
  "source.published_bed_time":
    "publicado: al menos 10 minutos bajo el suero; el extremo alto no tiene fuente",
  "source.salt_wanted_of_our_own":
    "cifra redonda sin fuente para una pieza semidura, con su margen; ajústela a su gusto",
  "source.published_brine_strength": "publicado: 20 %; el margen no tiene fuente",
  "source.brine_temp_of_our_own":
    "cifra redonda, costumbre: de 10 a 15 °C; se muestra el medio",
  "source.published_colour_dose":
    "publicado: de 1 a 2 mL en 1000 kg, en invierno; la fuerza varía",
  "source.published_end_ph": "publicado: de 5,15 a 5,25",
  "source.published_ph_at_whey_off":
    "publicado: de 6,40 a 6,45; el margen de 0,1 en torno al medio no tiene fuente; Hill y Ferrer dan 6,35 más tarde, a los 180 minutos",
  "source.published_protein_to_fat":
    "proteína por grasa publicada: 1,07; con 3,3 % de proteína es 3,08 % de grasa; la leche entera de un rebaño puede ser más rica",
  "source.published_quarter_hour_band_ours":
    "publicado: 15 minutos más; el margen no tiene fuente",
  "source.published_quarter_hour_more_or_less": "publicado: de 15 a 20 minutos",
  "source.published_rennet_dose":
    "publicado: 190 mL en 1000 kg; otra página da unos 200; ajuste según la fuerza de la botella",
  "source.published_washes_against_balance":
    "un lavado publicado (20 a 25 % de la leche a 60\u00a0°C, hasta 36 a 38\u00a0°C) queda hasta 1\u00a0°C por debajo del balance de calor",
  "source.ripening_days_of_our_own":
    "cifra redonda de 4 semanas sin fuente; el extremo bajo es 3 semanas a 10 a 17 °C según el Codex, que las piezas de menos de 2,5 kg no tienen que alcanzar",
  "source.published_scald_temp": "publicado: de 36 a 38 °C",
  "source.published_set_temp": "publicado: de 30 a 32 °C",
  "source.published_set_temp_wider":
    "publicado: de 30 a 32 °C; el extremo alto es 1 K más ancho, sin fuente",
  "source.published_set_time":
    "cuajo a los 60 y corte a los 90 minutos; la página de Guelph sobre el cuajo da de 30 a 40 minutos",
  "source.published_stir_time": "publicado: de 20 a 30 minutos",
  "source.store_humidity_of_our_own":
    "cifra redonda sin fuente para piezas recubiertas, con su margen",
  "source.store_temp_of_our_own":
    "cifra redonda sin fuente; el Codex para Gouda dice de 10 a 17 °C",
  "source.published_whole_pressing":
    "el prensado entero de la página de Guelph sobre Gouda es de 5 a 8 h; una noche es usual donde nadie está para desmoldar",
  "source.salt_diffusion_start":
    "el intervalo de 1 a 5,3e-10 es el del resumen; la tabla II baja hasta 0,62e-10 (Emmental) y da 2,3e-10 para un tipo Gouda; el comienzo de 1,5e-10 no tiene fuente y se ajusta con sus piezas",
  "source.recipe_moulds": "los moldes de la receta",
  "source.recipe_targets": "los objetivos de la receta",
  "source.ripe_washed_curd_wheel": "pieza madura de cuajada lavada",
  "source.rule_of_recipe": "la norma que nombra la receta",
  "source.salt_in_water_out": "entra sal y sale el doble de su masa en agua",
  "source.sea_level": "nivel del mar",
  "source.second_wash_heat_balance":
    "balance de calor de 34 °C a 37 °C para el agua que falta por añadir",
  "source.set_at_32": "cuajado a 32 °C",
  "source.share_of_curd": "parte de la cuajada",
  "source.share_of_milk_without_water": "0,02 % del peso de la leche, contado sin agua",
  "source.silver_nitrate_tenth_molar": "nitrato de plata 0,1 mol/L",
  "source.skim_or_cream_stirred_in": "se mezcla leche desnatada o nata",
  "source.soxhlet_another_time": "Soxhlet; una página dice 45 min",
  "source.soxhlet_own_time": "los 40 min del propio Soxhlet",
  "source.specification_summary": "resumen del pliego de condiciones",
  "source.specification_summary_twelve_days":
    "resumen del pliego de condiciones, 12 días después de la elaboración",
  "source.state_regulation": "norma del estado",
  "source.statutory_instrument": "statutory instrument (decreto británico)",
  "source.stirred_vat_thermometer":
    "una cuba agitada y un termómetro de esfera o digital",
  "source.setting_q10_from_memory":
    "cuaja de 2 a 3 veces más rápido con 10 grados más, sin confirmar; de 28 a 36 °C",
  "source.supplier_page":
    "página de un proveedor sobre cuajo y cloruro de calcio para Gouda",
  "source.supplier_page_usual_dose":
    "página de un proveedor sobre cuajo y cloruro de calcio para Gouda; lo usual, de 35 a 55",
  "source.the_trade": "el oficio",
  "source.third_of_whey_share_of_milk":
    "un tercio del suero; 100 kg de leche dan unos 89 kg de suero",
  "source.this_recipe": "esta receta",
  "source.trade_knowledge": "saber del oficio",
  "source.bed_density_of_our_own":
    "cifra redonda sin fuente, de 1050 a 1100: pese un bloque para fijarla",
  "source.trade_knowledge_lactococcus": "saber del oficio sobre Lactococcus",
  "source.trade_knowledge_new_brine": "saber del oficio: salmuera nueva",
  "source.trade_knowledge_range": "saber del oficio, de 2 a 3",
  "source.trade_rule_gouda_types": "una regla del oficio para quesos tipo Gouda",
  "source.trade_rule_not_science":
    "una regla del oficio, no ciencia; cámbiela según su cuajada",
  "source.twice_a_week": "dos veces por semana",
  "source.two_in_a_hundred": "dos de cada cien",
  "source.two_published_gouda_sources": "dos fuentes publicadas sobre Gouda",
  "source.two_thermometers_compared": "dos termómetros comparados",
  "source.two_weeks": "dos semanas",
  "source.two_weeks_then_twice_a_week":
    "las dos primeras semanas; luego, dos veces por semana",
  "source.two_yield_formulas":
    "kg al salir de la prensa por kg de leche; dos fórmulas de rendimiento dan 0,1037 y 0,1083 con 3,4 % de grasa, 2,6 % de caseína, 43 % de humedad",
  "source.uk_si_1995_1086":
    "Reino Unido, SI 1995/1086 schedule 5 (sustituido): tiempo desde la aceptación en el establecimiento hasta la elaboración",
  "source.us_cfr_1240_61":
    "Estados Unidos, 21 CFR 1240.61(b), leche pasteurizada; 21 CFR 133.3(d) dice qué es pasteurizada en la leche para queso",
  "source.us_cfr_133_138":
    "Estados Unidos, 21 CFR 133.138(b)(3), cloruro de calcio en la leche de quesería",
  "source.use_dose_on_pack": "la fuerza varía: use la dosis del sobre",
  "source.calcium_solution_densities":
    "densidades del cloruro de calcio en agua a 20\u00a0°C, de una tabla impresa",
  "source.usual_small_creamery": "usual en una quesería pequeña",
  "source.vat_all_held_once": "una cuba, toda la leche retenida a la vez",
  "source.volume_times_usual_density": "volumen por densidad usual",
  "source.volumes_of_water_to_rennet":
    "volúmenes de agua por uno de cuajo; otra página da unos 20",
  "source.washed_curd_store": "una cava de quesos de cuajada lavada",
  "source.washed_curd_wheel_out_press": "pieza de cuajada lavada al salir de la prensa",
  "source.water_phase_of_milk": "fase acuosa de la leche, 94 kg de 100",
  "source.whey_and_curd_of_facts": "calculado según las partes de suero y cuajada",
  "source.whey_share_of_milk": "el suero es unos 89 kg de 100 kg de leche",
  "source.with_time_to_dry": "con el tiempo de secado",
  "source.working_brine": "una salmuera en uso",
  "source.zehren_study": "Zehren y Zehren, J Dairy Sci, estudio de 378 cubas, resumen",

  "source.own_heat_aim":
    "147 °F o 64 °C, cifra redonda sin fuente, desde 63 °C: bastante calor contra lo que estropea el queso y poco para una cuajada firme",
  "source.own_air_rise":
    "lo mismo que una norma pide a un pasteurizador: la espuma y las salpicaduras bajo la tapa se calientan como la leche",
  "source.own_gap":
    "el doble del tiempo entre lecturas, para que una pueda llegar tarde; sin fuente",
  "source.own_hold_time":
    "de 15 a 20 minutos, cifra redonda sin fuente: la mitad de lo que pide una norma, para que nadie lo tome por pasteurizar",
};
