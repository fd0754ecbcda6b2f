// Sources that no recipe names any more: makes that froze them still do.

export const RETIRED = {
  "sources.retired": "{source} (n’est plus citée)",
  "retired.diffusion_model_brine_time":
    "modèle de diffusion, saumure à 20\u00a0%\u00a0: 1,8\u00a0% de sel en 18 h à 1,5e-10 m²/s, en 12 h à 2,3e-10\u00a0; 2,0\u00a0% en 23 h\u00a0; estimation de départ, une analyse de sel décide",
  "retired.encyclopaedia_after_dairy_handbook":
    "article d’encyclopédie sur le salage en saumure, d’après un manuel laitier",
  "retired.encyclopaedia_brine_salting":
    "article d’encyclopédie sur le salage en saumure",
  "retired.farmhouse_press_programme":
    "programme de fromagerie fermière, savoir du métier\u00a0; à confirmer sur votre fromage",
  "retired.farmstead_textbook_quoted":
    "manuel de fromage fermier, tel que d’autres le donnent",
  "retired.fermentation_handbook_title_from_memory":
    "Handbook of Food and Beverage Fermentation Technology (titre non confirmé)",
  "retired.gouda_stores_abstract": "Résumé d’un texte laitier sur les caves à Gouda",
  "retired.mirror_copy": "une copie du texte",
  "retired.printed_gouda_curve":
    "imprimé pour le Gouda\u00a0: ferment, présure, décaillage, premier petit-lait, démoulage, minimum après une semaine\u00a0; temps depuis l’ajout du ferment",
  "retired.published_brine_days":
    "publié\u00a0: 1 à 3 jours pour 2 à 12 kg\u00a0; le milieu est montré\u00a0; pratique courante, environ 3 jours pour une meule de 10 kg\u00a0; estimation de départ, une analyse de sel décide",
  "retired.published_brine_temp":
    "publié\u00a0: 10 à 15 °C\u00a0; le milieu est montré",
  "retired.published_ph_after_press":
    "publié\u00a0: 5,3 à 5,5 après la presse\u00a0; Hill et Ferrer donnent 5,40 à 8 h",
  "retired.published_ripening_days":
    "publié\u00a0: 28 jours\u00a0; le bas de plage est 3 semaines à 10 à 17 °C selon le Codex, que les meules de moins de 2,5 kg n’ont pas à atteindre\u00a0; le haut est sans source",
  "retired.published_salt_of_semi_hard":
    "publié\u00a0: 1,6 à 2,2\u00a0% dans un fromage mi-dur de 2 à 12 kg\u00a0; la valeur est sans source",
  "retired.published_store_humidity": "publié\u00a0: 85 à 90\u00a0%",
  "retired.published_store_temp":
    "publié\u00a0: 12 à 13 °C\u00a0; le Codex pour le Gouda dit 10 à 17 °C",
  "retired.range_published_value_ours":
    "l’intervalle est publié\u00a0; la valeur de départ est sans source et se règle d’après vos meules",
  "retired.supplier_page_title":
    "Page d’un fournisseur sur la présure et le chlorure de calcium pour Gouda",
  "retired.trade_knowledge_bed_density": "savoir du métier, 1050 à 1100",
  "retired.web_page": "page web",
};
