"""What can happen in a make."""

from ...recipe.steps.judgements import JUDGEMENTS
from ...recipe.treatments import TREATMENTS
from .columns import (
    ABOUT,
    ALARMS,
    ANYTHING,
    BEGIN,
    CLOSE,
    DOSES,
    END,
    EQUIPMENT,
    FACTS,
    LOG,
    MAYBE_STEP,
    MAYBE_WHY,
    PERSON,
    PHONE,
    READING,
    STANDING,
    STEP,
    TASKS,
    THE_STEP,
    TIMERS,
    WHEELS,
    WHY,
    field,
    kind,
    text,
)

OF_MAKE = {
    "make_opened": kind(
        "maker",
        [
            text("name", 80),
            text("batch", 20),
            field("recipe", "recipe"),
            field("milk_l", "number", low=1.0, high=50000.0, unit="L"),
            text("vat", 60, required=False),
            field("moulds", "moulds", required=False),
            field("equipment", "equipment_of_make", required=False),
            field("practice", "bool", required=False),
            field("treatment", "treatment", required=False, choices=TREATMENTS),
            # Which way each choice of its recipe goes; what is left out is chosen by
            # the step that begins first.
            field("options", "options", required=False),
        ],
        (ANYTHING,),
    ),
    # The steps of the make become those of the other route.
    "treatment_changed": kind(
        "maker",
        [field("treatment", "choice", choices=TREATMENTS), WHY],
        (ANYTHING,),
    ),
    "step_begun": kind(
        "helper", [THE_STEP, MAYBE_WHY], (FACTS, STEP), topic="step", passes=BEGIN
    ),
    "step_ended": kind(
        "helper", [THE_STEP, MAYBE_WHY], (FACTS, STEP), topic="step", passes=END
    ),
    "step_skipped": kind("maker", [THE_STEP, WHY], (FACTS, STEP), topic="step"),
    "reading_taken": kind(
        "helper",
        [
            field("quantity", "quantity"),
            field("value", "reading"),
            text("typed", 24, required=False),
            text("typed_unit", 12, required=False),
            MAYBE_STEP,
            text("place", 60, required=False),
        ],
        (STEP, READING),
        topic="quantity",
        mends=("value",),
    ),
    "ingredient_added": kind(
        "helper",
        [
            field("ingredient", "key", low=1, high=60),
            field("amount", "number", low=0.0, high=100000.0),
            text("unit", 12),
            field("planned", "number", required=False, low=0.0, high=100000.0),
            text("lot", 40, required=False),
            text("use_by", 10, required=False),
            MAYBE_STEP,
        ],
        (STEP, DOSES),
        topic="ingredient",
        mends=("amount", "lot"),
        passes=BEGIN,
    ),
    "curd_judged": kind(
        "helper",
        [field("judgement", "choice", choices=JUDGEMENTS), MAYBE_STEP],
        (FACTS, STEP),
        topic="step",
    ),
    "timer_started": kind(
        "helper",
        [
            text("label", 60),
            field("lasts_s", "number", low=1.0, high=31536000.0, unit="s"),
            MAYBE_STEP,
        ],
        (TIMERS,),
        mends=("label",),
    ),
    "timer_stopped": kind("helper", [MAYBE_WHY], (TIMERS,), ref="required"),
    "wheels_moulded": kind(
        "helper",
        [
            field("size", "key", low=1, high=60),
            field("count", "int", low=0, high=5000),
            field("mass_kg", "number", False, low=0.0, high=50000.0, unit="kg"),
            MAYBE_STEP,
        ],
        (STEP, WHEELS),
        topic="size",
        mends=("count",),
        passes=BEGIN,
    ),
    "wheel_turned": kind(
        "helper",
        [
            field("size", "key", required=False, high=60),
            field("count", "int", required=False, low=0, high=5000),
            MAYBE_STEP,
        ],
        (STEP,),
    ),
    "note_added": kind(
        "helper", [text("text", 2000), MAYBE_STEP], (LOG,), mends=("text",)
    ),
    "entry_corrected": kind(
        "helper", [field("set", "set"), WHY], (ABOUT,), ref="required"
    ),
    "entry_struck": kind("helper", [WHY], (ABOUT,), ref="required"),
    "duplicate_judged": kind(
        "maker", [field("same", "bool")], (ABOUT,), ref="required"
    ),
    "alert_acknowledged": kind(
        "helper", [text("alert", 160), MAYBE_WHY], (ALARMS,), topic="alert"
    ),
    # Who was shown which cautions: for this day they need not see them again.
    "cautions_seen": kind(
        "helper", [field("cautions", "names", high=40), MAYBE_STEP], (LOG,)
    ),
    # At most one shift; it comes back by itself.
    "alarm_shelved": kind(
        "maker",
        [
            text("alert", 160),
            field("for_s", "number", low=60.0, high=28800.0, unit="s"),
            WHY,
        ],
        (ALARMS,),
        topic="alert",
    ),
    "task_taken": kind("helper", [THE_STEP], (STEP, TASKS), topic="step"),
    "task_released": kind("helper", [THE_STEP], (STEP, TASKS), topic="step"),
    # What the creamery has, once it is known: see `equipment`.
    "equipment_set": kind(
        "maker",
        [
            field("key", "key", low=1, high=60),
            field("value", "equipment"),
            text("typed", 24, required=False),
            text("typed_unit", 12, required=False),
            text("agreed_with", 80, required=False),
            MAYBE_WHY,
        ],
        (EQUIPMENT,),
        mends=("value",),
    ),
    # What stands of a make, by the id of its gate, and in which way it is decided; the
    # way's own role stands in the rules of matters.
    "matter_decided": kind(
        "maker",
        [
            field("matter", "key", low=1, high=60),
            field("way", "key", low=1, high=60),
            WHY,
        ],
        (ANYTHING,),
        topic="matter",
        proof=PERSON,
    ),
    "hold_placed": kind("maker", [WHY], (STANDING,), proof=PHONE),
    "hold_lifted": kind("maker", [WHY], (STANDING,), ref="required", proof=PERSON),
    "signed_off": kind("maker", [text("statement", 400)], (STANDING,), proof=PERSON),
    "make_closed": kind("maker", [MAYBE_WHY], (STANDING,), passes=CLOSE),
    "make_abandoned": kind("maker", [WHY], (STANDING,)),
}
