// What a figure rests on, as the core says it, keyed by the English; titles stay.

export const PROSE = {
  "0.1 mol/L silver nitrate": "nitrato de plata 0,1 mol/L",
  "1 NYCRR 2.48 (item 16p(D)) and 3.27": "1 NYCRR 2.48 (punto 16p(D)) y 3.27",
  "21 CFR 1240.61, footnote 1": "21 CFR 1240.61, nota al pie 1",
  "21 CFR 1240.61, footnote 1; 131.3(b)": "21 CFR 1240.61, nota al pie 1; 131.3(b)",
  "21 CFR 133.102, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.102, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "21 CFR 133.104, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.104, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "21 CFR 133.106, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.106, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "21 CFR 133.133, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.133, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "21 CFR 133.158, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.158, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "21 CFR 133.162, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.162, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "21 CFR 133.181, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.181, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "21 CFR 133.184, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.184, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "21 CFR 133.188, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.188, manual lechero, tabla 10.1, que cita 21 CFR 133 (2003), cotejada con 3 CCR 415",
  "21 CFR 133.113, .138, .195: phenol equivalent of 0.25 g":
    "21 CFR 133.113, .138, .195: equivalente en fenol de 0,25 g",
  "21 CFR 133.138 and others of part 133": "21 CFR 133.138 y otros de la parte 133",
  "21 CFR 133.138(b)(3), 133.182: of the milk, as anhydrous":
    "21 CFR 133.138(b)(3), 133.182: de la leche, como anhidro",
  "A. Hill, University of Guelph, page Gouda":
    "A. Hill, University of Guelph, página «Gouda»",
  "A. Hill, University of Guelph, page Gouda: 1 to 2 mL in winter":
    "A. Hill, University of Guelph, página «Gouda»: de 1 a 2 mL en invierno",
  "A. Hill, University of Guelph, page Gouda: 15 to 20 min":
    "A. Hill, University of Guelph, página «Gouda»: de 15 a 20 min",
  "A. Hill, University of Guelph, page Gouda: a third of the whey":
    "A. Hill, University of Guelph, página «Gouda»: un tercio del suero",
  "A. Hill, University of Guelph, page Gouda; another page gives about 20":
    "A. Hill, University of Guelph, página «Gouda»; otra página da unos 20",
  "Bradshaw et al., J Food Prot 48:743 (1985), whole milk":
    "Bradshaw et al., J Food Prot 48:743 (1985), leche entera",
  "CXS 266-1966, 2: normally 3 weeks at least":
    "CXS 266-1966, 2: normalmente 3 semanas como mínimo",
  "CXS 283-1978, current text": "CXS 283-1978, texto vigente",
  "California F&A Code 34061 to 34065": "California F&A Code 34061 a 34065",
  "Can J Microbiol 23:1034 (1977), milk, D60 0.87 min":
    "Can J Microbiol 23:1034 (1977), leche, D60 0,87 min",
  "Codex General Standard for Cheese, A-6-1978":
    "Codex, norma general para el queso, A-6-1978",
  "EU protected geographical indication": "indicación geográfica protegida de la UE",
  "Floury et al. 2010, Dairy Sci Technol 90:477, table II; start of ours":
    "Floury et al. 2010, Dairy Sci Technol 90:477, tabla II; punto de partida nuestro",
  "Guinee and Fox 1983, J Dairy Res: 0.5 to 2.42":
    "Guinee y Fox 1983, J Dairy Res: de 0,5 a 2,42",
  "Handbook of Food and Beverage Fermentation Technology (title from memory)":
    "Handbook of Food and Beverage Fermentation Technology (título de memoria)",
  "Handbook of Food and Beverage Fermentation: 10 to 15 °C":
    "Handbook of Food and Beverage Fermentation: de 10 a 15 °C",
  "Hill and Ferrer, Cheese Making Technology e-Book, chapter 15, Gouda":
    "Hill y Ferrer, Cheese Making Technology e-Book, capítulo 15, Gouda",
  "Hill and Ferrer, Cheese Making Technology e-Book, chapter 15, table of process control, Gouda":
    "Hill y Ferrer, Cheese Making Technology e-Book, capítulo 15, tabla de control del proceso, Gouda",
  "IAFP annual meeting abstract (2017), whey, D60 1.32 min":
    "IAFP, resumen de la reunión anual (2017), suero, D60 1,32 min",
  "J Food Prot 69(9):2161 (2006), raw-milk uncooked semi-hard cheese, abstract":
    "J Food Prot 69(9):2161 (2006), queso semiduro de leche cruda y pasta no cocida, resumen",
  "J Food Prot 69(9):2161 (2006), raw-milk uncooked semi-hard cheese, abstract, Saint-Nectaire type":
    "J Food Prot 69(9):2161 (2006), queso semiduro de leche cruda y pasta no cocida, resumen, tipo Saint-Nectaire",
  "J Food Prot 69(9):2161 (2006), raw-milk uncooked semi-hard cheese, abstract, Salers type":
    "J Food Prot 69(9):2161 (2006), queso semiduro de leche cruda y pasta no cocida, resumen, tipo Salers",
  "MCL 288.697 (Michigan), which prints vat and continuous pairs as two tables":
    "MCL 288.697 (Michigan), que imprime los pares de cuba y de flujo continuo en dos tablas",
  "Magnus and Sprung constants, from memory; within 0.35 % of steam tables":
    "constantes de Magnus y Sprung, de memoria; a menos de 0,35 % de las tablas de vapor",
  "Md. COMAR 10.15.09.08, citing Pasteurized Milk Ordinance 19r":
    "Md. COMAR 10.15.09.08, que cita Pasteurized Milk Ordinance 19r",
  "Medvedova et al., Fermentation 5(1):2 (2018/19)":
    "Medvedova et al., Fermentation 5(1):2 (2018/19)",
  "Medvedova et al., Fermentation 5(1):2, mixed starter at 32 °C":
    "Medvedova et al., Fermentation 5(1):2, fermento mixto a 32 °C",
  "Medvedova et al., mixed starter": "Medvedova et al., fermento mixto",
  "NIST/SEMATECH e-Handbook, 6.3.2.4: 0.2 to 0.3":
    "NIST/SEMATECH e-Handbook, 6.3.2.4: de 0,2 a 0,3",
  "Pasteurized Milk Ordinance table": "Pasteurized Milk Ordinance, tabla",
  "Pasteurized Milk Ordinance, appendix N": "Pasteurized Milk Ordinance, apéndice N",
  "Pasteurized Milk Ordinance, section 6 and appendix N":
    "Pasteurized Milk Ordinance, sección 6 y apéndice N",
  "Pasteurized Milk Ordinance, table quoted in a second source":
    "Pasteurized Milk Ordinance, tabla citada en otra fuente",
  "Pasteurized Milk Ordinance; older texts say 1 000 000":
    "Pasteurized Milk Ordinance; los textos antiguos dicen 1 000 000",
  "Reg. (EC) 2073/2005 as amended by 1441/2007":
    "Reglamento (CE) 2073/2005 modificado por 1441/2007",
  "Regulation (EC) 853/2004, Annex I, 4.1: raw milk was never above this":
    "Reglamento (CE) 853/2004, anexo I, 4.1: la leche cruda nunca pasó de aquí",
  "Regulation (EC) 853/2004, Annex III, Section IX":
    "Reglamento (CE) 853/2004, anexo III, sección IX",
  "Regulation (EC) 853/2004, Annex III, Section IX, Chapter II, quoted in French on a page of French food law":
    "Reglamento (CE) 853/2004, anexo III, sección IX, capítulo II, citado en francés en una página de derecho alimentario francés",
  "Regulation (EC) 853/2004, Annex III, Section IX, Italian text":
    "Reglamento (CE) 853/2004, anexo III, sección IX, texto italiano",
  "Soxhlet's own 40 min": "los 40 min del propio Soxhlet",
  "Soxhlet; one page says 45 min": "Soxhlet; una página dice 45 min",
  "Zehren and Zehren, J Dairy Sci, study of 378 vats, abstract":
    "Zehren y Zehren, J Dairy Sci, estudio de 378 cubas, resumen",
  "a jacket of steady temperature": "una camisa a temperatura constante",
  "a look every two minutes": "una mirada cada dos minutos",
  "a meter set that day": "un medidor ajustado ese día",
  "a rule of the trade for Gouda types": "una regla del oficio para quesos tipo Gouda",
  "a stirred vat and a dial or digital thermometer":
    "una cuba agitada y un termómetro de esfera o digital",
  "a supplier's page on rennet and calcium chloride for Gouda":
    "página de un proveedor sobre cuajo y cloruro de calcio para Gouda",
  "a supplier's page on rennet and calcium chloride for Gouda; 35 to 55 usual":
    "página de un proveedor sobre cuajo y cloruro de calcio para Gouda; lo usual, de 35 a 55",
  "a vat, all of it held at once": "una cuba, toda la leche retenida a la vez",
  "a washed-curd store": "una cava de quesos de cuajada lavada",
  "a working brine": "una salmuera en uso",
  "as the bottle states it": "como lo dice la botella",
  "before the brine": "antes de la salmuera",
  "between the published 5.8 and 9.46 K": "entre los 5,8 y 9,46 K publicados",
  "choose the animal": "elija el animal",
  "choose where the cheese is sold": "elija dónde se vende el queso",
  "choose where you are licensed": "elija dónde tiene la licencia",
  "coated wheel, some weeks": "pieza recubierta, unas semanas",
  "common practice: 0.1 N alkali": "práctica común: álcali 0,1 N",
  "common practice: 10 mL sample": "práctica común: muestra de 10 mL",
  "constants of the general yield formula, from memory; set them from own makes":
    "constantes de la fórmula general de rendimiento, de memoria; ajústelas con sus elaboraciones",
  "convention of 8.6 lb in a US gallon": "convenio de 8,6 lb por galón de EE. UU.",
  "cows' milk, 0.75 to 0.82": "leche de vaca, de 0,75 a 0,82",
  "cylinder straight on the plate": "cilindro directo sobre la placa",
  "density table of fluid dairy products, D. Goff, University of Guelph":
    "tabla de densidad de lácteos líquidos, D. Goff, University of Guelph",
  "density table of fluid dairy products, D. Goff, University of Guelph, milk of 4.0 % fat":
    "tabla de densidad de lácteos líquidos, D. Goff, University of Guelph, leche con 4,0 % de grasa",
  "encyclopaedia article on brine salting":
    "artículo de enciclopedia sobre el salado en salmuera",
  "encyclopaedia article on brine salting, after a dairy handbook":
    "artículo de enciclopedia sobre el salado en salmuera, según un manual lechero",
  "end of moulding; agree it with the inspector":
    "fin del moldeo; acuérdelo con el inspector",
  "farmhouse programme, trade knowledge; confirm it with your own cheese":
    "programa de quesería de granja, saber del oficio; confírmelo con su queso",
  "farmstead cheese textbook, quoted in a forum":
    "manual de queso de granja, citado en un foro",
  "filled and emptied outside the hold": "se llena y se vacía fuera de la retención",
  "five published schedules against this curve: 0.044 to 0.076":
    "cinco horarios publicados frente a esta curva: de 0,044 a 0,076",
  "follower not counted": "sin contar la tapa",
  "hotter water cooks the skin of the curd":
    "agua más caliente cuece la piel de la cuajada",
  "light pressing under whey": "prensado suave bajo suero",
  "longer blocks do not fill a round mould":
    "bloques más largos no llenan un molde redondo",
  "makes differ by a quarter of an hour":
    "las elaboraciones difieren en un cuarto de hora",
  "makes differ by a seventh in pace":
    "las elaboraciones difieren en un séptimo de ritmo",
  "makes of one recipe end this far apart":
    "elaboraciones de una misma receta acaban así de separadas",
  "meter and shape of the curve together": "el medidor y la forma de la curva juntos",
  "milk for cheese": "leche para queso",
  "milk that was planned": "la leche prevista",
  "no blank run": "sin ensayo en blanco",
  "no friction counted": "sin contar el roce",
  "nothing sweet is added to cheese milk":
    "a la leche de quesería no se le añade nada dulce",
  "one cylinder": "un cilindro",
  "one size only": "un solo tamaño",
  "one wheel, or wheels stacked in series": "una pieza, o piezas apiladas en serie",
  "own settings say better; 0 to 3 min":
    "mejor lo dicen sus propios cuajados; de 0 a 3 min",
  "plate and follower not counted": "sin contar placa ni tapa",
  "ripe washed-curd wheel": "pieza madura de cuajada lavada",
  "salt in, twice its mass of water out":
    "entra sal y sale el doble de su masa en agua",
  "sea level": "nivel del mar",
  "set at 32 °C": "cuajado a 32 °C",
  "skim or cream is stirred in": "se mezcla leche desnatada o nata",
  "summary of the specification": "resumen del pliego de condiciones",
  "summary of the specification, 12 days after making":
    "resumen del pliego de condiciones, 12 días después de la elaboración",
  "the recipe": "la receta",
  "the recipe's moulds": "los moldes de la receta",
  "the recipe's targets": "los objetivos de la receta",
  "the rule that the recipe names": "la regla que nombra la receta",
  "this tool's own setting": "ajuste propio de esta herramienta",
  "this tool's own setting, to be agreed with the inspector":
    "ajuste propio de esta herramienta, por acordar con el inspector",
  "trade knowledge": "saber del oficio",
  "trade knowledge of Lactococcus": "saber del oficio sobre Lactococcus",
  "trade knowledge, 1050 to 1100": "saber del oficio, de 1050 a 1100",
  "trade knowledge, 2 to 3": "saber del oficio, de 2 a 3",
  "trade knowledge: new brine": "saber del oficio: salmuera nueva",
  "two in a hundred": "dos de cada cien",
  "two published Gouda sources": "dos fuentes publicadas sobre Gouda",
  "two thermometers compared": "dos termómetros comparados",
  "usual for a small creamery": "usual en una quesería pequeña",
  "volume times usual density": "volumen por densidad usual",
  "washed-curd wheel out of the press": "pieza de cuajada lavada al salir de la prensa",
  "water phase of milk, 94 kg of 100": "fase acuosa de la leche, 94 kg de 100",
  "whey and curd of the facts": "suero y cuajada de los datos",
  "whey is about 89 kg of 100 kg milk": "el suero es unos 89 kg de 100 kg de leche",

  // Sources of the recipes
  'A. Hill, University of Guelph Food Science, page "Gouda"':
    "A. Hill, University of Guelph Food Science, página «Gouda»",
  "Hill and Ferrer, Cheese Making Technology e-Book, chapter 15, table of process control":
    "Hill y Ferrer, Cheese Making Technology e-Book, capítulo 15, tabla de control del proceso",
  'University of Guelph Food Science, page "Rennet Activity"':
    "University of Guelph Food Science, página «Rennet Activity»",
  'University of Guelph Food Science, page "Yield Prediction"':
    "University of Guelph Food Science, página «Yield Prediction»",
  'Encyclopaedia article "Brine salting", after a dairy processing handbook':
    "Artículo de enciclopedia «Brine salting», según un manual de procesado lechero",
  "Floury et al. 2010, Dairy Science and Technology 90:477-508, table II: salt diffusion in cheese":
    "Floury et al. 2010, Dairy Science and Technology 90:477-508, tabla II: difusión de la sal en el queso",
  "Abstract of a dairy text on Gouda stores":
    "Resumen de un texto lechero sobre cavas de Gouda",
  "A supplier's page on rennet and calcium chloride for Gouda":
    "Página de un proveedor sobre cuajo y cloruro de calcio para Gouda",
  "United States, 21 CFR 1240.61(b), pasteurised milk":
    "Estados Unidos, 21 CFR 1240.61(b), leche pasteurizada",
  "United States, 21 CFR 133.138(b)(3), calcium chloride in cheese milk":
    "Estados Unidos, 21 CFR 133.138(b)(3), cloruro de calcio en la leche de quesería",
  "California, 3 CCR 584(b) and (c), air space and end-of-hold mark in vat pasteurising":
    "California, 3 CCR 584(b) y (c), espacio de aire y marca de fin de retención al pasteurizar en cuba",
  "Grade A milk cooling, item 19r, as adopted in Maryland COMAR 10.15.09.08":
    "Enfriamiento de la leche Grade A, punto 19r, como lo adopta Maryland COMAR 10.15.09.08",
  "New York, 1 NYCRR 2.49, raw milk held in the plant":
    "Nueva York, 1 NYCRR 2.49, leche cruda guardada en la planta",
  "United Kingdom, SI 1995/1086 schedule 5, time from milking to making (superseded)":
    "Reino Unido, SI 1995/1086 schedule 5, tiempo del ordeño a la elaboración (sustituido)",
  "Codex standard CXS 266 for Gouda, ripening":
    "Norma Codex CXS 266 para Gouda, maduración",
  "common practice, no source": "práctica común, sin fuente",
  "from memory, to be confirmed": "de memoria, por confirmar",
  "chosen or worked out for this recipe": "elegido o calculado para esta receta",
  "mirror copy": "copia espejo",
  "abstract and table": "resumen y tabla",
  "web page": "página web",
  "Code of Federal Regulations, editions of 2006 and 2010":
    "Code of Federal Regulations, ediciones de 2006 y 2010",
  "state regulation": "norma del estado",
  "statutory instrument": "statutory instrument (decreto británico)",
  "Codex Alimentarius, French text": "Codex Alimentarius, texto francés",
  "the trade": "el oficio",
  "general dairy texts": "textos lecheros generales",
  "this recipe": "esta receta",

  // Notes of the recipes' figures
  "the limit is 7 °C (45 °F) until processed; the aim of 4 °C is common practice":
    "el límite es 7 °C (45 °F) hasta procesarla; la meta de 4 °C es práctica común",
  "147 °F aim; low end: figures.hold_floor_c":
    "meta de 147 °F; extremo bajo: la retención mínima de la receta",
  "printed as 145 °F (63 °C)": "impreso como 145 °F (63 °C)",
  "published as 15 to 20 minutes": "publicado: de 15 a 20 minutos",
  "published as 15 more minutes; the band is ours":
    "publicado: 15 minutos más; la banda es nuestra",
  "published as 12 to 13 °C; Codex for Gouda (CODEX266) says 10 to 17 °C":
    "publicado: de 12 a 13 °C; el Codex para Gouda (CODEX266) dice de 10 a 17 °C",
  "published as 30 to 32 °C": "publicado: de 30 a 32 °C",
  "published as 1 to 3 days for 2 to 12 kg; the middle is shown; common practice about 3 days for a 10 kg wheel; a starting estimate, a salt test decides":
    "publicado: de 1 a 3 días para 2 a 12 kg; se muestra el medio; práctica común, unos 3 días para una pieza de 10 kg; es un punto de partida, decide un análisis de sal",
  "a third of the whey; 100 kg of milk gives about 89 kg of whey":
    "un tercio del suero; 100 kg de leche dan unos 89 kg de suero",
  "the band is common practice; the legal limit is figures.calcium_chloride_limit; for a liquid, use the strength on the label":
    "la banda es práctica común; el límite legal está entre las cifras de la receta; si es líquido, use la concentración de la etiqueta",
  "published as 10 to 15 °C; the middle is shown":
    "publicado: de 10 a 15 °C; se muestra el medio",
  "heat balance from 32 °C after the first whey, with 1 K lost; with the second wash the published 20 to 25 % of the milk":
    "balance de calor desde 32 °C tras el primer suero, con 1 K perdido; con el segundo lavado, el 20 a 25 % de la leche publicado",
  "published as 5.15 to 5.25": "publicado: de 5,15 a 5,25",
  "published 30 to 32 °C; upper end 1 K wider here":
    "publicado: de 30 a 32 °C; aquí el extremo alto es 1 K más ancho",
  "published as 36 to 38 °C": "publicado: de 36 a 38 °C",
  "the limit is 7 °C (45 °F); the aim of 4 °C is common practice":
    "el límite es 7 °C (45 °F); la meta de 4 °C es práctica común",
  "printed for Gouda: starter, rennet, cut, first whey off, out of the mould, least after a week; times from adding the starter":
    "impreso para Gouda: fermento, cuajo, corte, primer suero, desmolde, mínimo tras una semana; tiempos desde añadir el fermento",
  "published as 1 to 2 mL in 1,000 kg, in winter; strength varies":
    "publicado: de 1 a 2 mL en 1000 kg, en invierno; la fuerza varía",
  "30 minutes without a break; the upper end is ours":
    "30 minutos sin interrupción; el extremo alto es nuestro",
  "published as 20 %; BRINE gives 20 to 22 %; the low end is ours":
    "publicado: 20 %; BRINE da de 20 a 22 %; el extremo bajo es nuestro",
  "on a straight line between 6.35 at 3 h and 5.40 at 8 h, about 6 h 20 min from the starter; a wide band because the curve is not straight":
    "en línea recta entre 6,35 a las 3 h y 5,40 a las 8 h, unas 6 h 20 min desde el fermento; banda ancha porque la curva no es recta",
  "rennet at 60 and cut at 90 minutes; another page (RENNET) gives 30 to 40 minutes":
    "cuajo a los 60 y corte a los 90 minutos; otra página (RENNET) da de 30 a 40 minutos",
  "with the first wash 22 % of the milk; published 20 to 25 %":
    "con el primer lavado, 22 % de la leche; publicado: de 20 a 25 %",
  "published as 85 to 90 %": "publicado: de 85 a 90 %",
  "published as 6.40 to 6.45; the band of 0.1 round its middle is ours; EBOOK gives 6.35 later, at 180 minutes":
    "publicado: de 6,40 a 6,45; la banda de 0,1 en torno al medio es nuestra; EBOOK da 6,35 más tarde, a los 180 minutos",
  "published as 20 to 30 minutes": "publicado: de 20 a 30 minutos",
  "two weeks": "dos semanas",
  "twice a week": "dos veces por semana",
  "published protein to fat 1.07; with 3.3 % protein that is 3.08 % fat; whole milk of a farm herd may be richer":
    "proteína por grasa publicada: 1,07; con 3,3 % de proteína es 3,08 % de grasa; la leche entera de un rebaño puede ser más rica",
  "printed as 14 psi; the page does not say whether at the gauge or on the cheese, so it is no target":
    "impreso como 14 psi; la página no dice si en el manómetro o sobre el queso, así que no es una meta",
  "published as 28 days; the low end is 3 weeks at 10 to 17 °C (CODEX266), which wheels under 2.5 kg need not reach; the upper end is ours":
    "publicado: 28 días; el extremo bajo es 3 semanas a 10 a 17 °C (CODEX266), que las piezas de menos de 2,5 kg no tienen que alcanzar; el extremo alto es nuestro",
  "strength differs: use the dose on the pack":
    "la fuerza varía: use la dosis del sobre",
  "published as 190 mL in 1,000 kg; another page gives about 200; scale by the strength on the bottle":
    "publicado: 190 mL en 1000 kg; otra página da unos 200; ajuste según la fuerza de la botella",
  "half way from set to the second wash":
    "a medio camino entre el cuajado y el segundo lavado",
  "the limit is 48 h at 4 °C or colder; the aim of 24 h is common practice":
    "el límite es 48 h a 4 °C o menos; la meta de 24 h es práctica común",
  "share of the curd": "parte de la cuajada",
  "against the volume the make was opened with; doses follow what was measured":
    "frente al volumen con que se abrió la elaboración; las dosis siguen a lo medido",
  "the table of process control (EBOOK) allows 60 minutes":
    "la tabla de control del proceso (EBOOK) permite 60 minutos",
  "band ours": "banda nuestra",
  "published as 5.3 to 5.5 after the press; EBOOK gives 5.40 at 8 h":
    "publicado: de 5,3 a 5,5 tras la prensa; EBOOK da 5,40 a las 8 h",
  "published as at least 10 minutes under the whey; the upper end is ours":
    "publicado: al menos 10 minutos bajo el suero; el extremo alto es nuestro",
  "mass out of the press": "masa al salir de la prensa",
  "diffusion model, 20 % brine: 1.8 % salt in 18 h at 1.5e-10 m2/s, in 12 h at 2.3e-10; 2.0 % in 23 h; a starting estimate, a salt test decides":
    "modelo de difusión, salmuera al 20 %: 1,8 % de sal en 18 h a 1,5e-10 m²/s, en 12 h a 2,3e-10; 2,0 % en 23 h; es un punto de partida, decide un análisis de sal",
  "with the time to dry": "con el tiempo de secado",
  "first two weeks; then twice a week":
    "las dos primeras semanas; luego, dos veces por semana",
  "volumes of water to one of rennet; another page gives about 20":
    "volúmenes de agua por uno de cuajo; otra página da unos 20",
  "0.02 % of the milk's weight, counted without water":
    "0,02 % del peso de la leche, contado sin agua",
  "band of 0.1 each way ours": "banda de 0,1 a cada lado, nuestra",
  "printed as 5 °F above the required temperature":
    "impreso como 5 °F por encima de la temperatura exigida",
  "the range is published; the value is a start of ours, to be set from your own wheels":
    "el intervalo está publicado; el valor es un punto de partida nuestro, por ajustar con sus piezas",
  "kg out of the press per kg milk; two yield formulas give 0.1037 and 0.1083 for 3.4 % fat, 2.6 % casein, 43 % moisture":
    "kg al salir de la prensa por kg de leche; dos fórmulas de rendimiento dan 0,1037 y 0,1083 con 3,4 % de grasa, 2,6 % de caseína, 43 % de humedad",
  "at least 2.8 K (5 °F) above the required 63 °C; the aim is as far above 63.9 °C":
    "al menos 2,8 K (5 °F) por encima de los 63 °C exigidos; la meta está igual de lejos por encima de 63,9 °C",
  "heat balance from 34 °C to 37 °C for the water still to be added":
    "balance de calor de 34 °C a 37 °C para el agua que falta por añadir",
  "a rule of the trade, not science; change it to suit your curd":
    "una regla del oficio, no ciencia; cámbiela según su cuajada",
  "the published whole pressing is 5 to 8 h (GOUDA); a night is usual where nobody is there to unmould":
    "el prensado entero publicado es de 5 a 8 h (GOUDA); una noche es usual donde nadie está para desmoldar",
};
