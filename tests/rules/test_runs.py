"""Where cabinets and things stand along a wall."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise
from typing import Any

from hypothesis import given
from hypothesis import strategies as st
from hypothesis.strategies import DrawFn

from fronts.rules.kinds import CabinetKind
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.runs import followed_in_a_ring, on_walls, runs_of, standing_in, stood
from fronts.rules.schedule import schedule
from fronts.rules.thing_kinds import ThingKind
from fronts.rules.wall_facts import Thing, Wall
from fronts.rules.wall_results import RunLength
from tests.rules.laws import KITCHEN_LAW
from tests.rules.small_kitchens import inch, inches, kitchen

HIGH: dict[CabinetKind, tuple[str, str]] = {
    "base": ("4", "30 1/2"), "wall": ("54", "30"), "tall": ("4", "84"),
}  # fmt: skip
"""Above the floor, and high."""


def row(kind: CabinetKind, *labels: str, width: str = "10", **changes: Any) -> tuple[Cabinet, ...]:
    """Cabinets of this kind and width, beside each other, in a run."""
    y, height = (inch(each) for each in HIGH[kind])
    plain = Cabinet(
        label="", kind=kind, build="frameless", wall="North", x=None, y=y, width=inch(width),
        height=height, depth=inch("24"),
    )  # fmt: skip
    return tuple(replace(plain, label=label, **changes) for label in labels)


def thing(label: str, after: str | None, width: str = "3", **changes: Any) -> Thing:
    """A filler, or another thing, after something."""
    kind: ThingKind = changes.pop("kind", "filler")
    plain = Thing(label=label, kind=kind, wall="North", width=inch(width), after=after)
    return replace(plain, **changes)


def places(cabinets: Sequence[Cabinet], *others: Thing) -> dict[str, Mm]:
    """Where everything stands."""
    of = stood(kitchen(*cabinets, others=others))
    return {one.label: one.x for one in standing_in(of) if one.x is not None}


def _at(**said: str) -> dict[str, Mm]:
    return {label: inch(text) for label, text in said.items()}


def test_each_stands_where_the_last_one_ended() -> None:
    """The first at the wall's left end; wall cabinets have a run of their own."""
    of = (*row("base", "B1"), *row("wall", "W1"), *row("base", "B2", "B3"), *row("wall", "W2"))

    assert places(of) == _at(B1="0", B2="10", B3="20", W1="0", W2="10")


def test_a_thing_stands_after_what_it_follows() -> None:
    """Several after the same as they are listed; after nothing, first on the wall."""
    of = row("base", "B1", "B2")
    things = (thing("F1", "B1"), thing("E1", "F1", "1"), thing("F2", "B1", "2"), thing("F0", None))

    assert places(of, *things) == _at(F0="0", B1="3", F1="13", E1="16", F2="17", B2="19")


def test_a_thing_may_follow_one_that_is_listed_later() -> None:
    """Order is what follows what, not where it is listed."""
    of = row("base", "B1", "B2")

    assert places(of, thing("F2", "F1"), thing("F1", "B1")) == _at(
        B1="0", F1="10", F2="13", B2="16"
    )


def test_what_is_pinned_stays_and_the_run_goes_on_from_its_end() -> None:
    """A measured place holds, even over what stands there."""
    of = row("base", "B1", "B2", "B3")
    pinned = (of[0], replace(of[1], x=inch("30")), of[2])

    assert places(pinned) == _at(B1="0", B2="30", B3="40")
    back = (of[0], replace(of[1], x=inch("5")), of[2])
    assert places(back) == _at(B1="0", B2="5", B3="15")


def test_an_appliance_stands_on_the_floor_unless_it_says_otherwise() -> None:
    """What follows an upper thing is above; an appliance is not; a thing may say its run."""
    of = (*row("base", "B1"), *row("wall", "W1"))
    things = (
        thing("A1", "W1", "24", kind="appliance"),
        thing("F1", "W1"),
        thing("H1", "B1", "30", kind="appliance", run="upper"),
    )

    assert places(of, *things) == _at(B1="0", A1="10", H1="0", W1="30", F1="40")


def test_an_upper_thing_passes_what_reaches_above_its_bottom() -> None:
    """Over base cabinets, past a tall one and a tall appliance after it, one after another."""
    floor = (*row("base", "B1"), *row("tall", "T1"))
    fridge = thing("A1", "T1", "30", kind="appliance", height=inch("70"))

    assert places((*floor, *row("wall", "W1", "W2")), fridge) == _at(
        B1="0", T1="10", A1="20", W1="0", W2="50"
    )
    low = replace(fridge, height=inch("54"))
    assert places((*floor, *row("wall", "W1", "W2")), low)["W2"] == inch("20")


def test_what_is_pinned_does_not_pass() -> None:
    """A wall cabinet that was measured over a tall one stays there, and is found to overlap it."""
    of = (*row("tall", "T1"), *row("wall", "W1", x=inch("5")))

    assert places(of) == _at(T1="0", W1="5")
    assert "cabinets-overlap" in [each.code for each in schedule(kitchen(*of)).findings]


def test_an_upper_thing_without_a_height_hangs_as_its_neighbours() -> None:
    """As the wall cabinet before it; before the first, as the next: past the tall cabinet."""
    of = (*row("base", "B1"), *row("tall", "T1"), *row("wall", "W1"))

    assert places(of, thing("F1", "W1"))["F1"] == inch("20")
    assert places(of, thing("F1", None, "12", run="upper"))["F1"] == inch("20")
    assert places(of, thing("F1", None, "10", run="upper"))["F1"] == inch("0")


