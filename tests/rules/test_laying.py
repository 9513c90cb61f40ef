"""Where each front stands on its wall, worked by hand from the trade rules."""

from dataclasses import replace

import pytest

from fronts.rules.kitchen import FrontFacts, Measured
from fronts.rules.lengths import INCH, Mm
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from tests.rules.small_kitchens import all_round, cabinet, door, inch, kitchen, only_front, opening

INSET = Standard(mount="inset", inset_gap=all_round("3/32"))


def test_a_door_by_overlay() -> None:
    """15 × 27 1/2 and 1/2 in all round: 16 × 28 1/2, a half inch left and below."""
    front = only_front(kitchen(cabinet(opening())))

    assert (front.width, front.height) == (inch("16"), inch("28 1/2"))
    assert (front.x, front.y) == (inch("1"), inch("5"))
    assert front.edges.left.overlay == inch("1/2")
    assert front.is_new


def test_what_the_step_cuts_off_comes_off_both_edges() -> None:
    """1/32 in over the step: 1/64 in less overlay on either side."""
    front = only_front(kitchen(cabinet(opening(width=inch("15 1/32")))))

    assert front.width == inch("16")
    assert front.edges.left.overlay == front.edges.right.overlay == inch("31/64")


def test_a_pair() -> None:
    """33 in and 1/2 in each side less 1/8: two of 16 15/16, from the left."""
    wide = cabinet(opening("pair", width=inch("33")), width=inch("36"))
    left, right = schedule(kitchen(wide)).fronts

    assert left.width == right.width == inch("16 15/16")
    assert right.x - left.right == inch("1/8")
    assert (left.label, right.label) == ("B1.a.1", "B1.a.2")
    assert (left.hinged, right.hinged) == ("left", "right")
    assert left.edges.right.overlay is None
    assert (left.edges.right.gap, left.edges.right.faces) == (inch("1/8"), "B1.a.2")
    assert left.x == wide.left + inch("1")


def test_a_stack_is_named_from_the_top() -> None:
    """28 1/2 less two gaps in three: 9 3/8, and two steps for the lowest."""
    found = schedule(kitchen(cabinet(opening("drawers", count=3)))).fronts

    assert [each.label for each in found] == ["B1.a.1", "B1.a.2", "B1.a.3"]
    assert [each.height for each in found] == [inch("9 3/8"), inch("9 3/8"), inch("9 1/2")]
    assert found[2].y == inch("5")
    assert found[1].y == found[2].top + inch("1/8")
    assert found[0].top == inch("33 1/2")


def test_a_stack_with_a_height_of_its_own() -> None:
    """6 in on top; the others share 22 1/4 in."""
    stack = opening("drawers", count=3, heights=(inch("6"), None, None))
    found = schedule(kitchen(cabinet(stack))).fronts

    assert [each.height for each in found] == [inch("6"), inch("11 1/8"), inch("11 1/8")]


def test_inset() -> None:
    """15 × 27 1/2 less 3/32 in all round; on a step of 1/32 in nothing is lost."""
    of = replace(kitchen(cabinet(opening()), standard=INSET, step=inch("1/32")))
    front = only_front(of)

    assert (front.width, front.height) == (inch("14 13/16"), inch("27 5/16"))
    assert front.plane == "inset"
    assert front.edges.top.overlay == inch("-3/32")


def test_inset_by_the_least_and_overlay_by_the_greatest() -> None:
    """Measured widths of 15 and 14 31/32."""
    of = opening(measured=Measured(width_top=inch("15"), width_bottom=inch("14 31/32")))
    step = inch("1/32")

    inset = only_front(kitchen(cabinet(of), standard=INSET, step=step))
    lapping = only_front(kitchen(cabinet(of), step=step))

    assert inset.width == inch("14 25/32")
    assert lapping.width == inch("16")


LAPS = [
    ("15 1/2", "28", "1/4", "1/4", "overlay"),
    ("14 3/4", "27 1/8", "-1/8", "-3/16", "inset"),
]


@pytest.mark.parametrize(("width", "height", "across", "up", "plane"), LAPS, ids=["laps", "inset"])
def test_a_door_on_hand(width: str, height: str, across: str, up: str, plane: str) -> None:
    """Centred on its opening: common practice, no source (the check values of a conversion)."""
    of = opening(front=FrontFacts(door_on_hand="D1"))
    front = only_front(kitchen(cabinet(of), doors=[door("D1", width, height)]))

    assert front.edges.left.overlay == front.edges.right.overlay == inch(across)
    assert front.edges.top.overlay == front.edges.bottom.overlay == inch(up)
    assert front.plane == plane
    assert (front.door_on_hand, front.is_new) == ("D1", False)
    assert (front.trim_width, front.trim_height) == (Mm(0), Mm(0))


def test_a_door_on_hand_goes_by_the_widths_that_it_laps() -> None:
    """Wider than the opening: against the greatest width; narrower: against the least."""
    of = opening(
        front=FrontFacts(door_on_hand="D1"),
        measured=Measured(width_top=inch("15"), width_bottom=inch("15 1/8")),
    )

    wide = only_front(kitchen(cabinet(of), doors=[door("D1", "16", "28 1/2")]))
    narrow = only_front(kitchen(cabinet(of), doors=[door("D1", "14 3/4", "27 1/8")]))

    assert wide.edges.left.overlay == inch("7/16")
    assert narrow.edges.left.overlay == inch("-1/8")


