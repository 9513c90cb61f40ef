"""Fronts named as one set: their order on the wall, their numbers, which way their grain runs."""

from dataclasses import replace
from itertools import pairwise
from typing import Any

import pytest

from fronts.rules.grain_layout import GrainBlock, GrainPiece, grain_blocks
from fronts.rules.kitchen import Cabinet, FrontFacts, Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.rect import Rect
from fronts.rules.results import Part
from fronts.rules.schedule import schedule
from tests.rules.small_kitchens import beside, cabinet, inch, kitchen, opening

RUN = FrontFacts(material="oak plywood", grain_set="Run")
KERF, GAP = Mm(3), Mm(2)


def _stack_beside_door(**wish: Any) -> Kitchen:
    """Two drawer fronts, and a door to their right, in one set."""
    front = replace(RUN, **wish)
    drawers = cabinet(opening("drawers", count=2, front=front))
    return kitchen(beside(drawers, openings=(opening(front=front),)), drawers)


def _in_set(of: Kitchen) -> dict[str, Part]:
    return {part.front: part for part in schedule(of).parts if part.grain}


def test_fronts_are_numbered_from_the_left_and_in_a_column_from_the_top() -> None:
    """As they stand on the wall, whatever the order in which they were entered."""
    found = _in_set(_stack_beside_door())

    numbers = {label: (part.grain and part.grain.number) for label, part in found.items()}
    assert numbers == {"B1.a.1": 1, "B1.a.2": 2, "B2.a": 3}
    assert {part.grain and part.grain.of for part in found.values()} == {3}
    (shown,) = schedule(_stack_beside_door()).grain_sets
    assert shown.fronts == ("B1.a.1", "B1.a.2", "B2.a")


def test_walls_follow_one_another() -> None:
    """A run that goes round a corner is numbered wall by wall."""
    first = cabinet(opening(front=RUN))
    found = _in_set(kitchen(first, beside(first, wall="East", x=inch("0"))))

    assert {label: part.grain.number for label, part in found.items() if part.grain} == {
        "B1.a": 1, "B2.a": 2,
    }  # fmt: skip


@pytest.mark.parametrize(
    ("says", "upright"),
    [("nothing", True), ("upright", True), ("level", False)],
)
def test_the_grain_of_a_set_runs_one_way(says: str, upright: bool) -> None:
    """Drawer fronts turn theirs for the door beside them; what somebody says holds for all."""
    said = {} if says == "nothing" else {"grain": says}
    found = _in_set(_stack_beside_door(**said))

    for part in found.values():
        front = schedule(_stack_beside_door(**said)).front(part.front)
        along = front.height if upright else front.width
        assert (part.length, front.grain_upright) == (along, upright)


def test_a_stack_alone_keeps_its_level_grain() -> None:
    """Nobody said that it should run up."""
    found = _in_set(kitchen(cabinet(opening("drawers", count=2, front=RUN))))
    assert {part.length for part in found.values()} == {inch("16")}


def test_a_slab_moves_across_its_grain() -> None:
    """Turned, a solid drawer front swells sideways (Wood Handbook ch. 13: across the grain)."""

    def across(of: Cabinet) -> set[str]:
        tight = kitchen(of, beside(of))
        return {front.movement.across for front in schedule(tight).fronts if front.movement}

    wide = opening("fixed", front=FrontFacts(material="oak"), x=inch("0"), width=inch("18"))
    turned = replace(wide, fronts=(FrontFacts(material="oak", grain="upright"),))
    assert "width" not in across(cabinet(wide))
    assert "height" not in across(cabinet(turned))


def test_panels_of_five_piece_fronts_are_what_runs_on() -> None:
    """Both panels of a tall door have its number; stiles and rails are in no set."""
    tall = opening(front=replace(RUN, build="five-piece"), height=inch("64"))
    first = cabinet(tall, height=inch("70"), kind="tall")
    parts = [part for part in schedule(kitchen(first, beside(first))).parts if part.grain]

    assert [(part.part, part.count) for part in parts] == [("panel", 2)] * 2


