"""The form of what is kept on the shelf."""

from typing import Any

from django import forms

from fronts.pages.shared.kitchen_form import Group, KitchenForm
from fronts.pages.shared.length_fields import LIST_EXAMPLES, Size, Sizes
from fronts.rules.kitchen import Stock

STOCK_FIELDS = (
    "screw_lengths", "slide_lengths", "knob_screw_lengths", "knob_thread", "knob_thread_depth",
)  # fmt: skip


class StockForm(KitchenForm):
    """Lengths on the shelf, and the thread of the knobs."""

    groups = (
        Group("", ("screw_lengths", "slide_lengths", "knob_screw_lengths")),
        Group("Knobs and pulls", ("knob_thread", "knob_thread_depth"), kind="cells wide"),
    )

    screw_lengths = Sizes(label="Mounting screws", required=False)
    slide_lengths = Sizes(label="Slides", required=False)
    knob_screw_lengths = Sizes(label="Knob screws", required=False)
    knob_thread = forms.CharField(
        label="Thread",
        max_length=20,
        help_text="Like 8-32 or M4.",
        error_messages={"required": "Enter the thread, like 8-32 or M4."},
    )
    knob_thread_depth = Size(
        label="Depth of the thread in the knob", small=True, asks="the thread's depth"
    )

    def __init__(self, *args: Any, stock: Stock, **kwargs: Any) -> None:
        kwargs.setdefault("initial", {name: getattr(stock, name) for name in STOCK_FIELDS})
        super().__init__(*args, **kwargs)
        for name in STOCK_FIELDS[:3]:
            self.fields[
                name
            ].help_text = f"Lengths with commas between them, like {LIST_EXAMPLES[self.unit]}."
