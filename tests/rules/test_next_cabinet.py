"""What is known of the next cabinet: common practice, no source."""

import pytest

from fronts.rules.kinds import CabinetKind
from fronts.rules.next_cabinet import floor_of, members_of, next_cabinet, next_label, run_end
from tests.rules.small_kitchens import cabinet, inch, opening

B1 = cabinet(opening())
W1 = cabinet(label="W1", kind="wall", y=inch("54"), height=inch("30"), depth=inch("12"))
T1 = cabinet(label="T1", kind="tall", x=inch("18"))
B2 = cabinet(label="B2", x=inch("36"))
ELSEWHERE = cabinet(label="B3", wall="South", x=inch("100"))


def test_nothing_is_known_of_the_first() -> None:
    """A label and a wall are offered; what was never measured is not."""
    known = next_cabinet([], "base")

    assert (known.label, known.wall, known.build) == ("B1", "A", "face-frame")
    assert known.closed_by == ("door",)
    assert (known.height, known.depth, known.members) == (None, None, None)


def test_the_next_is_built_like_the_last_of_its_kind() -> None:
    """Height, depth, build and members are those of the last base cabinet, not of the last."""
    known = next_cabinet([cabinet(opening(), build="frameless"), W1], "base")

    assert (known.label, known.wall, known.build) == ("B2", "North", "frameless")
    assert (known.height, known.depth) == (inch("30 1/2"), inch("24"))
    assert known.members is not None
    assert (known.members.sides, known.members.below, known.members.above) == (
        inch("1 1/2"), inch("1 1/2"), inch("1 1/2"),
    )  # fmt: skip
    assert known.members.between is None
    assert next_cabinet([B1, W1], "wall").depth == inch("12")


def test_a_kind_that_is_new_is_built_like_the_latest_cabinet() -> None:
    """On its wall, to its build; its sizes are its own."""
    known = next_cabinet([cabinet(build="frameless", wall="East")], "tall")

    assert (known.label, known.wall, known.build) == ("T1", "East", "frameless")
    assert known.height is None


def test_a_drawer_over_a_door_is_offered_again() -> None:
    """With the member between and the drawer's height."""
    door = opening(height=inch("20"), hinged="right")
    drawer = opening("drawer", label="b", y=inch("23"), height=inch("6"))

    known = next_cabinet([cabinet(door, drawer)], "base")

    assert known.closed_by == ("drawer", "door")
    assert known.hinged == "right"
    assert known.members is not None
    assert (known.members.between, known.members.drawer_height) == (inch("1 1/2"), inch("6"))
    assert known.members.above == inch("1 1/2")


def test_members_are_those_round_the_highest_opening_and_the_lowest() -> None:
    """Three openings one over the other: between counts down from the highest."""
    low = opening(height=inch("6"), y=inch("4"))
    middle = opening("drawer", label="b", y=inch("12"), height=inch("6"))
    high = opening("drawer", label="c", y=inch("18 3/4"), height=inch("9"))

    found = members_of(cabinet(middle, high, low))

    assert found is not None
    assert (found.above, found.below, found.between, found.drawer_height) == (
        inch("2 3/4"), inch("4"), inch("3/4"), inch("9"),
    )  # fmt: skip


def test_openings_that_touch_have_a_member_of_nothing_between() -> None:
    """A frameless cabinet's drawer right over its door."""
    door = opening(height=inch("20"))
    drawer = opening("drawer", label="b", y=inch("21 1/2"), height=inch("6"))

    found = members_of(cabinet(door, drawer))

    assert found is not None
    assert (found.between, found.drawer_height) == (inch("0"), inch("6"))


def test_a_stack_is_offered_again_with_its_drawers() -> None:
    """The number of drawers comes with it."""
    known = next_cabinet([cabinet(opening("drawers", count=4))], "base")

    assert (known.closed_by, known.count) == (("drawers",), 4)


def test_a_face_that_is_not_plain_is_not_offered() -> None:
    """Two doors one over the other are entered opening by opening."""
    low, high = opening(height=inch("12")), opening(label="b", y=inch("15"), height=inch("14"))

    assert next_cabinet([cabinet(low, high)], "base").closed_by == ()


def test_openings_side_by_side_have_no_member_between() -> None:
    """What lies between them upright is not asked for."""
    left = opening(width=inch("6"))
    right = opening(label="b", x=inch("9"), width=inch("6"))

    found = members_of(cabinet(left, right))

    assert found is not None
    assert (found.sides, found.between, found.drawer_height) == (inch("1 1/2"), None, None)


ENDS: list[tuple[CabinetKind, str]] = [("base", "54"), ("wall", "36"), ("tall", "54")]


@pytest.mark.parametrize(("kind", "end"), ENDS, ids=[kind for kind, _ in ENDS])
def test_a_run_goes_on_where_it_ended(kind: CabinetKind, end: str) -> None:
    """Standing cabinets run by themselves and hung ones by themselves; tall ones end both."""
    assert run_end([B1, T1, B2, ELSEWHERE, W1], "North", kind) == inch(end)


def test_an_empty_wall_begins_at_its_left_end() -> None:
    """Nothing stands on it yet."""
    assert run_end([B1], "West", "base") == 0


FLOORS: list[tuple[CabinetKind, str | None]] = [("base", "4"), ("wall", None), ("tall", "0")]


@pytest.mark.parametrize(("kind", "floor"), FLOORS, ids=[kind for kind, _ in FLOORS])
def test_how_high_it_begins(kind: CabinetKind, floor: str | None) -> None:
    """As the last of its kind; the first that stands, on the floor; the first that hangs: asked."""
    assert floor_of([B1], kind) == (None if floor is None else inch(floor))


LABELS = [
    (["B2", "B3", "B1"], None, "B4"),
    (["B2"], "Sink", "Sink2"),
    (["B9"], None, "B10"),
    (["Island 1 low"], None, "Island 2 low"),
    (["Sink", "Sink2"], "Sink", "Sink3"),
    ([], None, "B1"),
]


@pytest.mark.parametrize(("taken", "after", "label"), LABELS, ids=[label for *_, label in LABELS])
def test_labels_count_on_and_miss_those_that_are_taken(
    taken: list[str], after: str | None, label: str
) -> None:
    """A label goes on counting from the last, or from the one that is copied."""
    cabinets = [cabinet(label=each) for each in taken]

    assert next_label(cabinets, "base", after) == label
