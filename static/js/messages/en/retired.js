// Sources that no recipe names any more: makes that froze them still do.

export const RETIRED = {
  "sources.retired": "{source} (no longer cited)",
  "retired.diffusion_model_brine_time":
    "diffusion model, 20 % brine: 1.8 % salt in 18 h at 1.5e-10 m2/s, in 12 h at 2.3e-10; 2.0 % in 23 h; a starting estimate, a salt test decides",
  "retired.encyclopaedia_after_dairy_handbook":
    "encyclopaedia article on brine salting, after a dairy handbook",
  "retired.encyclopaedia_brine_salting": "encyclopaedia article on brine salting",
  "retired.farmhouse_press_programme":
    "farmhouse programme, trade knowledge; confirm it with your own cheese",
  "retired.farmstead_textbook_quoted": "farmstead cheese textbook, as others give it",
  "retired.fermentation_handbook_title_from_memory":
    "Handbook of Food and Beverage Fermentation Technology (title unconfirmed)",
  "retired.gouda_stores_abstract": "Abstract of a dairy text on Gouda stores",
  "retired.mirror_copy": "a copy of the text",
  "retired.printed_gouda_curve":
    "printed for Gouda: starter, rennet, cut, first whey off, out of the mould, least after a week; times from adding the starter",
  "retired.published_brine_days":
    "published as 1 to 3 days for 2 to 12 kg; the middle is shown; common practice about 3 days for a 10 kg wheel; a starting estimate, a salt test decides",
  "retired.published_brine_temp": "published as 10 to 15 °C; the middle is shown",
  "retired.published_ph_after_press":
    "published as 5.3 to 5.5 after the press; Hill and Ferrer give 5.40 at 8 h",
  "retired.published_ripening_days":
    "published as 28 days; the low end is 3 weeks at 10 to 17 °C by Codex, which wheels under 2.5 kg need not reach; the upper end has no source",
  "retired.published_salt_of_semi_hard":
    "published as 1.6 to 2.2 % in semi-hard cheese of 2 to 12 kg; the value has no source",
  "retired.published_store_humidity": "published as 85 to 90 %",
  "retired.published_store_temp":
    "published as 12 to 13 °C; Codex for Gouda says 10 to 17 °C",
  "retired.range_published_value_ours":
    "the range is published; the value to start from has no source and is to be set from your own wheels",
  "retired.supplier_page_title":
    "A supplier's page on rennet and calcium chloride for Gouda",
  "retired.trade_knowledge_bed_density": "trade knowledge, 1050 to 1100",
  "retired.web_page": "web page",
};
