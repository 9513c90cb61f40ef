"""The form of what is kept on the shelf."""

from typing import Any

from fronts.facts.rows import columns_of
from fronts.facts.size_form_fields import Sizes
from fronts.pages.shared.kitchen_form import Group, KitchenForm
from fronts.pages.shared.list_hints import list_hint
from fronts.rules.job_facts import Stock


class StockForm(KitchenForm):
    """Lengths on the shelf, and the thread of the knobs."""

    facts = Stock
    groups = (
        Group("", ("screw_lengths", "slide_lengths", "knob_screw_lengths")),
        Group("Knobs and pulls", ("knob_thread", "knob_thread_depth"), kind="cells wide"),
    )

    def __init__(self, *args: Any, stock: Stock, **kwargs: Any) -> None:
        kwargs.setdefault("initial", columns_of(stock))
        super().__init__(*args, **kwargs)
        for name, field in self.fields.items():
            if isinstance(field, Sizes):
                field.help_text = list_hint(name, self.unit)
        self.fields["knob_thread"].help_text = "Like 8-32 or M4."

    @property
    def entered(self) -> Stock:
        """What is kept on the shelf."""
        return self.stated(Stock)
