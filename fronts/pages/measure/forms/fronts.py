"""The form of one front: what is decided about it alone."""

from collections.abc import Callable, Iterable, Mapping
from typing import Any

from fronts.facts.rows import columns_of, from_values
from fronts.pages.measure.forms.door_choice import DoorField, offer_doors
from fronts.pages.measure.forms.row_forms import RowForm
from fronts.pages.shared.inherited import NO_LEVELS, offer_inherited
from fronts.pages.shared.item_choice import NO_LIST, Items, offer_items
from fronts.pages.shared.kitchen_form import Group, KitchenForm
from fronts.rules.facts import rows_of
from fronts.rules.kinds import Closing
from fronts.rules.kitchen import FrontFacts, HandlePlace
from fronts.rules.validity import belongs
from fronts.selectors.standards import InForce


class FrontForm(KitchenForm):
    """One front of an opening; a fact that its way of closing has no use for is not asked."""

    facts = FrontFacts
    groups = (
        Group(
            "", ("own_height", "hinged", "thickness", "build", "material", "made_by"), kind="cells"
        ),
        Group("Its hardware, and glass", ("hinge", "handle", "glass"), kind="cells"),
        Group(
            "A front that exists: a door on hand, or one of this size",
            ("door_on_hand", "width", "height"),
            kind="cells",
        ),
        Group("Its grain", ("grain", "grain_set"), kind="cells"),
        Group("Moved off its place", ("shift_x", "shift_y"), kind="cells"),
        Group(
            "What its machine takes, from the machine's booklet",
            (
                "machine_least_width", "machine_most_width", "machine_least_height",
                "machine_most_height", "machine_most_kg",
            ),
            kind="cells",
        ),
        Group("Before the sink", ("room_behind",), kind="cells"),
    )  # fmt: skip

    door_on_hand = DoorField(label="Door on hand", required=False)

    def __init__(
        self,
        *args: Any,
        before: FrontFacts,
        closing: Closing,
        doors: Callable[[], Iterable[str]],
        items: Items = NO_LIST,
        levels: Mapping[str, InForce] = NO_LEVELS,
        **kwargs: Any,
    ) -> None:
        """`levels` are what holds for the front where it says nothing."""
        self.before = before
        kwargs["initial"] = {**columns_of(before), "door_on_hand": before.door_on_hand}
        super().__init__(*args, **kwargs)
        for name in [name for name in self.fields if not belongs(name, closing)]:
            del self.fields[name]
        offered = doors if closing.single else list  # A named door serves a single front.
        offer_doors(self.fields["door_on_hand"], offered, named=[before.door_on_hand])
        offer_items(self, items, [before])
        offer_inherited(self, levels)

    @property
    def entered(self) -> FrontFacts:
        """What is decided about the front; its box and its handles' places stay as they are."""
        given = {**columns_of(FrontFacts()), **self.cleaned_data}
        door = given["door_on_hand"] or None
        held = {fact.name: getattr(self.before, fact.name) for fact, _ in rows_of(FrontFacts)}
        return from_values(FrontFacts, given, door_on_hand=door, **held)


class PlaceForm(RowForm):
    """A place of its own for a knob, or for the middle of a pull."""

    facts = HandlePlace
