"""Builders for a small make of our own; invented figures, marked as such."""

import copy
import uuid

MAKE = "0193a5b0-0000-7000-8000-00000000000a"
DEVICES = (
    "0193a5b0-0000-7000-8000-0000000000d1",
    "0193a5b0-0000-7000-8000-0000000000d2",
)
BOOT = "0193a5b0-0000-7000-8000-0000000000b0"
START_MS = 1_790_000_000_000
MIN = 60_000


def at(minutes):
    """Return the instant so many minutes after the start, by the server's clock."""
    return START_MS + int(minutes * MIN)


def figure(value, unit, low=None, high=None):
    return {
        "value": value,
        "low": low,
        "high": high,
        "unit": unit,
        "source": "OURS",
        "status": "derived",
    }


def step(key, after=(), **rest):
    return {
        "key": key,
        "title": {"en": key},
        "do": [{"en": "Do " + key + "."}],
        "place": "vat",
        "after": list(after),
        "lasts": None,
        "end": {"by": "person"},
        **rest,
    }


def recipe():
    """A make cut down to one of each way a step can end."""
    return {
        "schema": 1,
        "id": "small-wheel",
        "version": 1,
        "title": {"en": "Small wheel"},
        "about": {"en": "A short recipe for tests."},
        "family": "washed_curd",
        "sources": {
            "OURS": {"title": "Our own", "where": "tests", "status": "derived"}
        },
        "milk": {"unit": "L", "low_l": 100, "high_l": 2000},
        "moulds": [
            {
                "size": "small",
                "title": {"en": "Small"},
                "wheel_kg": figure(1.4, "kg"),
                "diameter_m": figure(0.15, "m"),
                "height_m": figure(0.08, "m"),
                "share_frac": figure(1.0, "fraction"),
            }
        ],
        "yield_frac": figure(0.1, "fraction", 0.09, 0.11),
        "ingredients": [
            {
                "key": "rennet",
                "title": {"en": "Rennet"},
                "dose": {"per": "kg_milk", "amount": figure(0.2, "mL/kg")},
                "unit": "mL",
                "tolerance_frac": 0.05,
            }
        ],
        "figures": {"floc_factor": figure(3.0, "multiple", 2.5, 3.5)},
        "steps": [
            step(
                "receive",
                readings=[
                    {"quantity": "milk_volume_l", "when": "during", "required": True},
                    {"quantity": "drug_test", "when": "during", "required": True},
                ],
                place="tank",
            ),
            step(
                "heat",
                ["receive"],
                lasts=figure(3600, "s", 2700, 4500),
                end={
                    "by": "reading",
                    "quantity": "milk_temp_c",
                    "at_least": figure(63.0, "C"),
                },
                targets=[
                    {
                        "quantity": "milk_temp_c",
                        "figure": figure(63.9, "C", 63.0, 66.0),
                    }
                ],
                readings=[
                    {
                        "quantity": "milk_temp_c",
                        "when": "during",
                        "every_s": 600,
                        "required": True,
                    }
                ],
                cautions=["scald"],
                drift=[{"form": "temperature_high", "do": {"en": "Close the steam."}}],
            ),
            step(
                "hold",
                ["heat"],
                lasts=figure(1800, "s", 1800, 2100),
                end={"by": "time"},
                targets=[
                    {
                        "quantity": "milk_temp_c",
                        "figure": figure(63.9, "C", 63.0, 66.0),
                    }
                ],
                drift=[
                    {"form": "temperature_low", "do": {"en": "Start the hold again."}},
                    {"form": "time_late", "do": {"en": "Go on."}},
                ],
            ),
            step("fans", ["hold"]),
            step("rennet", ["hold", "fans"], adds=["rennet"]),
            step(
                "set",
                ["rennet"],
                lasts=figure(1800, "s", 1500, 2400),
                end={"by": "floc", "from_step": "rennet"},
                judge={
                    "choices": [
                        "not_flocculated",
                        "flocculated",
                        "soft",
                        "clean_break",
                        "past_it",
                    ],
                    "from_frac": 0.85,
                },
            ),
            step(
                "cut",
                ["set"],
                lasts=figure(540, "s", 420, 720),
                end={"by": "judged", "judgement": ["even"]},
                judge={"choices": ["uneven", "even"], "from_frac": 0.5},
            ),
            step("fill", ["cut"], mould=True, closes_day=True),
            step("store", ["fill"], lasts=figure(86400 * 28, "s"), place="store"),
        ],
    }


OWN_HOLD = {
    "by": "own",
    "why": {"en": "Ours."},
    "temp": {"F": figure(147, "F", 145), "C": figure(64, "C", 63)},
    "air_rise": {"F": figure(5, "F_rise"), "C": figure(3, "K")},
    "gap_max_s": figure(600, "s"),
}


