"""A make that never was: its true course, and what instruments and people tell of it.

Replay, tests of alarms, practice and planning need milk whose truth is known. What
forecasts must never share is the law they forecast by, or they would be tested on
themselves: so nothing here imports formulas, sums or figures, and where they draw a
curve over time, this wing works the mechanism beneath it.

- `begin`, `acts`, `course`, `instruments`: the twin itself. `begin.begin` gives its
  state, `acts.act` does something to it, `course.advance` lets time pass,
  `instruments.read` shows what an instrument shows; `truth` is what is really so.
- `laws/`: heat of vat, jacket and air space; acid by growth and buffers; clotting;
  whey; pressing; salt and water through the layers of a wheel
- `plant`, `days`: what is usual, what is possible, and what an ordinary day is like
- `maker/`: a maker who follows a recipe by what its steps hold, late as people are
- `faults/`: what goes wrong, as data
- `play.play`: a whole make, as the entries that people write down
"""
