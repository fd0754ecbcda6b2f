// Answers questions about the page's half of the seal, for tests/test_seal.py.

import { readFileSync } from "node:fs";
import {
  actOf,
  actText,
  newSealed,
  oneText,
  sealedText,
  sign,
} from "../../static/js/parts/later/seal.js";

const asked = JSON.parse(readFileSync(0, "utf8"));
const { act, pin, sealed } = asked;
const made = await newSealed(asked.person, pin);
const text = actText(act);
const answer = {
  texts: asked.values.map(oneText),
  act: actOf(act),
  act_text: new TextDecoder().decode(text),
  sig: await sign(sealed, pin, text),
  wrong_sig: await sign(sealed, asked.wrong, text),
  other_sig: await sign({ ...sealed, person: "bo" }, pin, text),
  made,
  made_sig: await sign(made, pin, sealedText(made)),
};
process.stdout.write(JSON.stringify(answer));
