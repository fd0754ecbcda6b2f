"""What a tap works out anew, where sums answer figures of steps that are over."""

from server.core import desk as desk_of
from server.core.step import view as view_module
from server.core.step.steps import step_view
from tests.core.builders import MAKE, Phone, at
from tests.core.figures.test_figure import house


def test_a_reading_that_changes_no_figure_works_no_ended_step_out_anew(monkeypatch):
    phone = Phone()
    desk = desk_of.new()
    begun = [
        phone.event(kind, minute, step=step)
        for kind, minute, step in (
            ("step_begun", 1, "receive"),
            ("step_ended", 5, "receive"),
            ("step_begun", 6, "heat"),
            ("step_ended", 70, "heat"),
            ("step_begun", 71, "hold"),
        )
    ]
    desk_of.take(desk, house(phone) + begun)
    desk_of.view(desk, MAKE, at(72))
    asked = []

    def counted(context, step):
        asked.append(step["key"])
        return step_view(context, step)

    monkeypatch.setattr(view_module, "step_view", counted)
    read = {"quantity": "curd_temp_c", "value": 63.5, "step": "hold"}
    desk_of.take(desk, [phone.event("reading_taken", 73, **read)])
    shown = desk_of.view(desk, MAKE, at(74))
    full = [step["key"] for step in shown["steps"] if step["full"]]
    assert asked == full
    assert "heat" not in full