def three_ways():
    """The short recipe with a way for each treatment."""
    found = recipe()
    found["milk"].update(
        treatments=["pasteurised", "heat_treated", "raw"],
        usual_treatment="heat_treated",
    )
    steps = {row["key"]: row for row in found["steps"]}
    for key in ("heat", "hold", "fans"):
        steps[key]["treatments"] = ["pasteurised", "heat_treated"]
    steps["hold"]["heat_treatment"] = True
    steps["hold"]["by_treatment"] = {
        "heat_treated": {
            "heat_treatment": copy.deepcopy(OWN_HOLD),
            "lasts": figure(900, "s", 900, 1200),
        }
    }
    found["steps"].insert(3, step("mark", ["hold"], treatments=["pasteurised"]))
    steps["fans"]["after"] = ["mark"]
    found["steps"].insert(5, step("warm", ["receive"], treatments=["raw"]))
    steps["rennet"]["after"] = ["hold", "fans", "warm"]
    return found


class Phone:
    """Makes events as one installed copy of the app would."""

    def __init__(self, device=0, clock_off_ms=0, person="ida", make=MAKE):
        self.device = DEVICES[device]
        self.make = make
        self.clock_off_ms = clock_off_ms
        self.person = person
        self.seq = 0

    def event(self, kind, at_min, ref=None, **data):
        """Return an event observed `at_min` minutes after the start, true time."""
        self.seq += 1
        at_ms = at(at_min) - self.clock_off_ms
        number = uuid.uuid5(uuid.UUID(self.device), self.make + str(self.seq))
        return {
            "id": str(number),
            "make": self.make,
            "device": self.device,
            "seq": self.seq,
            "person": self.person,
            "at_ms": at_ms,
            "entered_ms": at_ms,
            "tz_min": 120,
            "mono_ms": 1000.5 * self.seq,
            "boot": BOOT,
            "off_ms": self.clock_off_ms,
            "off_q_ms": 40,
            "kind": kind,
            "v": 1,
            "ref": ref,
            "data": data,
        }

    def opened(self, **rest):
        body = {
            "name": "Make",
            "batch": "A1",
            "recipe": recipe(),
            "milk_l": 500.0,
            "moulds": [{"size": "small", "count": 30}],
        }
        body = {**body, **rest}
        # The house's usual way is another; most tests are about the one by rule.
        if "treatments" in str(body["recipe"]):
            body = {"treatment": "pasteurised", **body}
        return self.event("make_opened", 0, **body)

    def reading(self, quantity, value, at_min, step=None):
        data = {"quantity": quantity, "value": value}
        if step:
            data["step"] = step
        return self.event("reading_taken", at_min, **data)


def a_day(phone, **opened):
    """Return the events of a whole small make that goes by the recipe."""
    took = phone.event
    return [
        phone.opened(**opened),
        took("step_begun", 1, step="receive"),
        phone.reading("milk_volume_l", 500.0, 2, "receive"),
        phone.reading("drug_test", "negative", 3, "receive"),
        took("step_ended", 4, step="receive"),
        took("step_begun", 5, step="heat"),
        phone.reading("milk_temp_c", 20.0, 14, "heat"),
        phone.reading("milk_temp_c", 45.0, 34, "heat"),
        phone.reading("milk_temp_c", 63.9, 60, "heat"),
        took("step_ended", 61, step="heat"),
        took("step_begun", 61, step="hold"),
        phone.reading("milk_temp_c", 64.0, 75, "hold"),
        took("step_ended", 91, step="hold"),
        took("step_begun", 92, step="fans"),
        took("step_ended", 95, step="fans"),
        took("step_begun", 100, step="rennet"),
        took(
            "ingredient_added",
            101,
            ingredient="rennet",
            amount=103.0,
            unit="mL",
            step="rennet",
        ),
        took("step_ended", 102, step="rennet"),
        took("step_begun", 102, step="set"),
        took("curd_judged", 108, judgement="not_flocculated", step="set"),
        took("curd_judged", 110, judgement="flocculated", step="set"),
        took("curd_judged", 128, judgement="soft", step="set"),
        took("curd_judged", 131, judgement="clean_break", step="set"),
        took("step_ended", 131, step="set"),
        took("step_begun", 131, step="cut"),
        took("curd_judged", 139, judgement="even", step="cut"),
        took("step_ended", 140, step="cut"),
        took("step_begun", 150, step="fill"),
        took("wheels_moulded", 155, size="small", count=30, step="fill"),
        took("step_ended", 160, step="fill"),
        took("step_begun", 165, step="store"),
    ]


def until(events, at_min):
    """Return the events that were observed by a minute of the day."""
    return [row for row in events if row["at_ms"] + row["off_ms"] <= at(at_min)]
