// What a figure rests on, as the core says it, keyed by the English; titles stay.

export const PROSE = {
  "0.1 mol/L silver nitrate": "nitrate d’argent à 0,1 mol/L",
  "1 NYCRR 2.48 (item 16p(D)) and 3.27": "1 NYCRR 2.48 (point 16p(D)) et 3.27",
  "21 CFR 1240.61, footnote 1": "21 CFR 1240.61, note de bas de page 1",
  "21 CFR 1240.61, footnote 1; 131.3(b)":
    "21 CFR 1240.61, note de bas de page 1\u00a0; 131.3(b)",
  "21 CFR 133.102, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.102, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "21 CFR 133.104, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.104, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "21 CFR 133.106, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.106, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "21 CFR 133.133, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.133, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "21 CFR 133.158, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.158, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "21 CFR 133.162, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.162, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "21 CFR 133.181, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.181, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "21 CFR 133.184, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.184, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "21 CFR 133.188, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415":
    "21 CFR 133.188, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "21 CFR 133.113, .138, .195: phenol equivalent of 0.25 g":
    "21 CFR 133.113, .138, .195\u00a0: équivalent phénol de 0,25 g",
  "21 CFR 133.138 and others of part 133": "21 CFR 133.138 et autres de la partie 133",
  "21 CFR 133.138(b)(3), 133.182: of the milk, as anhydrous":
    "21 CFR 133.138(b)(3), 133.182\u00a0: part du lait, en anhydre",
  "A. Hill, University of Guelph, page Gouda":
    "A. Hill, University of Guelph, page «\u00a0Gouda\u00a0»",
  "A. Hill, University of Guelph, page Gouda: 1 to 2 mL in winter":
    "A. Hill, University of Guelph, page «\u00a0Gouda\u00a0»\u00a0: 1 à 2 mL en hiver",
  "A. Hill, University of Guelph, page Gouda: 15 to 20 min":
    "A. Hill, University of Guelph, page «\u00a0Gouda\u00a0»\u00a0: 15 à 20 min",
  "A. Hill, University of Guelph, page Gouda: a third of the whey":
    "A. Hill, University of Guelph, page «\u00a0Gouda\u00a0»\u00a0: un tiers du lactosérum",
  "A. Hill, University of Guelph, page Gouda; another page gives about 20":
    "A. Hill, University of Guelph, page «\u00a0Gouda\u00a0»\u00a0; une autre page donne environ 20",
  "Bradshaw et al., J Food Prot 48:743 (1985), whole milk":
    "Bradshaw et al., J Food Prot 48:743 (1985), lait entier",
  "CXS 266-1966, 2: normally 3 weeks at least":
    "CXS 266-1966, 2\u00a0: normalement 3 semaines au moins",
  "CXS 283-1978, current text": "CXS 283-1978, texte en vigueur",
  "California F&A Code 34061 to 34065": "California F&A Code 34061 à 34065",
  "Can J Microbiol 23:1034 (1977), milk, D60 0.87 min":
    "Can J Microbiol 23:1034 (1977), lait, D60 0,87 min",
  "Codex General Standard for Cheese, A-6-1978":
    "Codex, norme générale pour le fromage, A-6-1978",
  "EU protected geographical indication": "indication géographique protégée de l’UE",
  "Floury et al. 2010, Dairy Sci Technol 90:477, table II; start of ours":
    "Floury et al. 2010, Dairy Sci Technol 90:477, tableau II\u00a0; point de départ de notre choix",
  "Guinee and Fox 1983, J Dairy Res: 0.5 to 2.42":
    "Guinee et Fox 1983, J Dairy Res\u00a0: 0,5 à 2,42",
  "Handbook of Food and Beverage Fermentation Technology (title from memory)":
    "Handbook of Food and Beverage Fermentation Technology (titre de mémoire)",
  "Handbook of Food and Beverage Fermentation: 10 to 15 °C":
    "Handbook of Food and Beverage Fermentation\u00a0: 10 à 15 °C",
  "Hill and Ferrer, Cheese Making Technology e-Book, chapter 15, Gouda":
    "Hill et Ferrer, Cheese Making Technology e-Book, chapitre 15, Gouda",
  "Hill and Ferrer, Cheese Making Technology e-Book, chapter 15, table of process control, Gouda":
    "Hill et Ferrer, Cheese Making Technology e-Book, chapitre 15, tableau de suivi du procédé, Gouda",
  "IAFP annual meeting abstract (2017), whey, D60 1.32 min":
    "IAFP, résumé du congrès annuel (2017), lactosérum, D60 1,32 min",
  "J Food Prot 69(9):2161 (2006), raw-milk uncooked semi-hard cheese, abstract":
    "J Food Prot 69(9):2161 (2006), fromage au lait cru à pâte pressée non cuite, résumé",
  "J Food Prot 69(9):2161 (2006), raw-milk uncooked semi-hard cheese, abstract, Saint-Nectaire type":
    "J Food Prot 69(9):2161 (2006), fromage au lait cru à pâte pressée non cuite, résumé, type Saint-Nectaire",
  "J Food Prot 69(9):2161 (2006), raw-milk uncooked semi-hard cheese, abstract, Salers type":
    "J Food Prot 69(9):2161 (2006), fromage au lait cru à pâte pressée non cuite, résumé, type Salers",
  "MCL 288.697 (Michigan), which prints vat and continuous pairs as two tables":
    "MCL 288.697 (Michigan), qui imprime les couples de la cuve et du flux continu en deux tableaux",
  "Magnus and Sprung constants, from memory; within 0.35 % of steam tables":
    "constantes de Magnus et de Sprung, de mémoire\u00a0; à moins de 0,35\u00a0% des tables de vapeur",
  "Md. COMAR 10.15.09.08, citing Pasteurized Milk Ordinance 19r":
    "Md. COMAR 10.15.09.08, qui cite Pasteurized Milk Ordinance 19r",
  "Medvedova et al., Fermentation 5(1):2 (2018/19)":
    "Medvedova et al., Fermentation 5(1):2 (2018/19)",
  "Medvedova et al., Fermentation 5(1):2, mixed starter at 32 °C":
    "Medvedova et al., Fermentation 5(1):2, ferment mixte à 32 °C",
  "Medvedova et al., mixed starter": "Medvedova et al., ferment mixte",
  "NIST/SEMATECH e-Handbook, 6.3.2.4: 0.2 to 0.3":
    "NIST/SEMATECH e-Handbook, 6.3.2.4\u00a0: 0,2 à 0,3",
  "Pasteurized Milk Ordinance table": "Pasteurized Milk Ordinance, tableau",
  "Pasteurized Milk Ordinance, appendix N": "Pasteurized Milk Ordinance, annexe N",
  "Pasteurized Milk Ordinance, section 6 and appendix N":
    "Pasteurized Milk Ordinance, section 6 et annexe N",
  "Pasteurized Milk Ordinance, table quoted in a second source":
    "Pasteurized Milk Ordinance, tableau cité par une autre source",
  "Pasteurized Milk Ordinance; older texts say 1 000 000":
    "Pasteurized Milk Ordinance\u00a0; des textes plus anciens disent 1 000 000",
  "Reg. (EC) 2073/2005 as amended by 1441/2007":
    "Règlement (CE) 2073/2005 modifié par 1441/2007",
  "Regulation (EC) 853/2004, Annex I, 4.1: raw milk was never above this":
    "Règlement (CE) 853/2004, annexe I, 4.1\u00a0: le lait cru n’a jamais dépassé cela",
  "Regulation (EC) 853/2004, Annex III, Section IX":
    "Règlement (CE) 853/2004, annexe III, section IX",
  "Regulation (EC) 853/2004, Annex III, Section IX, Chapter II, quoted in French on a page of French food law":
    "Règlement (CE) 853/2004, annexe III, section IX, chapitre II, cité en français sur une page de droit alimentaire français",
  "Regulation (EC) 853/2004, Annex III, Section IX, Italian text":
    "Règlement (CE) 853/2004, annexe III, section IX, texte italien",
  "Soxhlet's own 40 min": "les 40 min de Soxhlet lui-même",
  "Soxhlet; one page says 45 min": "Soxhlet\u00a0; une page dit 45 min",
  "Zehren and Zehren, J Dairy Sci, study of 378 vats, abstract":
    "Zehren et Zehren, J Dairy Sci, étude de 378 cuves, résumé",
  "a jacket of steady temperature": "une double enveloppe à température constante",
  "a look every two minutes": "un coup d’œil toutes les deux minutes",
  "a meter set that day": "un appareil réglé le jour même",
  "a rule of the trade for Gouda types": "une règle du métier pour les types Gouda",
  "a stirred vat and a dial or digital thermometer":
    "une cuve brassée et un thermomètre à cadran ou numérique",
  "a supplier's page on rennet and calcium chloride for Gouda":
    "page d’un fournisseur sur la présure et le chlorure de calcium pour Gouda",
  "a supplier's page on rennet and calcium chloride for Gouda; 35 to 55 usual":
    "page d’un fournisseur sur la présure et le chlorure de calcium pour Gouda\u00a0; usuel\u00a0: 35 à 55",
  "a vat, all of it held at once": "une cuve, tout le lait chambré ensemble",
  "a washed-curd store": "une cave de fromages à caillé lavé",
  "a working brine": "une saumure en service",
  "as the bottle states it": "comme l’indique le flacon",
  "before the brine": "avant la saumure",
  "between the published 5.8 and 9.46 K": "entre les 5,8 et 9,46 K publiés",
  "choose the animal": "choisissez l’animal",
  "choose where the cheese is sold": "choisissez où le fromage est vendu",
  "choose where you are licensed": "choisissez où vous êtes agréé",
  "coated wheel, some weeks": "meule enrobée, quelques semaines",
  "common practice: 0.1 N alkali": "pratique courante\u00a0: soude à 0,1 N",
  "common practice: 10 mL sample": "pratique courante\u00a0: prise de 10 mL",
  "constants of the general yield formula, from memory; set them from own makes":
    "constantes de la formule générale du rendement, de mémoire\u00a0; réglez-les d’après vos fabrications",
  "convention of 8.6 lb in a US gallon": "convention de 8,6 lb par gallon américain",
  "cows' milk, 0.75 to 0.82": "lait de vache, 0,75 à 0,82",
  "cylinder straight on the plate": "vérin directement sur le plateau",
  "density table of fluid dairy products, D. Goff, University of Guelph":
    "table de densité des produits laitiers liquides, D. Goff, University of Guelph",
  "density table of fluid dairy products, D. Goff, University of Guelph, milk of 4.0 % fat":
    "table de densité des produits laitiers liquides, D. Goff, University of Guelph, lait à 4,0\u00a0% de matière grasse",
  "encyclopaedia article on brine salting":
    "article d’encyclopédie sur le salage en saumure",
  "encyclopaedia article on brine salting, after a dairy handbook":
    "article d’encyclopédie sur le salage en saumure, d’après un manuel laitier",
  "end of moulding; agree it with the inspector":
    "fin du moulage\u00a0; à convenir avec l’inspecteur",
  "farmhouse programme, trade knowledge; confirm it with your own cheese":
    "programme de fromagerie fermière, savoir du métier\u00a0; à confirmer sur votre fromage",
  "farmstead cheese textbook, quoted in a forum":
    "manuel de fromage fermier, cité sur un forum",
  "filled and emptied outside the hold": "remplie et vidée hors du chambrage",
  "five published schedules against this curve: 0.044 to 0.076":
    "cinq calendriers publiés face à cette courbe\u00a0: 0,044 à 0,076",
  "follower not counted": "sans compter le foncet",
  "hotter water cooks the skin of the curd":
    "une eau plus chaude cuit la peau du caillé",
  "light pressing under whey": "pressage léger sous lactosérum",
  "longer blocks do not fill a round mould":
    "des blocs plus longs ne remplissent pas un moule rond",
  "makes differ by a quarter of an hour":
    "les fabrications diffèrent d’un quart d’heure",
  "makes differ by a seventh in pace":
    "les fabrications diffèrent d’un septième en allure",
  "makes of one recipe end this far apart":
    "les fabrications d’une même recette finissent à cet écart",
  "meter and shape of the curve together":
    "l’appareil et la forme de la courbe ensemble",
  "milk for cheese": "lait de fromagerie",
  "milk that was planned": "le lait prévu",
  "no blank run": "sans essai à blanc",
  "no friction counted": "sans compter le frottement",
  "nothing sweet is added to cheese milk":
    "rien de sucré n’est ajouté au lait de fromagerie",
  "one cylinder": "un vérin",
  "one size only": "une seule taille",
  "one wheel, or wheels stacked in series":
    "une meule, ou des meules empilées en série",
  "own settings say better; 0 to 3 min":
    "vos propres caillages le disent mieux\u00a0; 0 à 3 min",
  "plate and follower not counted": "sans compter le plateau ni le foncet",
  "ripe washed-curd wheel": "meule affinée à caillé lavé",
  "salt in, twice its mass of water out":
    "le sel entre, le double de sa masse d’eau sort",
  "sea level": "niveau de la mer",
  "set at 32 °C": "emprésuré à 32 °C",
  "skim or cream is stirred in": "on mélange du lait écrémé ou de la crème",
  "summary of the specification": "résumé du cahier des charges",
  "summary of the specification, 12 days after making":
    "résumé du cahier des charges, 12 jours après la fabrication",
  "the recipe": "la recette",
  "the recipe's moulds": "les moules de la recette",
  "the recipe's targets": "les cibles de la recette",
  "the rule that the recipe names": "la règle que nomme la recette",
  "this tool's own setting": "réglage propre à cet outil",
  "this tool's own setting, to be agreed with the inspector":
    "réglage propre à cet outil, à convenir avec l’inspecteur",
  "trade knowledge": "savoir du métier",
  "trade knowledge of Lactococcus": "savoir du métier sur Lactococcus",
  "trade knowledge, 1050 to 1100": "savoir du métier, 1050 à 1100",
  "trade knowledge, 2 to 3": "savoir du métier, 2 à 3",
  "trade knowledge: new brine": "savoir du métier\u00a0: saumure neuve",
  "two in a hundred": "deux pour cent",
  "two published Gouda sources": "deux sources publiées sur le Gouda",
  "two thermometers compared": "deux thermomètres comparés",
  "usual for a small creamery": "usuel dans une petite fromagerie",
  "volume times usual density": "volume par la densité usuelle",
  "washed-curd wheel out of the press": "meule à caillé lavé au sortir de la presse",
  "water phase of milk, 94 kg of 100": "phase aqueuse du lait, 94 kg sur 100",
  "whey and curd of the facts": "lactosérum et caillé des données",
  "whey is about 89 kg of 100 kg milk":
    "le lactosérum fait environ 89 kg pour 100 kg de lait",

  // Sources of the recipes
  'A. Hill, University of Guelph Food Science, page "Gouda"':
    "A. Hill, University of Guelph Food Science, page «\u00a0Gouda\u00a0»",
  "Hill and Ferrer, Cheese Making Technology e-Book, chapter 15, table of process control":
    "Hill et Ferrer, Cheese Making Technology e-Book, chapitre 15, tableau de suivi du procédé",
  'University of Guelph Food Science, page "Rennet Activity"':
    "University of Guelph Food Science, page «\u00a0Rennet Activity\u00a0»",
  'University of Guelph Food Science, page "Yield Prediction"':
    "University of Guelph Food Science, page «\u00a0Yield Prediction\u00a0»",
  'Encyclopaedia article "Brine salting", after a dairy processing handbook':
    "Article d’encyclopédie «\u00a0Brine salting\u00a0», d’après un manuel de laiterie",
  "Floury et al. 2010, Dairy Science and Technology 90:477-508, table II: salt diffusion in cheese":
    "Floury et al. 2010, Dairy Science and Technology 90:477-508, tableau II\u00a0: diffusion du sel dans le fromage",
  "Abstract of a dairy text on Gouda stores":
    "Résumé d’un texte laitier sur les caves à Gouda",
  "A supplier's page on rennet and calcium chloride for Gouda":
    "Page d’un fournisseur sur la présure et le chlorure de calcium pour Gouda",
  "United States, 21 CFR 1240.61(b), pasteurised milk":
    "États-Unis, 21 CFR 1240.61(b), lait pasteurisé",
  "United States, 21 CFR 133.138(b)(3), calcium chloride in cheese milk":
    "États-Unis, 21 CFR 133.138(b)(3), chlorure de calcium dans le lait de fromagerie",
  "California, 3 CCR 584(b) and (c), air space and end-of-hold mark in vat pasteurising":
    "Californie, 3 CCR 584(b) et (c), espace d’air et marque de fin de chambrage en pasteurisation en cuve",
  "Grade A milk cooling, item 19r, as adopted in Maryland COMAR 10.15.09.08":
    "Refroidissement du lait Grade A, point 19r, tel que repris par Maryland COMAR 10.15.09.08",
  "New York, 1 NYCRR 2.49, raw milk held in the plant":
    "New York, 1 NYCRR 2.49, lait cru gardé à l’atelier",
  "United Kingdom, SI 1995/1086 schedule 5, time from milking to making (superseded)":
    "Royaume-Uni, SI 1995/1086 schedule 5, temps de la traite à la fabrication (remplacé)",
  "Codex standard CXS 266 for Gouda, ripening":
    "Norme Codex CXS 266 pour le Gouda, affinage",
  "common practice, no source": "pratique courante, sans source",
  "from memory, to be confirmed": "de mémoire, à confirmer",
  "chosen or worked out for this recipe": "choisi ou calculé pour cette recette",
  "mirror copy": "copie miroir",
  "abstract and table": "résumé et tableau",
  "web page": "page web",
  "Code of Federal Regulations, editions of 2006 and 2010":
    "Code of Federal Regulations, éditions de 2006 et 2010",
  "state regulation": "règlement de l’État",
  "statutory instrument": "statutory instrument (décret britannique)",
  "Codex Alimentarius, French text": "Codex Alimentarius, texte français",
  "the trade": "le métier",
  "general dairy texts": "textes laitiers généraux",
  "this recipe": "cette recette",

  // Notes of the recipes' figures
  "the limit is 7 °C (45 °F) until processed; the aim of 4 °C is common practice":
    "la limite est 7 °C (45 °F) jusqu’au traitement\u00a0; viser 4 °C est pratique courante",
  "147 °F aim; low end: figures.hold_floor_c":
    "cible de 147 °F\u00a0; bas de bande\u00a0: le chambrage minimum de la recette",
  "printed as 145 °F (63 °C)": "imprimé 145 °F (63 °C)",
  "published as 15 to 20 minutes": "publié\u00a0: 15 à 20 minutes",
  "published as 15 more minutes; the band is ours":
    "publié\u00a0: 15 minutes de plus\u00a0; la bande est la nôtre",
  "published as 12 to 13 °C; Codex for Gouda (CODEX266) says 10 to 17 °C":
    "publié\u00a0: 12 à 13 °C\u00a0; le Codex pour le Gouda (CODEX266) dit 10 à 17 °C",
  "published as 30 to 32 °C": "publié\u00a0: 30 à 32 °C",
  "published as 1 to 3 days for 2 to 12 kg; the middle is shown; common practice about 3 days for a 10 kg wheel; a starting estimate, a salt test decides":
    "publié\u00a0: 1 à 3 jours pour 2 à 12 kg\u00a0; le milieu est montré\u00a0; pratique courante, environ 3 jours pour une meule de 10 kg\u00a0; estimation de départ, une analyse de sel décide",
  "a third of the whey; 100 kg of milk gives about 89 kg of whey":
    "un tiers du lactosérum\u00a0; 100 kg de lait donnent environ 89 kg de lactosérum",
  "the band is common practice; the legal limit is figures.calcium_chloride_limit; for a liquid, use the strength on the label":
    "la bande est pratique courante\u00a0; la limite légale est dans les chiffres de la recette\u00a0; pour un liquide, prenez la force de l’étiquette",
  "published as 10 to 15 °C; the middle is shown":
    "publié\u00a0: 10 à 15 °C\u00a0; le milieu est montré",
  "heat balance from 32 °C after the first whey, with 1 K lost; with the second wash the published 20 to 25 % of the milk":
    "bilan de chaleur depuis 32 °C après le premier lactosérum, avec 1 K perdu\u00a0; avec le second lavage, les 20 à 25\u00a0% du lait publiés",
  "published as 5.15 to 5.25": "publié\u00a0: 5,15 à 5,25",
  "published 30 to 32 °C; upper end 1 K wider here":
    "publié\u00a0: 30 à 32 °C\u00a0; ici le haut est plus large de 1 K",
  "published as 36 to 38 °C": "publié\u00a0: 36 à 38 °C",
  "the limit is 7 °C (45 °F); the aim of 4 °C is common practice":
    "la limite est 7 °C (45 °F)\u00a0; viser 4 °C est pratique courante",
  "printed for Gouda: starter, rennet, cut, first whey off, out of the mould, least after a week; times from adding the starter":
    "imprimé pour le Gouda\u00a0: ferment, présure, décaillage, premier lactosérum, démoulage, minimum après une semaine\u00a0; temps depuis l’ajout du ferment",
  "published as 1 to 2 mL in 1,000 kg, in winter; strength varies":
    "publié\u00a0: 1 à 2 mL pour 1000 kg, en hiver\u00a0; la force varie",
  "30 minutes without a break; the upper end is ours":
    "30 minutes sans coupure\u00a0; le haut de bande est le nôtre",
  "published as 20 %; BRINE gives 20 to 22 %; the low end is ours":
    "publié\u00a0: 20\u00a0%\u00a0; BRINE donne 20 à 22\u00a0%\u00a0; le bas de bande est le nôtre",
  "on a straight line between 6.35 at 3 h and 5.40 at 8 h, about 6 h 20 min from the starter; a wide band because the curve is not straight":
    "en ligne droite entre 6,35 à 3 h et 5,40 à 8 h, environ 6 h 20 min depuis le ferment\u00a0; bande large car la courbe n’est pas droite",
  "rennet at 60 and cut at 90 minutes; another page (RENNET) gives 30 to 40 minutes":
    "présure à 60 et décaillage à 90 minutes\u00a0; une autre page (RENNET) donne 30 à 40 minutes",
  "with the first wash 22 % of the milk; published 20 to 25 %":
    "avec le premier lavage, 22\u00a0% du lait\u00a0; publié\u00a0: 20 à 25\u00a0%",
  "published as 85 to 90 %": "publié\u00a0: 85 à 90\u00a0%",
  "published as 6.40 to 6.45; the band of 0.1 round its middle is ours; EBOOK gives 6.35 later, at 180 minutes":
    "publié\u00a0: 6,40 à 6,45\u00a0; la bande de 0,1 autour du milieu est la nôtre\u00a0; EBOOK donne 6,35 plus tard, à 180 minutes",
  "published as 20 to 30 minutes": "publié\u00a0: 20 à 30 minutes",
  "two weeks": "deux semaines",
  "twice a week": "deux fois par semaine",
  "published protein to fat 1.07; with 3.3 % protein that is 3.08 % fat; whole milk of a farm herd may be richer":
    "rapport publié protéines sur gras\u00a0: 1,07\u00a0; avec 3,3\u00a0% de protéines cela fait 3,08\u00a0% de gras\u00a0; le lait entier d’un troupeau peut être plus riche",
  "printed as 14 psi; the page does not say whether at the gauge or on the cheese, so it is no target":
    "imprimé 14 psi\u00a0; la page ne dit pas si c’est au manomètre ou sur le fromage, ce n’est donc pas une cible",
  "published as 28 days; the low end is 3 weeks at 10 to 17 °C (CODEX266), which wheels under 2.5 kg need not reach; the upper end is ours":
    "publié\u00a0: 28 jours\u00a0; le bas de bande est 3 semaines à 10 à 17 °C (CODEX266), que les meules de moins de 2,5 kg n’ont pas à atteindre\u00a0; le haut est le nôtre",
  "strength differs: use the dose on the pack":
    "la force varie\u00a0: suivez la dose du sachet",
  "published as 190 mL in 1,000 kg; another page gives about 200; scale by the strength on the bottle":
    "publié\u00a0: 190 mL pour 1000 kg\u00a0; une autre page donne environ 200\u00a0; ajustez selon la force du flacon",
  "half way from set to the second wash":
    "à mi-chemin entre le caillage et le second lavage",
  "the limit is 48 h at 4 °C or colder; the aim of 24 h is common practice":
    "la limite est 48 h à 4 °C ou moins\u00a0; viser 24 h est pratique courante",
  "share of the curd": "part du caillé",
  "against the volume the make was opened with; doses follow what was measured":
    "par rapport au volume à l’ouverture de la fabrication\u00a0; les doses suivent ce qui est mesuré",
  "the table of process control (EBOOK) allows 60 minutes":
    "le tableau de suivi du procédé (EBOOK) accorde 60 minutes",
  "band ours": "bande de notre choix",
  "published as 5.3 to 5.5 after the press; EBOOK gives 5.40 at 8 h":
    "publié\u00a0: 5,3 à 5,5 après la presse\u00a0; EBOOK donne 5,40 à 8 h",
  "published as at least 10 minutes under the whey; the upper end is ours":
    "publié\u00a0: au moins 10 minutes sous le lactosérum\u00a0; le haut de bande est le nôtre",
  "mass out of the press": "poids sortie de presse",
  "diffusion model, 20 % brine: 1.8 % salt in 18 h at 1.5e-10 m2/s, in 12 h at 2.3e-10; 2.0 % in 23 h; a starting estimate, a salt test decides":
    "modèle de diffusion, saumure à 20\u00a0%\u00a0: 1,8\u00a0% de sel en 18 h à 1,5e-10 m²/s, en 12 h à 2,3e-10\u00a0; 2,0\u00a0% en 23 h\u00a0; estimation de départ, une analyse de sel décide",
  "with the time to dry": "avec le temps de séchage",
  "first two weeks; then twice a week":
    "les deux premières semaines\u00a0; ensuite deux fois par semaine",
  "volumes of water to one of rennet; another page gives about 20":
    "volumes d’eau pour un de présure\u00a0; une autre page donne environ 20",
  "0.02 % of the milk's weight, counted without water":
    "0,02\u00a0% du poids du lait, compté sans eau",
  "band of 0.1 each way ours": "bande de 0,1 de chaque côté, de notre choix",
  "printed as 5 °F above the required temperature":
    "imprimé 5 °F au-dessus de la température exigée",
  "the range is published; the value is a start of ours, to be set from your own wheels":
    "l’intervalle est publié\u00a0; la valeur est un départ de notre choix, à régler d’après vos meules",
  "kg out of the press per kg milk; two yield formulas give 0.1037 and 0.1083 for 3.4 % fat, 2.6 % casein, 43 % moisture":
    "kg sortie de presse par kg de lait\u00a0; deux formules de rendement donnent 0,1037 et 0,1083 pour 3,4\u00a0% de gras, 2,6\u00a0% de caséine, 43\u00a0% d’humidité",
  "at least 2.8 K (5 °F) above the required 63 °C; the aim is as far above 63.9 °C":
    "au moins 2,8 K (5 °F) au-dessus des 63 °C exigés\u00a0; la cible est autant au-dessus de 63,9 °C",
  "heat balance from 34 °C to 37 °C for the water still to be added":
    "bilan de chaleur de 34 °C à 37 °C pour l’eau encore à ajouter",
  "a rule of the trade, not science; change it to suit your curd":
    "une règle du métier, pas de la science\u00a0; adaptez-la à votre caillé",
  "the published whole pressing is 5 to 8 h (GOUDA); a night is usual where nobody is there to unmould":
    "le pressage entier publié est de 5 à 8 h (GOUDA)\u00a0; une nuit est usuelle quand personne n’est là pour démouler",
};
