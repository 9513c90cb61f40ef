"""The forms of an opening: all of it, or only what was measured on site."""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import asdict, replace
from typing import Any, ClassVar, cast

from django import forms

from fronts.facts.rows import columns_of, from_values
from fronts.facts.size_form_fields import Sizes
from fronts.pages.measure.forms.door_choice import DoorField, offer_doors
from fronts.pages.shared.inherited import NO_LEVELS, offer_inherited
from fronts.pages.shared.item_choice import NO_LIST, Items, offer_items
from fronts.pages.shared.kitchen_form import Group, KitchenForm, When
from fronts.rules.facts import facts_of, rows_of, single_facts
from fronts.rules.kinds import CLOSINGS
from fronts.rules.kitchen import FrontFacts, Measured, Opening
from fronts.rules.lengths import Mm, show
from fronts.rules.limits import MOST_FRONTS
from fronts.rules.next_opening import NextOpening
from fronts.rules.standards import EMPTY
from fronts.rules.validity import closings_with, front_faults
from fronts.selectors.standards import InForce
from shopjobs.forms.house import sentence

EACH = "front_"
"""Begins the name of a field that speaks of each front of the opening."""
USUAL_STACK = 3
"""How many drawers a stack is taken to have until somebody says."""
DIFFER = "they differ"
_OF_EACH = (
    "own_height", "glass", "machine", "room_behind",
    *(fact.name for fact, _ in rows_of(FrontFacts)),
)  # fmt: skip
"""What is said of each front by itself: its part of a stack, what only some kinds have, rows."""
_SHARED = tuple(fact.name for fact in facts_of(FrontFacts) if fact.name not in _OF_EACH)
_TAKEN = tuple(name for name, _, _ in single_facts(Measured, "measured_"))
_MEASURED = "Where these are filled in, they hold instead of the width and height above."


class MeasuredForm(KitchenForm):
    """Sizes of an opening taken on site."""

    also: ClassVar[tuple[tuple[type, str, tuple[str, ...]], ...]] = ((Measured, "measured_", ()),)
    groups: tuple[Group, ...] = (Group("Measured on site", _TAKEN, kind="cells"),)

    def __init__(self, *args: Any, before: Opening | None = None, **kwargs: Any) -> None:
        self.before = before
        if before is not None:
            # What the opening says of the standard has a form of its own, and a `front_thickness`.
            held = columns_of(replace(before, standard=EMPTY))
            kwargs["initial"] = {**held, **kwargs.get("initial", {})}
        super().__init__(*args, **kwargs)
        if before is not None:
            for name in _TAKEN[:4]:
                planned = before.width if "width" in name else before.height
                self.offer(name, f"planned {show(planned, self.unit)}")

    @property
    def entered(self) -> Opening:
        """The opening with what was taken on site; a form that only measures has one before it."""
        given = self.cleaned_data
        plain = {name.removeprefix("measured_"): given[name] for name in _TAKEN}
        before = cast(Opening, self.before)
        return replace(before, measured=from_values(Measured, plain))


