"""What goes into the core and what it answers; the page's shapes are made of it.

All instants are the server's, in ms; numbers and message keys only. What is not
known is None and never left out, but where a field is `NotRequired`.
`deploy/page_shapes.py` writes `static/js/shapes.d.ts` from the modules of `TOLD`;
mypy holds the core to them, and the page's checker the page.
"""

# What the page is told. What else stands here, the core keeps to itself.
TOLD = (
    "words",
    "recipe",
    "heat",
    "matters",
    "step",
    "view",
    "record",
    "curve",
    "board",
    "alarms",
    "sums",
    "equipment",
    "brine",
    "trends",
)
