import { has, t } from "../messages/index.js";

/**
 * Where a figure comes from, in one plain sentence; "" for the recipe's plain word.
 *
 * @param {Origin | null | undefined} origin
 * @param {string | null} own the recipe's own figure, as text
 */
export function originWords(origin, own) {
  if (!origin) return "";
  if (origin.from === "person") return t("origin.person");
  if (origin.from === "sum")
    return own === null ? t("origin.sum_alone") : t("origin.sum", { own });
  const label = "label." + origin.sum;
  if (origin.fell_back === "missing" && has(label)) return t(label);
  const list = origin.needs.map((name) => t("in." + name)).join(", ");
  if (list) return t(own === null ? "origin.open" : "origin.missing", { list });
  return t("origin.fell_back");
}