def test_a_front_off_centre() -> None:
    """Shifted 1/16 in right and 1/8 in up: the overlays say so."""
    wish = FrontFacts(shift_x=inch("1/16"), shift_y=inch("1/8"))
    edges = only_front(kitchen(cabinet(opening(front=wish)))).edges

    assert (edges.left.overlay, edges.right.overlay) == (inch("7/16"), inch("9/16"))
    assert (edges.bottom.overlay, edges.top.overlay) == (inch("3/8"), inch("5/8"))


def test_only_a_width_is_given() -> None:
    """The width stands centred; the height follows the rule."""
    front = only_front(kitchen(cabinet(opening(front=FrontFacts(width=inch("15 1/2"))))))

    assert (front.width, front.height) == (inch("15 1/2"), inch("28 1/2"))
    assert front.edges.left.overlay == inch("1/4")
    assert front.edges.top.overlay == inch("1/2")


def test_a_chosen_door_is_trimmed_to_the_rule() -> None:
    """The front has the rule's size; half an inch comes off the door in height."""
    of = opening(front=FrontFacts(door_on_hand="choose"))
    found = schedule(kitchen(cabinet(of), doors=[door("D1", "16", "29")]))

    assert found.fronts[0].height == inch("28 1/2")
    assert [(u.door, u.front, u.trim_width, u.trim_height) for u in found.doors_on_hand] == [
        ("D1", "B1.a", Mm(0), inch("1/2"))
    ]


def test_on_the_wall() -> None:
    """Places are the cabinet's and the opening's together, less the overlay."""
    front = only_front(kitchen(cabinet(opening(), x=inch("40"), y=inch("54"))))

    assert (front.x, front.y) == (inch("41"), inch("55"))


def test_a_step_in_millimetres() -> None:
    """16 in is 406.4 mm: 406 on a step of 1 mm."""
    front = only_front(kitchen(cabinet(opening()), unit="mm", step=INCH / INCH))

    assert front.width == 406
    assert front.edges.left.overlay == inch("1/2") - inch("0.2 mm")


def test_a_stack_may_be_moved_front_by_front() -> None:
    """What is decided about one front of a stack leaves the others where they are."""
    plain = opening("drawers", count=3)
    low = replace(plain.fronts[2], shift_x=inch("1/16"), shift_y=inch("-1/8"))
    moved = replace(plain, fronts=(*plain.fronts[:2], low))

    before, after = (schedule(kitchen(cabinet(of))).fronts for of in (plain, moved))

    assert [(front.x, front.y) for front in after[:2]] == [
        (front.x, front.y) for front in before[:2]
    ]
    assert after[2].x - before[2].x == inch("1/16")
    assert after[2].y - before[2].y == inch("-1/8")


def test_fronts_of_one_stack_may_differ_in_how_they_are_made() -> None:
    """The top front a slab, the others five-piece, one of another wood and thickness."""
    framed = FrontFacts(build="five-piece")
    fronts = (FrontFacts(build="slab"), framed, replace(framed, material="cherry"))
    stack = replace(opening("drawers", count=3), fronts=fronts)

    made = schedule(kitchen(cabinet(stack))).fronts

    assert [front.build for front in made] == ["slab", "five-piece", "five-piece"]
    assert [front.material for front in made] == ["MDF", "hard maple", "cherry"]


def test_leaves_of_a_pair_may_differ_where_one_exists() -> None:
    """The leaf that is there keeps its width; the other takes what is left down to the step."""
    leaves = (FrontFacts(width=inch("9")), FrontFacts())
    pair = replace(opening("pair"), fronts=leaves)

    left, right = schedule(kitchen(cabinet(pair))).fronts

    assert (left.width, right.width) == (inch("9"), inch("6 7/8"))  # 15 + 2 × 1/2 - 1/8 - 9
    assert right.x - (left.x + left.width) == inch("1/8")


PAIRS = [("7 3/8", "14 7/8"), ("7 1/2", "15 1/8")]
"""Leaves that exist, and what two of them come to with 1/8 between: inside 15, or over it."""


@pytest.mark.parametrize(("leaf", "total"), PAIRS, ids=["inside", "over"])
def test_a_pair_that_exists_goes_by_the_widths_that_it_laps(leaf: str, total: str) -> None:
    """An opening 15 wide at the top and 14 1/2 at the bottom: by the greatest where it laps."""
    leaves = (FrontFacts(width=inch(leaf), height=inch("28")),) * 2
    taken = Measured(width_top=inch("15"), width_bottom=inch("14 1/2"))
    pair = replace(opening("pair"), fronts=leaves, measured=taken)

    left, right = schedule(kitchen(cabinet(pair))).fronts

    laps = inch(total) > inch("15")
    over = (inch(total) - inch("15" if laps else "14 1/2")) / 2
    assert left.edges.left.overlay == right.edges.right.overlay == over
