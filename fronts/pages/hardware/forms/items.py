"""The forms of items of hardware, a kind each."""

from collections.abc import Mapping
from typing import Any, ClassVar, cast

from fronts.facts.number_form_field import plain
from fronts.facts.rows import by_column, columns_of
from fronts.pages.shared.kitchen_form import Group, KitchenForm, When
from fronts.pages.shared.list_hints import list_hint
from fronts.rules.fact_kinds import Length, Lengths, Number
from fronts.rules.facts import single_facts
from fronts.rules.items import BandItem, HandleItem, HingeItem, LiftItem, SlideItem
from fronts.rules.kinds import MOUNTS, SLIDES, Unit
from fronts.rules.lengths import show, write
from fronts.rules.unit_figures import UNIT_FIGURES
from fronts.rules.validity import faults_of
from shopjobs.forms.house import sentence

_LAPS = tuple(mount for mount, traits in MOUNTS.items() if traits.laps)
_INSET = tuple(mount for mount in MOUNTS if mount not in _LAPS)
_BELOW = tuple(kind for kind, traits in SLIDES.items() if traits.below)
_NOTCHED = tuple(kind for kind, traits in SLIDES.items() if traits.notched)
_PLAIN = tuple(kind for kind in SLIDES if kind not in _NOTCHED)


class ItemForm(KitchenForm):
    """An item of one kind; what is left empty is as usual."""

    facts: ClassVar[type]
    labels: ClassVar[Mapping[str, str]] = {}
    """What fields are called where their group's words stand above them."""

    def __init__(self, *args: Any, held: Any = None, **kwargs: Any) -> None:
        if held is not None:
            kwargs.setdefault("initial", columns_of(held))
        super().__init__(*args, **kwargs)
        for name, _, fact in single_facts(self.facts):
            match fact.declared:
                case Lengths():
                    self.fields[name].help_text = list_hint(name, self.unit)
                case Length() if fact.has_default and fact.default:
                    self.offer(name, write(fact.default, self.unit))
                case Number() if fact.has_default and fact.default is not None:
                    self.offer(name, plain(fact.default))
        for name, label in self.labels.items():
            self.fields[name].label = label

    def clean(self) -> dict[str, Any]:
        """What the item says must fit together, each fault at its field."""
        given = super().clean()
        if not self.errors:
            for name, fault in by_column(self.facts, faults_of(self.entered)).items():
                self.add_error(name if name in self.fields else None, sentence(fault))
        return given

    @property
    def entered(self) -> Any:
        """The item as it was entered."""
        return self.stated(self.facts)


class HingeForm(ItemForm):
    """A hinge, by its fixed distance, plates and B, or by what it makes."""

    facts = HingeItem
    groups = (
        Group("", ("code", "name", "mount", "frame"), kind="cells wide"),
        Group(
            "On a plate: overlay = FD + B − plate",
            ("fixed_distance", "plates", "bore_least", "bore_most"),
            hint="FD: the fixed distance that its maker gives. B: from the door's edge to the "
            "rim of the cup.",
            kind="cells",
        ),
        Group(
            "Or what it makes: a list, or from and to",
            ("overlays", "overlay_least", "overlay_most", "gaps", "gap_least", "gap_most"),
            kind="cells wide",
        ),
        Group("Its cup", ("usual_bore", "cup_diameter", "cup_depth"), kind="cells"),
        Group(
            "How it adjusts, each way",
            ("adjust_side", "adjust_height", "adjust_depth", "turn"),
            kind="cells",
        ),
        Group("", ("angle", "screws", "most_door_thickness"), kind="cells"),
    )
    labels = {
        "bore_least": "B, at least", "bore_most": "B, at most",
        "overlay_least": "Overlays from", "overlay_most": "Overlays to",
        "gap_least": "Gaps from", "gap_most": "Gaps to", "fixed_distance": "FD at plate 0",
        "frame": "Goes on", "mount": "For fronts that are", "angle": "Opens to, °",
    }  # fmt: skip
    used_when = {
        name: When("mount", mounts)
        for mounts, names in (
            (_LAPS, ("overlays", "overlay_least", "overlay_most")),
            (_INSET, ("gaps", "gap_least", "gap_most")),
        )
        for name in names
    }


class SlideForm(ItemForm):
    """A slide, with what it asks of the box."""

    facts = SlideItem
    groups = (
        Group("", ("code", "name", "kind", "lengths", "load_kg"), kind="cells wide"),
        Group(
            "What it asks of the box; empty: as is usual for its kind",
            (
                "clearance", "inside_clearance", "tolerance", "below", "above", "width", "height",
                "recess", "most_side",
            ),
            kind="cells",
        ),
    )  # fmt: skip

    def __init__(self, *args: Any, held: SlideItem | None = None, **kwargs: Any) -> None:
        super().__init__(*args, held=held, **kwargs)
        if held is not None:
            usual = UNIT_FIGURES[cast(Unit, self.unit)].slides[held.kind]
            single = "inside_clearance" if held.kind in _NOTCHED else "clearance"
            for name, size in (
                (single, usual.clearance), ("tolerance", usual.tolerance), ("below", usual.below),
                ("above", usual.above), ("recess", usual.recess),
            ):  # fmt: skip
                self.offer(name, show(size, self.unit))

    used_when: Mapping[str, When] = {
        "clearance": When("kind", _PLAIN),
        "inside_clearance": When("kind", _NOTCHED),
        "height": When("kind", _BELOW),
        "recess": When("kind", _NOTCHED),
        "most_side": When("kind", _NOTCHED),
    }


class HandleForm(ItemForm):
    """A knob, or a pull where it has hole centres."""

    facts = HandleItem
    groups = (
        Group("", ("code", "name", "centres", "thread", "projection"), kind="cells wide"),
        Group("Which way a pull lies", ("door", "drawer"), kind="cells wide"),
    )

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.offer("centres", "a knob has none")
        self.fields["thread"].help_text = "Like 8-32 or M4."


class LiftForm(ItemForm):
    """A stay or lift, by what it carries."""

    facts = LiftItem
    labels = {
        "least": "Weight × height, least",
        "most": "Weight × height, most",
        "rise": "Open, it stands above its top by % of its height",
    }
    groups = (
        Group(
            "",
            ("code", "name", "least", "most", "rise"),
            hint="The front's weight times its height, in kg·m; 1 kg·m is about 87 lb·in.",
            kind="cells wide",
        ),
    )

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.offer("rise", "100")


class BandForm(ItemForm):
    """An edge band, by its thickness."""

    facts = BandItem
    groups = (
        Group(
            "",
            ("code", "name", "thickness", "width"),
            hint="Which edges it goes on is said in the house standard.",
            kind="cells wide",
        ),
    )
