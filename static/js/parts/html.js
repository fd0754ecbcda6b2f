import { h } from "preact";
import htm from "htm";

/** Template tag: markup in, Preact elements out. Text is always escaped. */
export const html = htm.bind(h);
