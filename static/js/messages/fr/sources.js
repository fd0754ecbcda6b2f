// What the figures rest on, in French; titles stay.

export const SOURCES = {
  "source.abstract_table": "résumé et tableau",
  "source.against_opening_volume":
    "par rapport au volume à l’ouverture de la fabrication\u00a0; les doses suivent ce qui est mesuré",
  "source.acidity_of_first_whey":
    "chiffre rond sans source pour le premier petit-lait de caillé lavé, avec sa plage\u00a0; il ne vient d’aucun pH, et vos propres fabrications disent mieux",
  "source.acidity_of_fresh_milk":
    "chiffre rond sans source pour du lait frais, 14 à 18 °D\u00a0; il ne vient d’aucun pH, et votre propre lait dit mieux",
  "source.air_space_above_required":
    "au moins 3 °C (5 °F) au-dessus de ce qui est exigé du lait\u00a0: 66 °C, ou 150 °F\u00a0; la cible est autant au-dessus de 63,9 °C",
  "source.as_the_bottle_states": "comme l’indique le flacon",
  "source.band_each_way_ours": "plage de 0,1 de chaque côté, sans source",
  "source.band_ours": "plage sans source",
  "source.before_brine": "avant la saumure",
  "source.between_published_z": "entre les 5,8 et 9,46 K publiés",
  "source.both_washes_of_milk":
    "avec le premier lavage, 22\u00a0% du lait\u00a0; publié\u00a0: 20 à 25\u00a0%",
  "source.bradshaw_1985_whole_milk":
    "Bradshaw et al., J Food Prot 48:743 (1985), lait entier",
  "source.calcium_band_and_limit":
    "chiffre rond avec sa plage, usage courant\u00a0; la limite légale est aussi dans la recette\u00a0; pour un liquide, prenez la concentration de l’étiquette",
  "source.california_ccr_584":
    "Californie, 3 CCR 584(b) et (c), air sous couvercle et marque de fin de maintien en pasteurisation en cuve",
  "source.california_code_34061": "California F&A Code 34061 à 34065",
  "source.can_j_microbiol_1977_milk":
    "Can J Microbiol 23:1034 (1977), lait, D60 0,87 min",
  "source.cfr_1240_61_footnote": "21 CFR 1240.61, note de bas de page 1",
  "source.cfr_1240_61_footnote_and_131_3":
    "21 CFR 1240.61, note de bas de page 1\u00a0; 131.3(b)",
  "source.cfr_133_102_dairy_textbook":
    "21 CFR 133.102, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "source.cfr_133_104_dairy_textbook":
    "21 CFR 133.104, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "source.cfr_133_106_dairy_textbook":
    "21 CFR 133.106, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "source.cfr_133_133_dairy_textbook":
    "21 CFR 133.133, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "source.cfr_133_138_and_others": "21 CFR 133.138 et autres de la partie 133",
  "source.cfr_133_158_dairy_textbook":
    "21 CFR 133.158, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "source.cfr_133_162_dairy_textbook":
    "21 CFR 133.162, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "source.cfr_133_181_dairy_textbook":
    "21 CFR 133.181, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "source.cfr_133_184_dairy_textbook":
    "21 CFR 133.184, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "source.cfr_133_188_dairy_textbook":
    "21 CFR 133.188, manuel laitier, tableau 10.1, qui cite 21 CFR 133 (2003), vérifié avec 3 CCR 415",
  "source.cfr_133_calcium_anhydrous":
    "21 CFR 133.138(b)(3), 133.182\u00a0: part du lait, en anhydre",
  "source.cfr_133_phenol_equivalent":
    "21 CFR 133.113, .138, .195\u00a0: équivalent phénol de 0,25 g",
  "source.cfr_editions_2006_2010":
    "Code of Federal Regulations, éditions de 2006 et 2010",
  "source.choose_animal": "choisissez l’animal",
  "source.choose_where_licensed": "choisissez où vous êtes agréé",
  "source.choose_where_sold": "choisissez où le fromage est vendu",
  "source.chosen_for_recipe": "choisi ou calculé pour cette recette",
  "source.coated_wheel_some_weeks": "meule enrobée, quelques semaines",
  "source.codex_cheese_1978": "Codex, norme générale pour le fromage, A-6-1978",
  "source.codex_cxs_266": "Norme Codex CXS 266 pour le Gouda, affinage",
  "source.codex_french_text": "Codex Alimentarius, texte français",
  "source.cold_limit":
    "la limite est 7 °C (45 °F)\u00a0; viser 4 °C est pratique courante",
  "source.cold_limit_until_processed":
    "la limite est 7 °C (45 °F) jusqu’au traitement\u00a0; viser 4 °C est pratique courante",
  "source.comar_citing_pmo_19r":
    "Pasteurized Milk Ordinance, point 19r (Grade A), tel qu’imprimé dans COMAR 10.15.09.08\u00a0; la section du Maryland sur le fromage fermier est COMAR 10.15.08.08",
  "source.common_practice": "pratique courante, sans source",
  "source.convention_pounds_in_gallon": "convention de 8,6 lb par gallon américain",
  "source.cows_milk_casein_number": "lait de vache, 0,75 à 0,82",
  "source.cxs_266_three_weeks":
    "CXS 266-1966, 2\u00a0: normalement 3 semaines au moins",
  "source.cxs_283_current": "CXS 283-1978, texte en vigueur",
  "source.cylinder_straight_on_plate": "vérin directement sur le plateau",
  "source.brine_time_of_salt_wanted":
    "modèle de diffusion à 1,5e-10 m2/s en saumure à 20\u00a0% pour le sel voulu, 2,0\u00a0%\u00a0; bornes\u00a0: 1,6 et 2,2\u00a0%. La page Gouda donne 20 h pour 0,5 kg et 3 jours pour un Edam de 1,5 à 3 kg, sans dire le sel\u00a0; une estimation de départ, une analyse de sel décide",
  "source.ec_2073_2005_amended": "Règlement (CE) 2073/2005 modifié par 1441/2007",
  "source.ec_853_2004_annex_iii": "Règlement (CE) 853/2004, annexe III, section IX",
  "source.ec_853_2004_italian_text":
    "Règlement (CE) 853/2004, annexe III, section IX, texte italien",
  "source.ec_853_2004_quoted_in_french":
    "Règlement (CE) 853/2004, annexe III, section IX, chapitre II, cité en français sur une page de droit alimentaire français",
  "source.ec_853_2004_raw_milk":
    "Règlement (CE) 853/2004, annexe I, 4.1\u00a0: le lait cru n’a jamais dépassé cela",
  "source.end_of_moulding_to_agree":
    "fin du moulage\u00a0; à convenir avec l’inspecteur",
  "source.eu_protected_indication": "indication géographique protégée de l’UE",
  "source.press_programme_of_our_own":
    "chiffres ronds sans source, sur le fromage\u00a0: 5 à 10, 10 à 20, puis 20 à 40 kPa\u00a0; deux récits de presses de ferme s’y tiennent",
  "source.brine_limits_of_our_own":
    "chiffres ronds pour une saumure, usage courant\u00a0: aucune loi ni aucun texte seul ne les dit",
  "source.fermentation_handbook_brine_temp":
    "Handbook of Food and Beverage Fermentation\u00a0: 10 à 15 °C",
  "source.brine_times_quoted":
    "tableau des temps de saumure par type de fromage d’un manuel laitier, tel qu’un autre texte le donne",
  "source.filled_emptied_outside_hold": "remplie et vidée hors du maintien",
  "source.first_wash_heat_balance":
    "bilan de chaleur depuis 32 °C après le premier petit-lait, avec 1 K perdu\u00a0; avec le second lavage, les 20 à 25\u00a0% du lait publiés",
  "source.five_schedules_against_curve":
    "cinq calendriers publiés face à cette courbe\u00a0: 0,044 à 0,076",
  "source.floury_2010":
    "Floury et al. 2010, Dairy Science and Technology 90:477-508, résumé et tableau II\u00a0: diffusion du sel dans le fromage",
  "source.floury_2010_start_of_ours":
    "Floury et al. 2010, Dairy Sci Technol 90:477\u00a0: 2,3e-10 pour un type Gouda\u00a0; le chiffre de départ est sans source",
  "source.follower_not_counted": "sans compter le foncet",
  "source.from_memory": "à confirmer",
  "source.general_dairy_texts": "textes laitiers généraux",
  "source.general_yield_from_memory":
    "constantes de la formule générale du rendement, non confirmées\u00a0; réglez-les d’après vos fabrications",
  "source.grade_a_cooling_19r":
    "Pasteurized Milk Ordinance, point 19r, refroidissement du lait Grade A, tel qu’imprimé dans COMAR 10.15.09.08\u00a0; le fromage fermier est dans COMAR 10.15.08.08",
  "source.guelph_density_table":
    "table de densité des produits laitiers liquides, D. Goff, University of Guelph",
  "source.guelph_density_table_whole_milk":
    "table de densité des produits laitiers liquides, D. Goff, University of Guelph, lait à 4,0\u00a0% de matière grasse",
  "source.guelph_food_science_gouda":
    "A. Hill, University of Guelph Food Science, page «\u00a0Gouda\u00a0»",
  "source.guelph_gouda": "A. Hill, University of Guelph, page «\u00a0Gouda\u00a0»",
  "source.guelph_gouda_colour_in_winter":
    "A. Hill, University of Guelph, page «\u00a0Gouda\u00a0»\u00a0: 1 à 2 mL en hiver",
  "source.guelph_gouda_dilution":
    "A. Hill, University of Guelph, page «\u00a0Gouda\u00a0»\u00a0; une autre page donne environ 20",
  "source.guelph_gouda_scald_time":
    "A. Hill, University of Guelph, page «\u00a0Gouda\u00a0»\u00a0: 15 à 20 min",
  "source.guelph_gouda_third_of_whey":
    "A. Hill, University of Guelph, page «\u00a0Gouda\u00a0»\u00a0: un tiers du petit-lait",
  "source.guelph_rennet_activity":
    "University of Guelph Food Science, page «\u00a0Rennet Activity\u00a0»",
  "source.guelph_yield_prediction":
    "University of Guelph Food Science, page «\u00a0Yield Prediction\u00a0»",
  "source.guinee_fox_1983": "Guinee et Fox 1983, J Dairy Res\u00a0: 0,5 à 2,42",
  "source.half_way_to_second_wash": "à mi-chemin entre le caillage et le second lavage",
  "source.hill_ferrer_gouda":
    "Hill et Ferrer, Cheese Making Technology e-Book, chapitre 15, Gouda",
  "source.hill_ferrer_gouda_process_table":
    "Hill et Ferrer, Cheese Making Technology e-Book, chapitre 15, tableau de suivi du procédé, Gouda",
  "source.hill_ferrer_process_table":
    "Hill et Ferrer, Cheese Making Technology e-Book, chapitre 15, tableau de suivi du procédé",
  "source.hold_aim_and_floor":
    "cible de 147 °F\u00a0; bas de plage\u00a0: le maintien minimum de la recette",
  "source.hold_without_break":
    "30 minutes sans coupure\u00a0; le haut de plage est sans source",
  "source.hotter_water_cooks_curd": "une eau plus chaude cuit la peau du caillé",
  "source.iafp_2017_whey":
    "IAFP, résumé du congrès annuel (2017), petit-lait, D60 1,32 min",
  "source.j_food_prot_2006":
    "J Food Prot 69(9):2161 (2006), fromage au lait cru à pâte pressée non cuite, résumé",
  "source.j_food_prot_2006_saint_nectaire":
    "J Food Prot 69(9):2161 (2006), fromage au lait cru à pâte pressée non cuite, résumé, type Saint-Nectaire",
  "source.j_food_prot_2006_salers":
    "J Food Prot 69(9):2161 (2006), fromage au lait cru à pâte pressée non cuite, résumé, type Salers",
  "source.jacket_steady_temperature": "une double enveloppe à température constante",
  "source.light_pressing_under_whey": "pressage léger sous petit-lait",
  "source.longer_blocks_do_not_fill":
    "des blocs plus longs ne remplissent pas un moule rond",
  "source.look_every_two_minutes": "un coup d’œil toutes les deux minutes",
  "source.magnus_sprung_from_memory":
    "constantes de Magnus et de Sprung, non confirmées\u00a0; à moins de 0,35\u00a0% des tables de vapeur",
  "source.makes_differ_in_lag": "les fabrications diffèrent d’un quart d’heure",
  "source.makes_differ_in_pace": "les fabrications diffèrent d’un septième en allure",
  "source.makes_end_apart": "les fabrications d’une même recette finissent à cet écart",
  "source.mass_out_of_press": "poids sortie de presse",
  "source.mcl_288_697_two_tables":
    "MCL 288.697 (Michigan), qui imprime les couples de la cuve et du flux continu en deux tableaux",
  "source.medvedova_mixed_starter": "Medvedova et al., ferment mixte",
  "source.medvedova_mixed_starter_at_32":
    "Medvedova et al., Fermentation 5(1):2, ferment mixte à 32 °C",
  "source.meter_set_day": "un appareil réglé le jour même",
  "source.meter_shape_curve_together": "l’appareil et la forme de la courbe ensemble",
  "source.milk_age_limit":
    "la limite est 48 h à 4 °C ou moins, comptées depuis l’acceptation à l’établissement\u00a0; ici elle est tenue contre l’âge du lait le plus vieux, ce qui est plus strict\u00a0; viser 24 h est pratique courante",
  "source.milk_for_cheese": "lait de fromagerie",
  "source.milk_planned": "le lait prévu",
  "source.new_york_nycrr_2_49": "New York, 1 NYCRR 2.49, lait cru gardé à l’atelier",
  "source.nist_handbook_ewma_weight":
    "NIST/SEMATECH e-Handbook, 6.3.2.4\u00a0: 0,2 à 0,3",
  "source.no_blank_run": "sans essai à blanc",
  "source.no_friction_counted": "sans compter le frottement",
  "source.nothing_sweet_added": "rien de sucré n’est ajouté au lait de fromagerie",
  "source.nycrr_2_48_and_3_27": "1 NYCRR 2.48 (point 16p(D)) et 3.27",
  "source.one_cylinder": "un vérin",
  "source.one_size_only": "une seule taille",
  "source.one_wheel_or_in_series": "une meule, ou des meules empilées en série",
  "source.own_setting_of_tool": "réglage propre à cet outil",
  "source.own_setting_to_agree":
    "réglage propre à cet outil, à convenir avec l’inspecteur",
  "source.own_settings_say_better":
    "vos propres prises le disent mieux\u00a0; 0 à 3 min",
  "source.ph_after_a_night":
    "chiffre rond sans source pour des meules qui passent la nuit sous presse\u00a0; le tableau de Hill et Ferrer donne 5,40 à 8 h et 5,20 comme minimum. Les 5,3 à 5,5 de la page Gouda se mesurent après 5 à 8 h de pressage",
  "source.ph_when_the_wheels_are_turned":
    "on atteint les meules au retournement, environ 6 h 20 min après le ferment ; avec de la marge pour une main en retard",
  "source.ph_on_a_straight_line":
    "en ligne droite entre 6,35 à 3 h et 5,40 à 8 h, environ 6 h 20 min depuis le ferment\u00a0; plage large car la courbe n’est pas droite",
  "source.plate_follower_not_counted": "sans compter le plateau ni le foncet",
  "source.pmo_appendix_n": "Pasteurized Milk Ordinance, annexe N",
  "source.pmo_older_texts_differ":
    "Pasteurized Milk Ordinance\u00a0; des textes plus anciens disent 1 000 000",
  "source.pmo_section_6_appendix_n":
    "Pasteurized Milk Ordinance, section 6 et annexe N",
  "source.pmo_table": "Pasteurized Milk Ordinance, tableau",
  "source.pmo_table_quoted":
    "Pasteurized Milk Ordinance, tableau cité par une autre source",
  "source.practice_alkali_tenth_normal": "pratique courante\u00a0: soude à 0,1 N",
  "source.practice_sample_size": "pratique courante\u00a0: prise de 10 mL",
  "source.printed_above_required": "imprimé 5 °F au-dessus de la température exigée",
  "source.printed_gouda_curve_and_night":
    "imprimé pour le Gouda\u00a0: ferment, présure, décaillage, premier petit-lait, démoulage à 8 h, minimum après une semaine\u00a0; temps depuis l’ajout du ferment. Le point de 5,25 à 18 h, après une nuit sous presse, est sans source",
  "source.printed_hold_floor": "imprimé 145 °F (63 °C)",
  "source.printed_press_pressure":
    "imprimé 14 psi\u00a0; la page ne dit pas si c’est au manomètre ou sur le fromage, ce n’est donc pas une cible",
  "source.process_table_allows_an_hour":
    "le tableau de suivi du procédé de Hill et Ferrer accorde 60 minutes",
  "source.published_bed_time":
    "publié\u00a0: au moins 10 minutes sous le petit-lait\u00a0; le haut de plage est sans source",
  "source.salt_wanted_of_our_own":
    "chiffre rond sans source pour une meule mi-dure, avec sa plage\u00a0; réglez-le à votre goût",
  "source.published_brine_strength":
    "publié\u00a0: 20\u00a0%\u00a0; la plage est sans source",
  "source.brine_temp_of_our_own":
    "chiffre rond, usage courant\u00a0: 10 à 15 °C\u00a0; le milieu est montré",
  "source.published_colour_dose":
    "publié\u00a0: 1 à 2 mL pour 1000 kg, en hiver\u00a0; la force varie",
  "source.published_end_ph": "publié\u00a0: 5,15 à 5,25",
  "source.published_ph_at_whey_off":
    "publié\u00a0: 6,40 à 6,45\u00a0; la plage de 0,1 autour du milieu est sans source\u00a0; Hill et Ferrer donnent 6,35 plus tard, à 180 minutes",
  "source.published_protein_to_fat":
    "rapport publié protéines sur gras\u00a0: 1,07\u00a0; avec 3,3\u00a0% de protéines cela fait 3,08\u00a0% de gras\u00a0; le lait entier d’un troupeau peut être plus riche",
  "source.published_quarter_hour_band_ours":
    "publié\u00a0: 15 minutes de plus\u00a0; la plage est sans source",
  "source.published_quarter_hour_more_or_less": "publié\u00a0: 15 à 20 minutes",
  "source.published_rennet_dose":
    "publié\u00a0: 190 mL pour 1000 kg\u00a0; une autre page donne environ 200\u00a0; ajustez selon la force du flacon",
  "source.published_washes_against_balance":
    "un lavage publié (20 à 25\u00a0% du lait à 60\u00a0°C, jusqu’à 36 à 38\u00a0°C) finit jusqu’à 1\u00a0°C sous le bilan de chaleur",
  "source.ripening_days_of_our_own":
    "chiffre rond de 4 semaines sans source\u00a0; le bas de plage est 3 semaines à 10 à 17 °C selon le Codex, que les meules de moins de 2,5 kg n’ont pas à atteindre",
  "source.published_scald_temp": "publié\u00a0: 36 à 38 °C",
  "source.published_set_temp": "publié\u00a0: 30 à 32 °C",
  "source.published_set_temp_wider":
    "publié\u00a0: 30 à 32 °C\u00a0; le haut est plus large de 1 K, sans source",
  "source.published_set_time":
    "présure à 60 et décaillage à 90 minutes\u00a0; la page de Guelph sur la présure donne 30 à 40 minutes",
  "source.published_stir_time": "publié\u00a0: 20 à 30 minutes",
  "source.store_humidity_of_our_own":
    "chiffre rond sans source pour des meules enduites, avec sa plage",
  "source.store_temp_of_our_own":
    "chiffre rond sans source\u00a0; le Codex pour le Gouda dit 10 à 17 °C",
  "source.published_whole_pressing":
    "le pressage entier de la page Gouda de Guelph est de 5 à 8 h\u00a0; une nuit est usuelle quand personne n’est là pour démouler",
  "source.salt_diffusion_start":
    "l’intervalle de 1 à 5,3e-10 est celui du résumé\u00a0; le tableau II descend à 0,62e-10 (Emmental) et donne 2,3e-10 pour un type Gouda\u00a0; le départ de 1,5e-10 est sans source et se règle d’après vos meules",
  "source.recipe_moulds": "les moules de la recette",
  "source.recipe_targets": "les cibles de la recette",
  "source.ripe_washed_curd_wheel": "meule affinée à caillé lavé",
  "source.rule_of_recipe": "la règle que nomme la recette",
  "source.salt_in_water_out": "le sel entre, le double de sa masse d’eau sort",
  "source.sea_level": "niveau de la mer",
  "source.second_wash_heat_balance":
    "bilan de chaleur de 34 °C à 37 °C pour l’eau encore à ajouter",
  "source.set_at_32": "emprésuré à 32 °C",
  "source.share_of_curd": "part du caillé",
  "source.share_of_milk_without_water": "0,02\u00a0% du poids du lait, compté sans eau",
  "source.silver_nitrate_tenth_molar": "nitrate d’argent à 0,1 mol/L",
  "source.skim_or_cream_stirred_in": "on mélange du lait écrémé ou de la crème",
  "source.soxhlet_another_time": "Soxhlet\u00a0; une page dit 45 min",
  "source.soxhlet_own_time": "les 40 min de Soxhlet lui-même",
  "source.specification_summary": "résumé du cahier des charges",
  "source.specification_summary_twelve_days":
    "résumé du cahier des charges, 12 jours après la fabrication",
  "source.state_regulation": "règlement de l’État",
  "source.statutory_instrument": "statutory instrument (décret britannique)",
  "source.stirred_vat_thermometer":
    "une cuve brassée et un thermomètre à cadran ou numérique",
  "source.setting_q10_from_memory":
    "prise 2 à 3 fois plus rapide pour 10 degrés de plus, non confirmé\u00a0; de 28 à 36 °C",
  "source.supplier_page":
    "page d’un fournisseur sur la présure et le chlorure de calcium pour Gouda",
  "source.supplier_page_usual_dose":
    "page d’un fournisseur sur la présure et le chlorure de calcium pour Gouda\u00a0; usuel\u00a0: 35 à 55",
  "source.the_trade": "le métier",
  "source.third_of_whey_share_of_milk":
    "un tiers du petit-lait\u00a0; 100 kg de lait donnent environ 89 kg de petit-lait",
  "source.this_recipe": "cette recette",
  "source.trade_knowledge": "savoir du métier",
  "source.bed_density_of_our_own":
    "chiffre rond sans source, 1050 à 1100\u00a0: pesez un bloc pour le fixer",
  "source.trade_knowledge_lactococcus": "savoir du métier sur Lactococcus",
  "source.trade_knowledge_new_brine": "savoir du métier\u00a0: saumure neuve",
  "source.trade_knowledge_range": "savoir du métier, 2 à 3",
  "source.trade_rule_gouda_types": "une règle du métier pour les types Gouda",
  "source.trade_rule_not_science":
    "une règle du métier, pas de la science\u00a0; adaptez-la à votre caillé",
  "source.twice_a_week": "deux fois par semaine",
  "source.two_in_a_hundred": "deux pour cent",
  "source.two_published_gouda_sources": "deux sources publiées sur le Gouda",
  "source.two_thermometers_compared": "deux thermomètres comparés",
  "source.two_weeks": "deux semaines",
  "source.two_weeks_then_twice_a_week":
    "les deux premières semaines\u00a0; ensuite deux fois par semaine",
  "source.two_yield_formulas":
    "kg sortie de presse par kg de lait\u00a0; deux formules de rendement donnent 0,1037 et 0,1083 pour 3,4\u00a0% de gras, 2,6\u00a0% de caséine, 43\u00a0% d’humidité",
  "source.uk_si_1995_1086":
    "Royaume-Uni, SI 1995/1086 schedule 5 (remplacé)\u00a0: temps de l’acceptation à l’établissement à la fabrication",
  "source.us_cfr_1240_61":
    "États-Unis, 21 CFR 1240.61(b), lait pasteurisé\u00a0; 21 CFR 133.3(d) dit ce que pasteurisé veut dire pour le lait à fromage",
  "source.us_cfr_133_138":
    "États-Unis, 21 CFR 133.138(b)(3), chlorure de calcium dans le lait de fromagerie",
  "source.use_dose_on_pack": "la force varie\u00a0: suivez la dose du sachet",
  "source.calcium_solution_densities":
    "masses volumiques du chlorure de calcium dans l’eau à 20\u00a0°C, d’une table imprimée",
  "source.usual_small_creamery": "usuel dans une petite fromagerie",
  "source.vat_all_held_once": "une cuve, tout le lait maintenu ensemble",
  "source.volume_times_usual_density": "volume par la densité usuelle",
  "source.volumes_of_water_to_rennet":
    "volumes d’eau pour un de présure\u00a0; une autre page donne environ 20",
  "source.washed_curd_store": "une cave de fromages à caillé lavé",
  "source.washed_curd_wheel_out_press": "meule à caillé lavé au sortir de la presse",
  "source.water_phase_of_milk": "phase aqueuse du lait, 94 kg sur 100",
  "source.whey_and_curd_of_facts":
    "calculé d’après les parts de petit-lait et de caillé",
  "source.whey_share_of_milk": "le petit-lait fait environ 89 kg pour 100 kg de lait",
  "source.with_time_to_dry": "avec le temps de séchage",
  "source.working_brine": "une saumure en service",
  "source.zehren_study": "Zehren et Zehren, J Dairy Sci, étude de 378 cuves, résumé",

  "source.own_heat_aim":
    "147 °F ou 64 °C, chiffre rond sans source, dès 63 °C\u00a0: assez chaud contre ce qui gâte le fromage, assez doux pour un caillé ferme",
  "source.own_air_rise":
    "autant qu’une règle demande à un pasteurisateur\u00a0: mousse et éclaboussures sous le couvercle chauffent comme le lait",
  "source.own_gap":
    "deux fois le temps entre deux mesures, pour qu’une puisse tarder\u00a0; sans source",
  "source.own_hold_time":
    "15 à 20 minutes, chiffre rond sans source\u00a0: la moitié de ce qu’une règle demande, pour que nul ne le prenne pour une pasteurisation",
};
