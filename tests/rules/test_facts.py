"""How facts are declared: what follows from a declaration, and what is refused."""

from dataclasses import dataclass
from typing import Annotated, get_type_hints

import pytest

from fronts.rules.box_facts import Box, ShelfPins
from fronts.rules.fact_kinds import Length, Text
from fronts.rules.facts import facts_of, incomplete, may_be_missing, single_fact, single_facts
from fronts.rules.job_facts import JobFacts, Stock
from fronts.rules.kitchen import Cabinet, DoorOnHand, FrontFacts, Opening
from fronts.rules.lengths import Mm
from fronts.rules.standard_keys import Standard
from tests.rules.small_kitchens import inch

THINGS = [Box, Cabinet, DoorOnHand, FrontFacts, JobFacts, Opening, ShelfPins, Standard, Stock]
IDS = [kind.__name__ for kind in THINGS]


@dataclass(frozen=True)
class Bare:
    """A thing of which somebody forgot to say what its fact is."""

    width: Mm


@dataclass(frozen=True)
class Peg:
    """A thing with one fact of each kind that matters here."""

    length: Annotated[Mm, Length("length")]
    wood: Annotated[str | None, Text("wood", 10)] = None


@pytest.mark.parametrize("kind", THINGS, ids=IDS)
def test_every_field_of_a_thing_is_declared(kind: type) -> None:
    """In its order, each with words of its own."""
    facts = facts_of(kind)

    assert [fact.name for fact in facts] == list(get_type_hints(kind))
    assert all(fact.declared.says for fact in facts)


def test_a_field_that_is_not_declared_is_refused() -> None:
    """It would be carried by half."""
    with pytest.raises(TypeError, match=r"Bare\.width is not declared"):
        facts_of(Bare)


def test_a_fact_knows_whether_it_may_be_left_out() -> None:
    """By its type and its default."""
    length, wood = facts_of(Peg)

    assert (length.optional, length.has_default) == (False, False)
    assert (wood.optional, wood.has_default, wood.default) == (True, True, None)


def test_a_fact_is_found_by_its_path() -> None:
    """Also within a group, and for each side."""
    assert single_fact(Opening, "measured.width_top").declared.says == "width at the top"
    assert single_fact(Opening, "width").declared.says == "width"
    assert single_fact(Standard, "overlay.left").declared.says == "left"
    assert single_fact(Standard, "reveal.end.top").declared.says == "top"
    with pytest.raises(TypeError, match="Opening has no fact depth"):
        single_fact(Opening, "depth")


MISSING = [
    (Opening, "width", False),
    (Opening, "measured.width_top", True),
    (DoorOnHand, "knob_hole.x", True),
    (DoorOnHand, "bore_diameter", False),
    (Standard, "overlay.left", True),
    (Standard, "reveal.end.top", True),
    (Standard, "skin", True),
]


@pytest.mark.parametrize(("kind", "path", "may_be"), MISSING, ids=[path for _, path, _ in MISSING])
def test_what_is_in_an_optional_group_may_be_missing(kind: type, path: str, may_be: bool) -> None:
    """A door without a knob hole has no place of one."""
    assert may_be_missing(kind, path) is may_be


def test_of_what_is_said_of_sides_no_side_may_be_missing() -> None:
    """An overlay may be left to the farther level, but only all of it."""
    assert single_fact(Standard, "overlay").optional
    assert not single_fact(Standard, "overlay.left").optional


def test_names_of_columns_are_unique() -> None:
    """Two facts of one thing never share a column."""
    for kind in THINGS:
        names = [name for name, _, _ in single_facts(kind)]
        assert len(names) == len(set(names)), kind


def test_a_group_is_given_whole_or_not_at_all() -> None:
    """What is missing is named; what has a default is not."""
    given = {"knob_x": inch("1"), "knob_y": None, "knob_diameter": None}

    assert dict(incomplete(DoorOnHand, given)) == {
        "knob_y": "give every part of the knob hole, or none of it"
    }
    assert dict(incomplete(DoorOnHand, dict.fromkeys(given))) == {}
    assert set(dict(incomplete(Standard, {"reveal_left": inch("1")}))) == {
        "reveal_between", "reveal_right", "reveal_top", "reveal_bottom",
    }  # fmt: skip
