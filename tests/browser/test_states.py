"""The states without their colour: a fogged screen, a grey print.

What is looked at is what the browser paints of a mark's shape, turned to grey.
"""

import base64
import itertools

import pytest

STATES = {
    "act": "ACT NOW",
    "check": "CHECK",
    "ok": "OK",
    "waiting": "WAITING",
    "ready": "READY",
    "running": "RUNNING",
    "due": "DUE",
    "late": "LATE",
    "stopped": "STOPPED",
    "done": "DONE",
    "skipped": "SKIPPED",
}
RENDER = """
const { render } = await import("preact");
const { html } = await import("/js/parts/html.js");
const { StateMark } = await import("/js/parts/state-mark.js");
const holder = document.createElement("div");
holder.style.cssText = "position:fixed;inset:0;z-index:99;display:grid;"
  + "background:var(--ground);font-size:40px;filter:grayscale(1)";
document.body.append(holder);
const mark = (state) =>
  html`<p id=${"grey-" + state}><${StateMark} state=${state} /></p>`;
render(args[0].map(mark), holder);
const word = (state) => document.getElementById("grey-" + state).innerText.trim();
return args[0].map(word);
"""
# Each picture as [light (0 to 255) of its pixels], and whether none has a colour.
PIXELS = """
async (pictures) => {
  const found = [];
  for (const picture of pictures) {
    const image = new Image();
    image.src = "data:image/png;base64," + picture;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = canvas.height = 104; // a row may begin between two pixels
    const pen = canvas.getContext("2d");
    pen.drawImage(image, 0, 0, canvas.width, canvas.height);
    const { data } = pen.getImageData(0, 0, canvas.width, canvas.height);
    const light = [];
    let isGrey = true;
    for (let at = 0; at < data.length; at += 4) {
      light.push(data[at]);
      const spread = Math.max(data[at], data[at + 1], data[at + 2])
        - Math.min(data[at], data[at + 1], data[at + 2]);
      if (spread > 2) isGrey = false;
    }
    found.push({ light, isGrey });
  }
  return found;
}
"""
# The same shape painted half a pixel lower differs by about 0.05 of the picture,
# two of the marks by 0.22 and more.
UNLIKE_FRAC = 0.2


def outline(light):
    """Return a picture as its shape alone: which pixels are the darker of two tones."""
    middle = (min(light) + max(light)) / 2
    return [one < middle for one in light]


def unlike_frac(one, other):
    """Return how much of two shapes differs, whichever of them is the darker."""
    same = sum(a == b for a, b in zip(one, other, strict=True)) / len(one)
    return min(same, 1 - same)


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_in_grey_each_state_keeps_a_shape_of_its_own_and_its_word(new_phone, scheme):
    phone = new_phone()
    phone.page.emulate_media(color_scheme=scheme)
    assert phone.run(RENDER, [*STATES]) == [*STATES.values()]
    pictures = []
    for state in STATES:
        shape = phone.page.locator(f"#grey-{state} .mark-shape")
        pictures.append(base64.b64encode(shape.screenshot()).decode())
    reader = phone.page.context.new_page()
    found = reader.evaluate(PIXELS, pictures)
    reader.close()
    assert all(one["isGrey"] for one in found)
    for one in found:
        assert max(one["light"]) - min(one["light"]) > 80  # it is seen at all
    shapes = {
        state: outline(one["light"]) for state, one in zip(STATES, found, strict=True)
    }
    for one, other in itertools.combinations(shapes, 2):
        assert unlike_frac(shapes[one], shapes[other]) > UNLIKE_FRAC, (one, other)
