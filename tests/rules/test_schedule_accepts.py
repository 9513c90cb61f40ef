"""A schedule is worked out for every kitchen that a job file may state, and always the same."""

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import assume, given, settings

from fronts.jobfile import Refused, read, write
from fronts.rules.fingerprint import fingerprint
from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.lengths import Mm, exact
from fronts.rules.practice import PRACTICE
from fronts.rules.schedule import schedule
from tests.kitchen_files import SAMPLES
from tests.rules.laws import KITCHEN_LAW
from tests.rules.small_kitchens import cabinet, inch, kitchen, only_front, opening
from tests.rules.strategies import grids, wild_kitchens
from tests.strategies import kitchens
from tests.strategies_of_hardware import equipped_kitchens


@settings(KITCHEN_LAW, max_examples=50)
@given(wild_kitchens())
def test_it_never_fails_for_a_kitchen_that_a_file_states(of: Kitchen) -> None:
    """However little its sizes go together: what is wrong is a finding."""
    try:
        taken = read(write(of))
    except Refused:
        assume(False)
        return
    found = schedule(taken)

    assert len({each.label for each in found.fronts}) == len(found.fronts)
    for each in found.fronts:
        assert each.width > 0
        assert each.height > 0


@KITCHEN_LAW
@given(kitchens() | grids() | equipped_kitchens())
def test_the_same_kitchen_gives_the_same_schedule(of: Kitchen) -> None:
    """Worked out twice, and from an equal snapshot that was read from a file."""
    again = read(write(of))

    assert again == of
    assert schedule(again) == schedule(of)
    assert fingerprint(schedule(again)) == fingerprint(schedule(of))


@KITCHEN_LAW
@given(kitchens() | equipped_kitchens())
def test_every_length_is_an_exact_number(of: Kitchen) -> None:
    """No binary float gets into a size or a place."""
    for each in schedule(of).fronts:
        for length in (each.width, each.height, each.x, each.y, each.thickness, each.weight_kg):
            assert isinstance(length, Fraction)
        assert exact(each.width)


@KITCHEN_LAW
@given(kitchens() | equipped_kitchens())
def test_a_door_on_hand_is_used_once(of: Kitchen) -> None:
    """Chosen doors serve one front each, and never one that was named; doubles are told."""
    found = schedule(of)
    used = [each.door for each in found.doors_on_hand]
    twice = {each for each in used if used.count(each) > 1}
    named = {f.door_on_hand for c in of.cabinets for o in c.openings for f in o.fronts}

    assert twice <= named
    assert len([each for each in found.findings if each.code == "door-used-twice"]) == len(twice)
    for each in found.doors_on_hand:
        front = found.front(each.front)
        door = next(d for d in of.doors_on_hand if d.label == each.door)
        assert door.width - each.trim_width == front.width
        assert door.height - each.trim_height == front.height


@pytest.mark.parametrize("count", [1, 2, 20])
def test_a_shop_may_hang_doors_on_any_number_of_hinges(count: int) -> None:
    """One hinge, halfway; twenty, which find no place on a door of 28 1/2 in."""
    own = replace(
        PRACTICE, hinges_by_height=((inch("90"), count),), hinges_by_weight=((Mm(40), count),)
    )
    front = only_front(kitchen(cabinet(opening()), practice=own))

    assert front.hinges == count
    if count == 1:
        assert front.hinge_centres == (front.height / 2,)
    assert len(front.hinge_centres) == (0 if count == 20 else count)


@pytest.mark.parametrize("own", ["material", "frame_material"])
def test_a_shop_may_name_a_material_that_nobody_knows(own: str) -> None:
    """Its fronts are weighed all the same, and it is told."""
    practice = replace(PRACTICE, **{own: "unheard of"})  # type: ignore[arg-type]
    wish = FrontFacts(build="slab" if own == "material" else "five-piece")
    of = kitchen(cabinet(opening(front=wish)), practice=practice)

    assert only_front(of).weight_kg > 0
    assert "material-unknown" in [each.code for each in schedule(of).findings]


@pytest.mark.parametrize("sample", SAMPLES, ids=[each.stem for each in SAMPLES])
def test_sample_files(sample: object) -> None:
    """Every sample kitchen has fronts, and each of them a weight."""
    text = sample.read_text(encoding="utf-8")  # type: ignore[attr-defined]
    found = schedule(read(text))

    assert found.fronts
    assert min(each.weight_kg for each in found.fronts) > 0