def _pieces(*rects: Rect, upright: bool) -> list[GrainPiece]:
    return [
        GrainPiece(
            number, rect.height if upright else rect.width,
            rect.width if upright else rect.height, rect,
        )
        for number, rect in enumerate(rects)
    ]  # fmt: skip


def _places(block: GrainBlock) -> list[tuple[int, int]]:
    return [(int(piece.x), int(piece.y)) for piece in block.pieces]


DRAWER_OVER_PAIR = (
    Rect(Mm(0), Mm(702), Mm(802), Mm(150)),
    Rect(Mm(0), Mm(0), Mm(400), Mm(700)),
    Rect(Mm(402), Mm(0), Mm(400), Mm(700)),
)


@pytest.mark.parametrize(
    ("upright", "places", "size"),
    [
        (True, [(0, 0), (153, 0), (153, 403)], (853, 803)),
        (False, [(0, 703), (0, 0), (403, 0)], (803, 853)),
    ],
)
def test_a_block_is_the_wall_with_the_kerf_for_the_gaps(
    upright: bool,
    places: list[tuple[int, int]],
    size: tuple[int, int],
) -> None:
    """A drawer front over a pair of doors, by hand: 150 + 3 + 700 and 400 + 3 + 400."""
    pieces = _pieces(*DRAWER_OVER_PAIR, upright=upright)
    (block,) = grain_blocks(pieces, KERF, lambda *_: True, upright=upright)

    assert _places(block) == places
    assert (int(block.along), int(block.across)) == size


def test_a_lower_door_keeps_its_place_beside_a_taller_one() -> None:
    """Tops on one line are flush on the sheet; a door whose top is lower lies as much further."""
    pieces = _pieces(
        Rect(Mm(0), Mm(0), Mm(400), Mm(2000)), Rect(Mm(402), Mm(0), Mm(400), Mm(700)), upright=True
    )
    (block,) = grain_blocks(pieces, KERF, lambda *_: True, upright=True)
    assert _places(block) == [(0, 0), (1300, 403)]


def test_a_run_is_parted_where_the_sheet_ends() -> None:
    """Five doors of 400: three come to 1206, and a fourth would be too wide for 1220.

    Where the sheet is long enough for two rows, 700 + 3 + 700, the rest goes on behind them.
    """
    doors = [Rect(Mm(402) * place, Mm(0), Mm(400), Mm(700)) for place in range(5)]
    pieces = _pieces(*doors, upright=True)

    def blocks(length: int) -> list[list[tuple[int, int]]]:
        def fits(along: Mm, across: Mm) -> bool:
            return along <= length and across <= Mm(1220)

        return [_places(block) for block in grain_blocks(pieces, KERF, fits, upright=True)]

    assert blocks(1402) == [[(0, 0), (0, 403), (0, 806)], [(0, 0), (0, 403)]]
    assert blocks(1403) == [[(0, 0), (0, 403), (0, 806), (703, 0), (703, 403)]]


def test_fronts_that_no_line_parts_still_have_an_order() -> None:
    """Four round a fifth, as in a pinwheel: from the left, and none lies on another."""
    wheel = (
        Rect(Mm(0), Mm(0), Mm(200), Mm(100)), Rect(Mm(200), Mm(0), Mm(100), Mm(200)),
        Rect(Mm(100), Mm(200), Mm(200), Mm(100)), Rect(Mm(0), Mm(100), Mm(100), Mm(200)),
        Rect(Mm(100), Mm(100), Mm(100), Mm(100)),
    )  # fmt: skip
    (block,) = grain_blocks(_pieces(*wheel, upright=True), KERF, lambda *_: True, upright=True)
    ends = [(piece.y, piece.y + piece.across) for piece in block.pieces]
    assert all(low - high == KERF for (_, high), (low, _) in pairwise(ends))
