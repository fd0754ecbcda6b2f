"""What can happen in a brine tank.

A tank is a stream of its own: its id stands in the place of the make's.
"""

from .columns import (
    LOAD,
    TANK,
    TYPED,
    TYPED_UNIT,
    field,
    kind,
    text,
)

OF_TANK = {
    "tank_opened": kind(
        "maker",
        [
            text("name", 80),
            field("mass_kg", "number", low=1.0, high=100000.0, unit="kg"),
            field("salt_frac", "number", low=0.0, high=0.2660, unit="fraction"),
            TYPED,
            TYPED_UNIT,
        ],
        (TANK,),
        mends=("mass_kg",),
    ),
    "tank_loaded": kind(
        "helper",
        [
            text("load_make", 36),
            field("size", "key", low=1, high=60),
            field("wheels", "int", low=1, high=5000),
            field("mass_kg", "number", low=0.01, high=50000.0, unit="kg"),
            field("days", "number", required=False, low=0.0, high=365.0, unit="d"),
            TYPED,
            TYPED_UNIT,
        ],
        (TANK,),
        mends=("mass_kg",),
        passes=LOAD,
    ),
    "tank_unloaded": kind(
        "helper",
        [
            text("load", 36),
            field("mass_kg", "number", low=0.01, high=50000.0, unit="kg"),
            TYPED,
            TYPED_UNIT,
        ],
        (TANK,),
        mends=("mass_kg",),
    ),
    "salt_added": kind(
        "helper",
        [
            field("mass_kg", "number", low=0.001, high=10000.0, unit="kg"),
            TYPED,
            TYPED_UNIT,
        ],
        (TANK,),
        mends=("mass_kg",),
    ),
    "water_added_to_tank": kind(
        "helper",
        [
            field("mass_kg", "number", low=0.001, high=100000.0, unit="kg"),
            TYPED,
            TYPED_UNIT,
        ],
        (TANK,),
        mends=("mass_kg",),
    ),
}