class OpeningForm(MeasuredForm):
    """Everything that is known of an opening, and decided about its fronts together.

    Where the fronts differ in something, its field is empty, and left empty changes none.
    """

    facts = Opening
    without = ("standard",)
    also = ((FrontFacts, EACH, _OF_EACH),)
    groups = (
        Group("", ("label", "width", "height", "x", "y"), kind="cells"),
        Group("", ("closed_by", "front_hinged", "count", "heights"), kind="cells"),
        Group("Measured on site", _TAKEN, folded=True, hint=_MEASURED, kind="cells"),
        Group(
            "A front that exists: a door on hand, or one of this size",
            ("front_door_on_hand", "front_width", "front_height"),
            folded=True,
            kind="cells",
        ),
        Group(
            "How the front is made, and moved off its place",
            (
                "front_thickness",
                "front_build",
                "front_material",
                "front_grain",
                "front_grain_set",
                "front_hinge",
                "front_handle",
                "front_shift_x",
                "front_shift_y",
            ),
            folded=True,
            kind="cells",
        ),
    )

    used_when = {
        "front_hinged": When("closed_by", closings_with("hinged")),
        "front_hinge": When("closed_by", closings_with("hinge")),
        "count": When("closed_by", closings_with("count")),
        "heights": When("closed_by", closings_with("own_height")),
    }

    count = forms.IntegerField(
        label="How many drawers",
        min_value=1,
        max_value=MOST_FRONTS,
        required=False,
        widget=forms.TextInput(attrs={"inputmode": "numeric"}),
    )
    heights = Sizes(
        label="Front heights from the top",
        blanks=True,
        required=False,
        help_text="Empty: all alike. Those left out share the rest.",
    )
    front_door_on_hand = DoorField(label="Door on hand", required=False)

    def __init__(
        self,
        *args: Any,
        doors: Callable[[], Iterable[str]],
        items: Items = NO_LIST,
        levels: Mapping[str, InForce] = NO_LEVELS,
        **kwargs: Any,
    ) -> None:
        """`levels` are what holds for its fronts where they say nothing."""
        before: Opening | None = kwargs.get("before")
        if before is not None:
            kwargs["initial"] = {**_fronts_of(before), **kwargs.get("initial", {})}
        super().__init__(*args, **kwargs)
        fronts = before.fronts if before else ()
        named = {front.door_on_hand for front in fronts}
        offer_doors(self.fields["front_door_on_hand"], doors, named=named)
        offer_items(self, items, fronts, EACH)
        self.differing = frozenset(f"{EACH}{name}" for name in _SHARED if self._differ(name))
        offer_inherited(self, levels, EACH)
        for name in self.differing:
            self.offer(name, DIFFER)

    def clean(self) -> dict[str, Any]:
        """Drop what the chosen way of closing has no use for."""
        given = super().clean()
        closed_by = given.get("closed_by")
        if closed_by and CLOSINGS[closed_by].stack:
            self._check_stack(given)
        else:
            given["heights"] = ()
            self.errors.pop("count", None)
            self.errors.pop("heights", None)
        self._check_door(given)
        return given

    def _check_door(self, given: dict[str, Any]) -> None:
        """A door that is named must be one that can close this opening."""
        named, closed_by = given.get(f"{EACH}door_on_hand"), given.get("closed_by")
        if named and closed_by:
            faults = front_faults(FrontFacts(door_on_hand=named), CLOSINGS[closed_by])
            for name, fault in faults.items():
                self.add_error(f"{EACH}{name}", sentence(fault))

    def _check_stack(self, given: dict[str, Any]) -> None:
        """Every front of a stack has its place among the heights; what is left out is blank."""
        count, heights = given.get("count"), given.get("heights") or ()
        if "count" in self.errors:
            return
        if not count:
            self.add_error("count", "Enter how many drawers, like 3.")
        elif len(heights) > count:
            drawers = "1 drawer" if count == 1 else f"{count} drawers"
            self.add_error(
                "heights", f"These are {len(heights)} heights for {drawers}; leave some out."
            )

    @property
    def entered(self) -> Opening:
        """The opening as it was entered, with its fronts; what the form doesn't ask stays."""
        given, before = self.cleaned_data, self.before
        closing = CLOSINGS[given["closed_by"]]
        count = given["count"] if closing.stack else closing.fronts[0]
        held = (*(before.fronts if before else ()), *[FrontFacts()] * count)[:count]
        heights = (*given["heights"], *[None] * count)[:count]
        fronts = tuple(map(self._front, held, heights))
        standard = before.standard if before else EMPTY
        return self.stated(Opening, fronts=fronts, standard=standard)

    def _front(self, held: FrontFacts, own_height: Mm | None) -> FrontFacts:
        """One front with what is said of all of them; where they differ, silence changes none."""
        given = {name: self.cleaned_data[f"{EACH}{name}"] for name in _SHARED}
        door = given.pop("door_on_hand") or None
        whole = columns_of(FrontFacts()) | given | {"own_height": own_height}
        said = from_values(FrontFacts, whole, door_on_hand=door)
        silent = [name for name in _SHARED if self.cleaned_data[f"{EACH}{name}"] in (None, "")]
        kept = {name: getattr(held, name) for name in silent if self._differ(name)}
        alone = {name: getattr(held, name) for name in _OF_EACH if name != "own_height"}
        return replace(said, **alone, **kept)

    def _differ(self, name: str) -> bool:
        fronts = self.before.fronts if self.before else ()
        return len({getattr(front, name) for front in fronts}) > 1


def offered(known: NextOpening) -> dict[str, Any]:
    """What the form of a new opening starts with."""
    places = {name: size for name, size in asdict(known).items() if size is not None}
    return {"front_hinged": "left", "count": USUAL_STACK, **places}


def _fronts_of(before: Opening) -> dict[str, Any]:
    """What is decided alike about all fronts of the opening, and its stack."""
    values: dict[str, Any] = {"count": USUAL_STACK}
    if before.closing.stack:
        heights = tuple(front.own_height for front in before.fronts)
        values = {"count": len(before.fronts), "heights": heights if any(heights) else ()}
    for name in _SHARED:
        said = {getattr(front, name) for front in before.fronts}
        if len(said) == 1:
            values[f"{EACH}{name}"] = said.pop()
    return values
