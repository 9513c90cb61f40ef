"""The largest scale that keeps its room: the same that step by step trials find, in far fewer."""

from collections.abc import Callable, Sequence
from fractions import Fraction

import pytest

from fronts.drawings import cabinet, front_back
from fronts.drawings.drawing import EDGE, Drawing
from fronts.drawings.front_back import front_from_back
from fronts.drawings.scale import largest, largest_of
from fronts.drawings.svg import Px
from fronts.rules.lengths import Mm
from tests.drawings.kitchens import BORES, demo, demo_cabinets

ROOMS = [(698_00, 500_00), (360_00, 380_00), (340_00, 200_00)]
Draw = Callable[[int], Drawing]


def step_by_step(draw: Draw, first: int, room: tuple[Px, Px]) -> tuple[int, Drawing]:
    """Each scale a twentieth smaller, all of them drawn."""
    size = first
    for _ in range(40):
        taken = draw(size).bounds().grown(EDGE)
        if taken.width <= room[0] and taken.height <= room[1]:
            break
        size = max(1, size * 19 // 20)
    return size, draw(size)


def in_ways_step_by_step(
    ways: Sequence[Draw], first: int, room: tuple[Px, Px], thing: tuple[Mm, Mm], *, least: Fraction
) -> Drawing:
    """As large as each way goes, until one is large enough."""
    for draw in ways:
        size, drawing = step_by_step(draw, first, room)
        if size >= least:
            break
    return drawing


def drawings() -> list[str]:
    """The demo's cabinets and backs, in rooms as sheets and pages have."""
    of, schedule = demo()
    found = [
        cabinet.cabinet_elevation(schedule, of, label, unit="in", room=room)
        for label in demo_cabinets()
        for room in ROOMS
    ]
    for front in schedule.fronts:
        fitting = schedule.fitting(front.label)
        found += [front_from_back(front, fitting, BORES, unit="in", room=room) for room in ROOMS]
    return found


def test_few_trials_find_what_all_trials_find(monkeypatch: pytest.MonkeyPatch) -> None:
    """Every drawing of the demo to the letter, in less than a third of the trials.

    But for one in a hundred at most: where a label finds another place from one step to the next,
    a drawing may keep its room at a scale, not at the next smaller, and again at the one after.
    """
    trials = [0, 0]

    def counted(which: int, search: Callable[..., Drawing]) -> Callable[..., Drawing]:
        def searched(ways: Sequence[Draw], *args: object, **named: object) -> Drawing:
            def drawn(draw: Draw, size: int) -> Drawing:
                trials[which] += 1
                return draw(size)

            def tried(draw: Draw) -> Draw:
                return lambda size: drawn(draw, size)

            return search([tried(draw) for draw in ways], *args, **named)

        return searched

    monkeypatch.setattr(cabinet, "largest_of", counted(0, largest_of))
    monkeypatch.setattr(front_back, "largest_of", counted(0, largest_of))
    found = drawings()
    monkeypatch.setattr(cabinet, "largest_of", counted(1, in_ways_step_by_step))
    monkeypatch.setattr(front_back, "largest_of", counted(1, in_ways_step_by_step))

    wanted = drawings()
    others = sum(one != other for one, other in zip(found, wanted, strict=True))

    assert others * 100 <= len(found)
    assert trials[0] * 3 < trials[1]


def test_what_keeps_no_room_is_drawn_all_the_same() -> None:
    """The last step is taken."""

    def draw(size: int) -> Drawing:
        drawing = Drawing()
        drawing.line("front", 0, 0, 50_00, size)
        return drawing

    assert largest(draw, 1000, (10_00, 10_00), (Mm(1), Mm(1))).bounds().width == 50_00
