"""Which standard suits the doors there are: tried one by one, against sums by hand and by force."""

from dataclasses import replace
from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.kinds import Mount, Unit
from fronts.rules.kitchen import CHOOSE, Cabinet, DoorOnHand, FrontFacts, Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Reveal, Standard
from fronts.rules.suited_standard import (
    FEWEST_CHOICES,
    MOST_FRONTS,
    Laps,
    Outcome,
    Range,
    best,
    best_without_more_stops,
    choices,
    most_choices,
    open_to_doors,
    outcome,
    outcomes,
    takes_doors,
    usual_range,
    with_laps,
)
from tests.rules.laws import KITCHEN_LAW
from tests.rules.small_kitchens import (
    HALF_LAP,
    SIXTEENTH,
    all_round,
    beside,
    cabinet,
    closed,
    door,
    inch,
    kitchen,
    opening,
)

ASKS = FrontFacts(door_on_hand=CHOOSE)
QUARTERS = [inch(each) for each in ("1/4", "1/2", "3/4")]


def asking(*sizes: tuple[str, str]) -> list[Cabinet]:
    """Cabinets in a row, an opening of each size, whose doors wait for one on hand."""
    row: list[Cabinet] = []
    for number, (width, height) in enumerate(sizes):
        hole = closed(opening(), width=inch(width), height=inch(height), front=ASKS)
        around = {"width": inch(width) + inch("3"), "height": inch(height) + inch("3")}
        one = cabinet(hole, **around)
        row.append(
            beside(row[-1], label=f"B{number + 1}", openings=(hole,), **around) if row else one
        )
    return row


def tried(of: Kitchen, lengths: list[Mm], mount: Mount = "overlay") -> list[Outcome]:
    """What comes of each length all round."""
    return list(outcomes(of, choices(mount, lengths, apart=False)))