def test_an_upper_thing_alone_passes_nothing() -> None:
    """Where no wall cabinet tells how high it hangs, it stands where its run began."""
    hood = thing("H1", None, "30", kind="appliance", run="upper")

    assert places(row("tall", "T1"), hood)["H1"] == inch("0")


def test_walls_have_runs_of_their_own() -> None:
    """What stands on another wall moves nothing here."""
    of = (*row("base", "B1"), *row("base", "E1", wall="East"), *row("base", "B2"))

    assert places(of, thing("F1", None, wall="East")) == _at(B1="0", B2="10", F1="0", E1="3")


def test_what_follows_in_a_ring_is_known_as_such() -> None:
    """Two after each other have no place; what hangs on them is no ring itself."""
    things = (thing("F1", "F2"), thing("F2", "F1"), thing("F3", "F1"), thing("F4", "F4"))
    of = kitchen(*row("base", "B1"), others=things)

    assert followed_in_a_ring(of) == {"F1", "F2", "F4"}
    assert all(one.x is not None for one in stood(of).others)


def test_a_run_is_as_long_as_its_last_thing_reaches() -> None:
    """Left over of the wall; below zero past it; nothing of a wall without a length."""
    of = kitchen(
        *row("base", "B1", "B2"), *row("wall", "W1"), *row("base", "E1", wall="East"),
        others=(thing("F1", "B2"),), walls=(Wall("North", inch("20")), Wall("South", inch("90"))),
    )  # fmt: skip
    found = {wall.label: dict(wall.runs) for wall in schedule(of).walls}

    assert found == {
        "North": {
            "floor": RunLength(inch("23"), inch("-3")),
            "upper": RunLength(inch("10"), inch("10")),
        },
        "South": {},
        "East": {"floor": RunLength(inch("10"), None)},
    }


def test_the_schedule_says_where_each_cabinet_stands() -> None:
    """With the places of their runs, in the order of the job."""
    found = schedule(kitchen(*row("base", "B1", "B2"), others=(thing("F1", "B1"),))).cabinets

    assert [(each.label, each.x, each.y) for each in found] == [
        ("B1", *inches("0", "4")),
        ("B2", *inches("13", "4")),
    ]


@st.composite
def runs(draw: DrawFn) -> Kitchen:
    """Some cabinets and things along one wall, none of them pinned."""
    number = draw(st.integers(1, 6))
    cabinets = [
        row(draw(st.sampled_from(["base", "wall", "tall"])), f"C{index}",
            width=str(draw(st.integers(6, 40))))[0]
        for index in range(number)
    ]  # fmt: skip
    labels: list[str | None] = [None, *(one.label for one in cabinets)]
    things = []
    for index in range(draw(st.integers(0, 5))):
        kind = draw(st.sampled_from(["filler", "appliance", "gap"]))
        height = draw(st.none() | st.sampled_from(inches("34", "80")))
        after = draw(st.sampled_from(labels))
        width = str(draw(st.integers(1, 36)))
        things.append(thing(f"T{index}", after, width, kind=kind, height=height))
        labels.append(f"T{index}")
    return kitchen(*cabinets, others=things)


@KITCHEN_LAW
@given(runs())
def test_runs_are_close_and_free(of: Kitchen) -> None:
    """Floor things stand close; upper ones in order, and clear of what is tall below them."""
    found = runs_of(of)["North"]

    assert [one.x for one in found["floor"][:1]] in ([], [0])
    for one, other in pairwise(found["floor"]):
        assert other.x == one.right
    for one, other in pairwise(found["upper"]):
        assert other.x >= one.right
    for upper in found["upper"]:
        for low in found["floor"]:
            tall = upper.y is not None and low.top > upper.y
            assert not tall or low.right <= upper.x or upper.right <= low.x


@KITCHEN_LAW
@given(runs(), st.data())
def test_a_change_moves_what_comes_after_alone(of: Kitchen, data: st.DataObject) -> None:
    """Resizing one thing leaves what stands before it in its run; the rest moves as far."""
    place = data.draw(st.integers(0, len(of.cabinets) - 1))
    more = inch(str(data.draw(st.integers(1, 20))))
    changed = of.cabinets[place]
    wider = replace(changed, width=changed.width + more)
    cabinets = (*of.cabinets[:place], wider, *of.cabinets[place + 1 :])
    was = on_walls(runs_of(of))
    now = {one.what.label: one.x for one in on_walls(runs_of(replace(of, cabinets=cabinets)))}

    floor = [one for one in was if one.run == "floor"]
    changed_run = "upper" if changed.kind == "wall" else "floor"
    at = next(one.x for one in was if one.what.label == changed.label)
    if changed_run == "floor":
        for one in floor:
            assert now[one.what.label] == (one.x + more if one.x > at else one.x)
    else:
        assert all(now[one.what.label] == one.x for one in floor)
        for one in was:
            assert one.run == "floor" or one.x > at or now[one.what.label] == one.x


@KITCHEN_LAW
@given(runs())
def test_a_kitchen_that_stands_stays(of: Kitchen) -> None:
    """Places that were laid out are pinned: laid out again they are the same."""
    assert stood(stood(of)) == stood(of)
    assert runs_of(stood(of))["North"] == {
        run: tuple(replace(one, what=replace(one.what, x=one.x)) for one in standing)
        for run, standing in runs_of(of)["North"].items()
    }
