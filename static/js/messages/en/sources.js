// What the figures rest on: titles of sources, and notes of the recipes' figures.

export const SOURCES = {
  "source.abstract_table": "abstract and table",
  "source.against_opening_volume":
    "against the volume the make was opened with; doses follow what was measured",
  "source.acidity_of_first_whey":
    "a round figure without a source for the first whey of washed curd, with its band; it goes by no pH, and your own makes say better",
  "source.acidity_of_fresh_milk":
    "a round figure without a source for fresh milk, 14 to 18 °D; it goes by no pH, and your own milk says better",
  "source.air_space_above_required":
    "at least 3 °C (5 °F) above what is required of the milk: 66 °C, or 150 °F; the aim is as far above 63.9 °C",
  "source.as_the_bottle_states": "as the bottle states it",
  "source.band_each_way_ours": "band of 0.1 each way, without a source",
  "source.band_ours": "band without a source",
  "source.before_brine": "before the brine",
  "source.between_published_z": "between the published 5.8 and 9.46 K",
  "source.both_washes_of_milk":
    "with the first wash 22 % of the milk; published 20 to 25 %",
  "source.bradshaw_1985_whole_milk":
    "Bradshaw et al., J Food Prot 48:743 (1985), whole milk",
  "source.calcium_band_and_limit":
    "a round figure with its band, common practice; the legal limit is a figure of the recipe too; for a liquid, use the strength on the label",
  "source.california_ccr_584":
    "California, 3 CCR 584(b) and (c), air space and end-of-hold mark in vat pasteurising",
  "source.california_code_34061": "California F&A Code 34061 to 34065",
  "source.can_j_microbiol_1977_milk":
    "Can J Microbiol 23:1034 (1977), milk, D60 0.87 min",
  "source.cfr_1240_61_footnote": "21 CFR 1240.61, footnote 1",
  "source.cfr_1240_61_footnote_and_131_3": "21 CFR 1240.61, footnote 1; 131.3(b)",
  "source.cfr_133_102_dairy_textbook":
    "21 CFR 133.102, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415",
  "source.cfr_133_104_dairy_textbook":
    "21 CFR 133.104, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415",
  "source.cfr_133_106_dairy_textbook":
    "21 CFR 133.106, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415",
  "source.cfr_133_133_dairy_textbook":
    "21 CFR 133.133, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415",
  "source.cfr_133_138_and_others": "21 CFR 133.138 and others of part 133",
  "source.cfr_133_158_dairy_textbook":
    "21 CFR 133.158, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415",
  "source.cfr_133_162_dairy_textbook":
    "21 CFR 133.162, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415",
  "source.cfr_133_181_dairy_textbook":
    "21 CFR 133.181, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415",
  "source.cfr_133_184_dairy_textbook":
    "21 CFR 133.184, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415",
  "source.cfr_133_188_dairy_textbook":
    "21 CFR 133.188, dairy textbook table 10.1 citing 21 CFR 133 (2003), checked against 3 CCR 415",
  "source.cfr_133_calcium_anhydrous":
    "21 CFR 133.138(b)(3), 133.182: of the milk, as anhydrous",
  "source.cfr_133_phenol_equivalent":
    "21 CFR 133.113, .138, .195: phenol equivalent of 0.25 g",
  "source.cfr_editions_2006_2010":
    "Code of Federal Regulations, editions of 2006 and 2010",
  "source.choose_animal": "choose the animal",
  "source.choose_where_licensed": "choose where you are licensed",
  "source.choose_where_sold": "choose where the cheese is sold",
  "source.chosen_for_recipe": "chosen or worked out for this recipe",
  "source.coated_wheel_some_weeks": "coated wheel, some weeks",
  "source.codex_cheese_1978": "Codex General Standard for Cheese, A-6-1978",
  "source.codex_cxs_266": "Codex standard CXS 266 for Gouda, ripening",
  "source.codex_french_text": "Codex Alimentarius, French text",
  "source.cold_limit": "the limit is 7 °C (45 °F); the aim of 4 °C is common practice",
  "source.cold_limit_until_processed":
    "the limit is 7 °C (45 °F) until processed; the aim of 4 °C is common practice",
  "source.comar_citing_pmo_19r":
    "Pasteurized Milk Ordinance, item 19r (Grade A), as printed in COMAR 10.15.09.08; Maryland's section on farmstead cheese is COMAR 10.15.08.08",
  "source.common_practice": "common practice, no source",
  "source.convention_pounds_in_gallon": "convention of 8.6 lb in a US gallon",
  "source.cows_milk_casein_number": "cows' milk, 0.75 to 0.82",
  "source.cxs_266_three_weeks": "CXS 266-1966, 2: normally 3 weeks at least",
  "source.cxs_283_current": "CXS 283-1978, current text",
  "source.cylinder_straight_on_plate": "cylinder straight on the plate",
  "source.brine_time_of_salt_wanted":
    "diffusion model at 1.5e-10 m2/s in 20 % brine for the salt that is wanted, 2.0 %; low and high end: 1.6 and 2.2 %. The Gouda page gives 20 h for 0.5 kg and 3 days for Edam of 1.5 to 3 kg, and says no salt; a starting estimate, a salt test decides",
  "source.ec_2073_2005_amended": "Reg. (EC) 2073/2005 as amended by 1441/2007",
  "source.ec_853_2004_annex_iii": "Regulation (EC) 853/2004, Annex III, Section IX",
  "source.ec_853_2004_italian_text":
    "Regulation (EC) 853/2004, Annex III, Section IX, Italian text",
  "source.ec_853_2004_quoted_in_french":
    "Regulation (EC) 853/2004, Annex III, Section IX, Chapter II, quoted in French on a page of French food law",
  "source.ec_853_2004_raw_milk":
    "Regulation (EC) 853/2004, Annex I, 4.1: raw milk was never above this",
  "source.end_of_moulding_to_agree": "end of moulding; agree it with the inspector",
  "source.eu_protected_indication": "EU protected geographical indication",
  "source.press_programme_of_our_own":
    "round figures without a source, on the cheese: 5 to 10, 10 to 20, then 20 to 40 kPa; two accounts of farm presses lie within",
  "source.brine_limits_of_our_own":
    "round figures for a brine, common practice: no law and no single text says them",
  "source.fermentation_handbook_brine_temp":
    "Handbook of Food and Beverage Fermentation: 10 to 15 °C",
  "source.brine_times_quoted":
    "a dairy handbook's table of brine times by kind of cheese, as another text gives it",
  "source.filled_emptied_outside_hold": "filled and emptied outside the hold",
  "source.first_wash_heat_balance":
    "heat balance from 32 °C after the first whey, with 1 K lost; with the second wash the published 20 to 25 % of the milk",
  "source.five_schedules_against_curve":
    "five published schedules against this curve: 0.044 to 0.076",
  "source.floury_2010":
    "Floury et al. 2010, Dairy Science and Technology 90:477-508, abstract and table II: salt diffusion in cheese",
  "source.floury_2010_start_of_ours":
    "Floury et al. 2010, Dairy Sci Technol 90:477: 2.3e-10 for a Gouda type; the figure to start from has no source",
  "source.follower_not_counted": "follower not counted",
  "source.from_memory": "to be confirmed",
  "source.general_dairy_texts": "general dairy texts",
  "source.general_yield_from_memory":
    "constants of the general yield formula, unconfirmed; set them from own makes",
  "source.grade_a_cooling_19r":
    "Pasteurized Milk Ordinance, item 19r, cooling of Grade A milk, as printed in COMAR 10.15.09.08; farmstead cheese stands in COMAR 10.15.08.08",
  "source.guelph_density_table":
    "density table of fluid dairy products, D. Goff, University of Guelph",
  "source.guelph_density_table_whole_milk":
    "density table of fluid dairy products, D. Goff, University of Guelph, milk of 4.0 % fat",
  "source.guelph_food_science_gouda":
    'A. Hill, University of Guelph Food Science, page "Gouda"',
  "source.guelph_gouda": "A. Hill, University of Guelph, page Gouda",
  "source.guelph_gouda_colour_in_winter":
    "A. Hill, University of Guelph, page Gouda: 1 to 2 mL in winter",
  "source.guelph_gouda_dilution":
    "A. Hill, University of Guelph, page Gouda; another page gives about 20",
  "source.guelph_gouda_scald_time":
    "A. Hill, University of Guelph, page Gouda: 15 to 20 min",
  "source.guelph_gouda_third_of_whey":
    "A. Hill, University of Guelph, page Gouda: a third of the whey",
  "source.guelph_rennet_activity":
    'University of Guelph Food Science, page "Rennet Activity"',
  "source.guelph_yield_prediction":
    'University of Guelph Food Science, page "Yield Prediction"',
  "source.guinee_fox_1983": "Guinee and Fox 1983, J Dairy Res: 0.5 to 2.42",
  "source.half_way_to_second_wash": "half way from set to the second wash",
  "source.hill_ferrer_gouda":
    "Hill and Ferrer, Cheese Making Technology e-Book, chapter 15, Gouda",
  "source.hill_ferrer_gouda_process_table":
    "Hill and Ferrer, Cheese Making Technology e-Book, chapter 15, table of process control, Gouda",
  "source.hill_ferrer_process_table":
    "Hill and Ferrer, Cheese Making Technology e-Book, chapter 15, table of process control",
  "source.hold_aim_and_floor":
    "147 °F aim; the low end is the least hold of the recipe",
  "source.hold_without_break":
    "30 minutes without a break; the upper end has no source",
  "source.hotter_water_cooks_curd": "hotter water cooks the skin of the curd",
  "source.iafp_2017_whey": "IAFP annual meeting abstract (2017), whey, D60 1.32 min",
  "source.j_food_prot_2006":
    "J Food Prot 69(9):2161 (2006), raw-milk uncooked semi-hard cheese, abstract",
  "source.j_food_prot_2006_saint_nectaire":
    "J Food Prot 69(9):2161 (2006), raw-milk uncooked semi-hard cheese, abstract, Saint-Nectaire type",
  "source.j_food_prot_2006_salers":
    "J Food Prot 69(9):2161 (2006), raw-milk uncooked semi-hard cheese, abstract, Salers type",
  "source.jacket_steady_temperature": "a jacket of steady temperature",
  "source.light_pressing_under_whey": "light pressing under whey",
  "source.longer_blocks_do_not_fill": "longer blocks do not fill a round mould",
  "source.look_every_two_minutes": "a look every two minutes",
  "source.magnus_sprung_from_memory":
    "Magnus and Sprung constants, unconfirmed; within 0.35 % of steam tables",
  "source.makes_differ_in_lag": "makes differ by a quarter of an hour",
  "source.makes_differ_in_pace": "makes differ by a seventh in pace",
  "source.makes_end_apart": "makes of one recipe end this far apart",
  "source.mass_out_of_press": "mass out of the press",
  "source.mcl_288_697_two_tables":
    "MCL 288.697 (Michigan), which prints vat and continuous pairs as two tables",
  "source.medvedova_mixed_starter": "Medvedova et al., mixed starter",
  "source.medvedova_mixed_starter_at_32":
    "Medvedova et al., Fermentation 5(1):2, mixed starter at 32 °C",
  "source.meter_set_day": "a meter set that day",
  "source.meter_shape_curve_together": "meter and shape of the curve together",
  "source.milk_age_limit":
    "the limit is 48 h at 4 °C or colder, counted from acceptance at the establishment; here it is held against the age of the oldest milk, which is stricter; the aim of 24 h is common practice",
  "source.milk_for_cheese": "milk for cheese",
  "source.milk_planned": "milk that was planned",
  "source.new_york_nycrr_2_49": "New York, 1 NYCRR 2.49, raw milk held in the plant",
  "source.nist_handbook_ewma_weight": "NIST/SEMATECH e-Handbook, 6.3.2.4: 0.2 to 0.3",
  "source.no_blank_run": "no blank run",
  "source.no_friction_counted": "no friction counted",
  "source.nothing_sweet_added": "nothing sweet is added to cheese milk",
  "source.nycrr_2_48_and_3_27": "1 NYCRR 2.48 (item 16p(D)) and 3.27",
  "source.one_cylinder": "one cylinder",
  "source.one_size_only": "one size only",
  "source.one_wheel_or_in_series": "one wheel, or wheels stacked in series",
  "source.own_setting_of_tool": "this tool's own setting",
  "source.own_setting_to_agree":
    "this tool's own setting, to be agreed with the inspector",
  "source.own_settings_say_better": "own settings say better; 0 to 3 min",
  "source.ph_after_a_night":
    "a round figure without a source for wheels that stay in the press overnight; Hill and Ferrer's table has 5.40 at 8 h and 5.20 as the least. The Gouda page's 5.3 to 5.5 is read after 5 to 8 h of pressing",
  "source.ph_when_the_wheels_are_turned":
    "the wheels are first reached when they are turned, about 6 h 20 min from the starter; with time for a late hand",
  "source.ph_on_a_straight_line":
    "on a straight line between 6.35 at 3 h and 5.40 at 8 h, about 6 h 20 min from the starter; a wide band because the curve is not straight",
  "source.plate_follower_not_counted": "plate and follower not counted",
  "source.pmo_appendix_n": "Pasteurized Milk Ordinance, appendix N",
  "source.pmo_older_texts_differ":
    "Pasteurized Milk Ordinance; older texts say 1 000 000",
  "source.pmo_section_6_appendix_n":
    "Pasteurized Milk Ordinance, section 6 and appendix N",
  "source.pmo_table": "Pasteurized Milk Ordinance table",
  "source.pmo_table_quoted":
    "Pasteurized Milk Ordinance, table quoted in a second source",
  "source.practice_alkali_tenth_normal": "common practice: 0.1 N alkali",
  "source.practice_sample_size": "common practice: 10 mL sample",
  "source.printed_above_required": "printed as 5 °F above the required temperature",
  "source.printed_gouda_curve_and_night":
    "printed for Gouda: starter, rennet, cut, first whey off, out of the mould at 8 h, least after a week; times from adding the starter. The point of 5.25 at 18 h, after a night in the press, has no source",
  "source.printed_hold_floor": "printed as 145 °F (63 °C)",
  "source.printed_press_pressure":
    "printed as 14 psi; the page does not say whether at the gauge or on the cheese, so it is no target",
  "source.process_table_allows_an_hour":
    "Hill and Ferrer's table of process control allows 60 minutes",
  "source.published_bed_time":
    "published as at least 10 minutes under the whey; the upper end has no source",
  "source.salt_wanted_of_our_own":
    "a round figure without a source for a semi-hard wheel, with its band; set it to your taste",
  "source.published_brine_strength": "published as 20 %; the band has no source",
  "source.brine_temp_of_our_own":
    "a round figure, common practice: 10 to 15 °C; the middle is shown",
  "source.published_colour_dose":
    "published as 1 to 2 mL in 1,000 kg, in winter; strength varies",
  "source.published_end_ph": "published as 5.15 to 5.25",
  "source.published_ph_at_whey_off":
    "published as 6.40 to 6.45; the band of 0.1 round its middle has no source; Hill and Ferrer give 6.35 later, at 180 minutes",
  "source.published_protein_to_fat":
    "published protein to fat 1.07; with 3.3 % protein that is 3.08 % fat; whole milk of a farm herd may be richer",
  "source.published_quarter_hour_band_ours":
    "published as 15 more minutes; the band has no source",
  "source.published_quarter_hour_more_or_less": "published as 15 to 20 minutes",
  "source.published_rennet_dose":
    "published as 190 mL in 1,000 kg; another page gives about 200; scale by the strength on the bottle",
  "source.published_washes_against_balance":
    "a published wash (20 to 25 % of the milk at 60\u00a0°C, to 36 to 38\u00a0°C) lands up to 1\u00a0°C below the heat balance",
  "source.ripening_days_of_our_own":
    "a round figure of 4 weeks without a source; the low end is 3 weeks at 10 to 17 °C by Codex, which wheels under 2.5 kg need not reach",
  "source.published_scald_temp": "published as 36 to 38 °C",
  "source.published_set_temp": "published as 30 to 32 °C",
  "source.published_set_temp_wider":
    "published as 30 to 32 °C; the upper end is 1 K wider, without a source",
  "source.published_set_time":
    "rennet at 60 and cut at 90 minutes; Guelph's page on rennet gives 30 to 40 minutes",
  "source.published_stir_time": "published as 20 to 30 minutes",
  "source.store_humidity_of_our_own":
    "a round figure without a source for coated wheels, with its band",
  "source.store_temp_of_our_own":
    "a round figure without a source; Codex for Gouda says 10 to 17 °C",
  "source.published_whole_pressing":
    "the whole pressing that Guelph's Gouda page gives is 5 to 8 h; a night is usual where nobody is there to unmould",
  "source.salt_diffusion_start":
    "the range of 1 to 5.3e-10 is that of the abstract; table II goes down to 0.62e-10 (Emmental) and gives 2.3e-10 for a Gouda type; the start of 1.5e-10 has no source and is to be set from your own wheels",
  "source.recipe_moulds": "the recipe's moulds",
  "source.recipe_targets": "the recipe's targets",
  "source.ripe_washed_curd_wheel": "ripe washed-curd wheel",
  "source.rule_of_recipe": "the rule that the recipe names",
  "source.salt_in_water_out": "salt in, twice its mass of water out",
  "source.sea_level": "sea level",
  "source.second_wash_heat_balance":
    "heat balance from 34 °C to 37 °C for the water still to be added",
  "source.set_at_32": "set at 32 °C",
  "source.share_of_curd": "share of the curd",
  "source.share_of_milk_without_water":
    "0.02 % of the milk's weight, counted without water",
  "source.silver_nitrate_tenth_molar": "0.1 mol/L silver nitrate",
  "source.skim_or_cream_stirred_in": "skim or cream is stirred in",
  "source.soxhlet_another_time": "Soxhlet; one page says 45 min",
  "source.soxhlet_own_time": "Soxhlet's own 40 min",
  "source.specification_summary": "summary of the specification",
  "source.specification_summary_twelve_days":
    "summary of the specification, 12 days after making",
  "source.state_regulation": "state regulation",
  "source.statutory_instrument": "statutory instrument",
  "source.stirred_vat_thermometer": "a stirred vat and a dial or digital thermometer",
  "source.setting_q10_from_memory":
    "setting 2 to 3 times as fast for 10 degrees more, unconfirmed; 28 to 36 °C",
  "source.supplier_page": "a supplier's page on rennet and calcium chloride for Gouda",
  "source.supplier_page_usual_dose":
    "a supplier's page on rennet and calcium chloride for Gouda; 35 to 55 usual",
  "source.the_trade": "the trade",
  "source.third_of_whey_share_of_milk":
    "a third of the whey; 100 kg of milk gives about 89 kg of whey",
  "source.this_recipe": "this recipe",
  "source.trade_knowledge": "trade knowledge",
  "source.bed_density_of_our_own":
    "a round figure without a source, 1050 to 1100: weigh a block to set it",
  "source.trade_knowledge_lactococcus": "trade knowledge of Lactococcus",
  "source.trade_knowledge_new_brine": "trade knowledge: new brine",
  "source.trade_knowledge_range": "trade knowledge, 2 to 3",
  "source.trade_rule_gouda_types": "a rule of the trade for Gouda types",
  "source.trade_rule_not_science":
    "a rule of the trade, not science; change it to suit your curd",
  "source.twice_a_week": "twice a week",
  "source.two_in_a_hundred": "two in a hundred",
  "source.two_published_gouda_sources": "two published Gouda sources",
  "source.two_thermometers_compared": "two thermometers compared",
  "source.two_weeks": "two weeks",
  "source.two_weeks_then_twice_a_week": "first two weeks; then twice a week",
  "source.two_yield_formulas":
    "kg out of the press per kg milk; two yield formulas give 0.1037 and 0.1083 for 3.4 % fat, 2.6 % casein, 43 % moisture",
  "source.uk_si_1995_1086":
    "United Kingdom, SI 1995/1086 schedule 5 (superseded): time from acceptance at the establishment to making",
  "source.us_cfr_1240_61":
    "United States, 21 CFR 1240.61(b), pasteurised milk; 21 CFR 133.3(d) says what pasteurised means for cheese milk",
  "source.us_cfr_133_138":
    "United States, 21 CFR 133.138(b)(3), calcium chloride in cheese milk",
  "source.use_dose_on_pack": "strength differs: use the dose on the pack",
  "source.calcium_solution_densities":
    "densities of calcium chloride in water at 20\u00a0°C, from a printed table",
  "source.usual_small_creamery": "usual for a small creamery",
  "source.vat_all_held_once": "a vat, all of it held at once",
  "source.volume_times_usual_density": "volume times usual density",
  "source.volumes_of_water_to_rennet":
    "volumes of water to one of rennet; another page gives about 20",
  "source.washed_curd_store": "a washed-curd store",
  "source.washed_curd_wheel_out_press": "washed-curd wheel out of the press",
  "source.water_phase_of_milk": "water phase of milk, 94 kg of 100",
  "source.whey_and_curd_of_facts": "worked out from the shares of whey and curd",
  "source.whey_share_of_milk": "whey is about 89 kg of 100 kg milk",
  "source.with_time_to_dry": "with the time to dry",
  "source.working_brine": "a working brine",
  "source.zehren_study": "Zehren and Zehren, J Dairy Sci, study of 378 vats, abstract",

  "source.own_heat_aim":
    "147 °F or 64 °C, a round figure without a source, from 63 °C up: hot enough to thin out what spoils cheese, mild enough for a firm curd",
  "source.own_air_rise":
    "as much as a rule asks of a pasteuriser: foam and splashes under the lid get as hot as the milk",
  "source.own_gap":
    "twice the time between readings, so that one may come late; without a source",
  "source.own_hold_time":
    "15 to 20 minutes, a round figure without a source: half of what a rule asks, so that nobody takes it for pasteurising",
};