BY_HAND = [
    # An opening 15 × 27 1/2: its front is 15 1/2 × 28 at 1/4, 16 × 28 1/2 at 1/2, 16 1/2 × 29.
    ("just the size at 1/2", [("16", "28 1/2")], [1, 1, 0], ["1", "0", "0"], "1/2"),
    ("larger than all by little", [("16 1/2", "29")], [1, 1, 1], ["2", "1", "0"], "3/4"),
    ("over the trim limit at 1/4", [("16 9/16", "29")], [0, 1, 1], ["0", "1 1/16", "1/16"], "3/4"),
    ("too small for all", [("15", "27")], [0, 0, 0], ["0", "0", "0"], "1/4"),
    ("the nearer of two", [("16 1/2", "29 1/2"), ("16 1/4", "29")], [1, 1, 1],
     ["1 3/4", "3/4", "1/2"], "3/4"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("doors", "served", "trimmed", "chosen"), [row[1:] for row in BY_HAND],
    ids=[row[0] for row in BY_HAND],
)  # fmt: skip
def test_by_hand(
    doors: list[tuple[str, str]], served: list[int], trimmed: list[str], chosen: str
) -> None:
    """Laps of 1/4, 1/2 and 3/4 in; a door serves that is larger by an inch each way at most."""
    on_hand = [door(f"D{number}", *size) for number, size in enumerate(doors)]
    found = tried(kitchen(*asking(("15", "27 1/2")), doors=on_hand), QUARTERS)

    assert [each.served for each in found] == served
    assert [each.trimmed for each in found] == [inch(each) for each in trimmed]
    assert [each.made for each in found] == [1 - each for each in served]
    assert best(found).laps == Laps("overlay", inch(chosen), inch(chosen))


def test_serving_more_doors_comes_before_sawing_less_off() -> None:
    """At 3/4 one door serves as it is; at 1/4 both do, and 3 in are sawn off."""
    doors = [door("D1", "15 1/2", "28"), door("D2", "16 1/2", "29")]
    of = kitchen(*asking(("15", "27 1/2"), ("15", "27 1/2")), doors=doors)
    found = tried(of, QUARTERS)

    assert [(each.served, each.trimmed) for each in found] == [
        (2, inch("2")), (1, inch("1")), (1, inch("0")),
    ]  # fmt: skip
    assert best(found).laps == Laps("overlay", inch("1/4"), inch("1/4"))


def test_inset_gaps() -> None:
    """An opening 15 × 27 1/2 takes a front 14 3/4 × 27 1/4 with gaps of 1/8."""
    of = kitchen(*asking(("15", "27 1/2")), doors=[door("D1", "14 3/4", "27 1/4")])
    found = tried(of, [inch("1/16"), inch("1/8"), inch("3/16")], "inset")

    assert [(each.served, each.trimmed) for each in found] == [
        (0, inch("0")), (1, inch("0")), (1, inch("1/4")),
    ]  # fmt: skip
    assert best(found).laps == Laps("inset", inch("1/8"), inch("1/8"))


def test_sides_and_ends_apart() -> None:
    """A door 15 1/2 × 29 laps 1/4 at the sides and 3/4 at the ends, with nothing sawn off."""
    of = kitchen(*asking(("15", "27 1/2")), doors=[door("D1", "15 1/2", "29")])
    found = list(outcomes(of, choices("overlay", QUARTERS, apart=True)))

    assert len(found) == 9
    chosen = best(found)
    assert chosen.laps == Laps("overlay", across=inch("1/4"), along=inch("3/4"))
    assert (chosen.served, chosen.trimmed) == (1, inch("0"))


def _outcome(*, stops: int = 0, misses: int = 0, made: int = 0) -> Outcome:
    return Outcome(Laps("overlay", Mm(made), Mm(made)), (), made, stops, misses)


def test_stops_and_lines_decide_between_equals() -> None:
    """Fewest stops, then fewest lines that miss, then the first, which is the smallest."""
    missing, stopping, even = _outcome(misses=1), _outcome(stops=1), _outcome(made=1)

    assert best([stopping, missing]) is missing
    assert best([missing, even]) is even
    assert best([even, _outcome(made=2)]) is even


def test_the_best_that_brings_no_further_stop() -> None:
    """A front past its cabinet's end is a stop: at 1 3/4 the lap is wider than the stile."""
    of = kitchen(*asking(("15", "27 1/2")), doors=[door("D1", "18 1/2", "31")])
    now = outcome(of)
    found = tried(of, [inch("1"), inch("1 3/4")])

    assert [each.stops > now.stops for each in found] == [False, True]
    assert [each.served for each in found] == [0, 1]
    assert best(found) is found[1]
    assert best_without_more_stops(found, now) is found[0]
    assert best_without_more_stops(found[1:], now) is None


def test_a_choice_is_what_the_kitchen_would_be() -> None:
    """Its figures are those of the schedule with that standard."""
    of = kitchen(*asking(("15", "27 1/2")), doors=[door("D1", "16 1/4", "29")])
    (found,) = tried(of, [inch("3/8")])
    worked_out = schedule(replace(of, standard=replace(HALF_LAP, overlay=all_round("3/8"))))

    assert found.uses == worked_out.doors_on_hand
    assert found.stops == sum(each.level == "stop" for each in worked_out.findings)
    assert found.misses == sum(each.code == "lines-miss" for each in worked_out.findings)


def test_a_lap_takes_the_place_of_a_reveal() -> None:
    """One level says how far fronts lap in one way only; all else stays."""
    said = Standard(reveal=Reveal(inch("1/8"), all_round("1/16")), gap_between=inch("3/32"))
    lapped = with_laps(said, Laps("overlay", inch("1/4"), inch("3/8")))

    assert (lapped.overlay, lapped.reveal) == (
        Laps("overlay", inch("1/4"), inch("3/8")).sides, None,
    )  # fmt: skip
    assert lapped.gap_between == inch("3/32")


def test_a_cabinet_that_says_its_own_keeps_it() -> None:
    """The choices are tried for all others."""
    (own,) = asking(("15", "27 1/2"))
    own = replace(own, standard=Standard(overlay=all_round("1/2")))
    found = tried(kitchen(own, doors=[door("D1", "16", "28 1/2")]), QUARTERS)

    assert [(each.served, each.trimmed) for each in found] == [(1, inch("0"))] * 3


RANGES = [
    ("one", ("1/2", "1/2", "1/16"), ["1/2"]),
    ("the end is reached", ("1/4", "1/2", "1/8"), ["1/4", "3/8", "1/2"]),
    ("the end is not on the step", ("1/4", "7/16", "1/8"), ["1/4", "3/8"]),
    ("from nothing", ("0", "1/4", "1/4"), ["0", "1/4"]),
]


@pytest.mark.parametrize(("given_range", "lengths"), [row[1:] for row in RANGES],
                         ids=[row[0] for row in RANGES])  # fmt: skip
def test_lengths_of_a_range(given_range: tuple[str, str, str], lengths: list[str]) -> None:
    """From the least, as far as the most."""
    allowed = Range(*(inch(each) for each in given_range))

    assert allowed.lengths == [inch(each) for each in lengths]
    assert allowed.count == len(lengths)


@pytest.mark.parametrize(
    ("mount", "unit", "step", "count"),
    [("overlay", "in", SIXTEENTH, 9), ("inset", "in", SIXTEENTH, 5),
     ("overlay", "mm", Mm(1), 14), ("inset", "mm", Mm(1), 5)],
)  # fmt: skip
def test_the_usual_range(mount: Mount, unit: Unit, step: Mm, count: int) -> None:
    """Common practice, no source: 1/4 to 3/4 in or 6 to 19 mm, and gaps in half steps."""
    job = kitchen(unit=unit, step=step).job

    assert usual_range(mount, job).count == count


def test_how_many_are_tried_at_once() -> None:
    """The fewer the more fronts there are, but never fewer than the usual range has."""
    few = kitchen(*asking(("15", "27 1/2")))
    many = replace(few, cabinets=few.cabinets * 1000)

    assert most_choices(few) == MOST_FRONTS
    assert most_choices(kitchen()) == MOST_FRONTS
    assert most_choices(many) == FEWEST_CHOICES
    assert usual_range("overlay", few.job).count <= FEWEST_CHOICES


def test_doors_of_open_size_are_open_to_doors() -> None:
    """Not drawers, nor glass, nor what has a size or a door already."""
    plain, stated = FrontFacts(hinged="left"), FrontFacts(width=inch("16"), height=inch("28"))
    named, glazed = FrontFacts(door_on_hand="D1"), FrontFacts(glass=True)
    fronts = [plain, stated, named, glazed]
    holes = [closed(opening(), front=front) for front in fronts]
    of = kitchen(cabinet(*holes, opening("drawer"), opening("pull-out")))

    assert not takes_doors(of)
    changed = [hole.fronts[0].door_on_hand for hole in open_to_doors(of).cabinets[0].openings]
    assert changed == [CHOOSE, None, "D1", None, None, CHOOSE]
    assert takes_doors(open_to_doors(of))


sizes = st.integers(0, 24).map(lambda n: inch("15") + n * SIXTEENTH)


@KITCHEN_LAW
@given(
    st.lists(st.tuples(sizes, sizes), min_size=1, max_size=3),
    st.lists(st.tuples(sizes, sizes), min_size=1, max_size=3),
    st.lists(st.integers(0, 12), min_size=1, max_size=4, unique=True),
)
def test_no_choice_beats_the_best(
    holes: list[tuple[Mm, Mm]], doors: list[tuple[Mm, Mm]], laps: list[int]
) -> None:
    """By force: every lap with every way to give doors to openings, in plain sums."""
    lengths = [number * SIXTEENTH for number in laps]
    on_hand = [DoorOnHand(f"D{i}", *size) for i, size in enumerate(doors)]
    row = [
        replace(one, openings=(replace(one.openings[0], width=width, height=height),))
        for one, (width, height) in zip(asking(*[("20", "20")] * len(holes)), holes, strict=True)
    ]

    chosen = best(tried(kitchen(*row, doors=on_hand), lengths))

    assert (chosen.served, -chosen.trimmed) == max(_by_force(holes, doors, lap) for lap in lengths)


def _by_force(holes: list[tuple[Mm, Mm]], doors: list[tuple[Mm, Mm]], lap: Mm) -> tuple[int, Mm]:
    """The most doors that serve, and the least sawn off with so many, as a loss."""
    ways = permutations([*doors, *[None] * len(holes)], len(holes))
    return max(_score(holes, way, lap) for way in ways)


def _score(
    holes: list[tuple[Mm, Mm]], way: tuple[tuple[Mm, Mm] | None, ...], lap: Mm
) -> tuple[int, Mm]:
    served, sawn = 0, Mm(0)
    for hole, given_door in zip(holes, way, strict=True):
        if given_door is None:
            continue
        over = [size - (side + 2 * lap) for size, side in zip(given_door, hole, strict=True)]
        if all(0 <= each <= TRIM_LIMIT for each in over):
            served += 1
            sawn += sum(over, Mm(0))
    return served, -sawn


TRIM_LIMIT = inch("1")
"""What a door may be larger by each way where nobody says (common practice, no source)."""
