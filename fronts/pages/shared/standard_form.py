"""The form of one level of the house standard: what is empty, the farther level says."""

from collections.abc import Mapping
from typing import Any, cast

from fronts.facts.item_form_field import ItemField
from fronts.facts.rows import by_column
from fronts.pages.shared.item_choice import Items
from fronts.pages.shared.kitchen_form import Group, KitchenForm
from fronts.rules.fact_kinds import ItemCode, Text, Word
from fronts.rules.facts import single_facts
from fronts.rules.items import EDGE_WORDS
from fronts.rules.kinds import SIDES, Unit
from fronts.rules.lengths import Mm, show
from fronts.rules.standard_keys import Standard
from fronts.rules.unit_figures import UNIT_FIGURES
from fronts.rules.validity import standard_faults
from fronts.selectors.standards import DEFAULT, InForce
from shopjobs.forms.house import sentence

_BANDS = tuple(f"band_{side}" for side in SIDES)
_IN_PLACE_OF_CODES: Mapping[str, Mapping[str, str]] = {
    **dict.fromkeys(_BANDS, EDGE_WORDS),
    **{
        name: dict(fact.declared.words)
        for name, _, fact in single_facts(Standard)
        if isinstance(fact.declared, ItemCode) and fact.declared.words
    },
}
STANDARD_WORDS: Mapping[str, Mapping[str, str]] = {
    **_IN_PLACE_OF_CODES,
    **{
        name: fact.declared.words
        for name, _, fact in single_facts(Standard)
        if isinstance(fact.declared, Word)
    },
}
"""What people call the words that a level chooses from, by the column."""
_EMPTY: Mapping[str, str] = {
    name: fact.declared.empty
    for name, _, fact in single_facts(Standard)
    if isinstance(fact.declared, Text)
}
"""What holds where no level says a text."""
NOT_SET = "not set"
_SITTING = ("mount", "gap_between", "least_gap")
_MADE_OF = (
    "front_build", "front_material", "front_thickness", "front_handle", "front_hinge",
)  # fmt: skip
_BOUGHT = (
    "made_by", "door_style", "species", "edge_profile", "panel_profile", "finish",
)  # fmt: skip


class StandardForm(KitchenForm):
    """Every key of the house standard at one level; a new key comes last of all by itself."""

    facts = Standard
    groups: tuple[Group, ...] = (
        Group("How fronts sit", _SITTING, kind="cells wide"),
        Group(
            "What fronts are made of, and what they hang on",
            _MADE_OF,
            hint="What a front says itself goes before it.",
            kind="cells wide",
        ),
        Group(
            "Overlay: how far a front laps past its opening",
            tuple(f"overlay_{side}" for side in SIDES),
            hint="Give the overlay or the reveal, not both.",
            kind="cells wide",
        ),
        Group(
            "Reveal: how much of a member stays in sight",
            ("reveal_between", *(f"reveal_{side}" for side in SIDES)),
            hint="Between two openings of a cabinet, and at each outer side of it.",
            kind="cells wide",
        ),
        Group("Inset: gap inside the opening", tuple(f"inset_{side}" for side in SIDES),
              kind="cells wide"),
        Group(
            "Edge bands of slab fronts",
            _BANDS,
            hint="A front is cut smaller by the thickness of its bands. A plain one, "
            "on plywood and particleboard, is too thin to be reckoned with.",
            kind="cells wide",
        ),
        Group(
            "Milled off an edge before its band goes on",
            tuple(f"premill_{side}" for side in SIDES),
            hint="A front is cut larger by it.",
            kind="cells wide",
        ),
        Group(
            "Making and hanging",
            tuple(
                name
                for name, path, _ in single_facts(Standard)
                if "." not in path and name not in (*_SITTING, *_MADE_OF, *_BOUGHT)
            ),
            kind="cells wide",
        ),
        Group(
            "Made here, or bought from a door maker",
            _BOUGHT,
            hint="What the door maker is told, in your own words; sizes, hands and bores follow.",
            kind="cells wide",
        ),
    )  # fmt: skip

    def __init__(
        self,
        *args: Any,
        levels: Mapping[str, InForce],
        items: Items,
        **kwargs: Any,
    ) -> None:
        """`items` are what may be named in each column that names one."""
        own = {name: held.value for name, held in levels.items() if held.own}
        kwargs.setdefault("initial", own)
        super().__init__(*args, **kwargs)
        for name, held in levels.items():
            self._show_beneath(name, held)
        for name, listed in items.items():
            field = cast(ItemField, self.fields[name])
            beside = tuple(_IN_PLACE_OF_CODES[name].items())
            field.offer(listed, [self.initial.get(name)], beside)

    def clean(self) -> dict[str, Any]:
        """A level says how far fronts lap in one way only."""
        given = super().clean()
        if not self.errors:
            for name, fault in by_column(Standard, standard_faults(self.entered)).items():
                self.add_error(name, sentence(fault))
        return given

    @property
    def entered(self) -> Standard:
        """What the level says."""
        return self.stated(Standard)

    def _show_beneath(self, name: str, held: InForce) -> None:
        beneath, level = held.beneath, held.beneath_level
        if beneath is None and name == "back":
            beneath, level = UNIT_FIGURES[cast(Unit, self.unit)].back, DEFAULT
        said = STANDARD_WORDS.get(name, {}).get(str(beneath), beneath)
        if said is None or said == "":
            words = _EMPTY.get(name) or NOT_SET
        else:
            words = inherited(said, level, self.unit)
        self.offer(name, words)


def inherited(value: Mm | str, level: str, unit: str) -> str:
    """What holds where a level says nothing, and whose word it is: `1/2, from the shop`."""
    said = value if isinstance(value, str) else show(value, unit)
    if level == DEFAULT:
        return f"{said}, common practice"
    return f"{said}, from {'the ' if level in ('shop', 'job') else ''}{level}"
