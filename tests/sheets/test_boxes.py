"""The box sheet, read as whoever builds from it alone: every size, count, cut and step."""

import re
from dataclasses import replace
from itertools import product

import pytest

from fronts.figures.box_letters import lengths_by_letter, piece_letters
from fronts.figures.box_steps import box_steps
from fronts.rules.box_facts import BoxesMadeOf, BoxToMake
from fronts.rules.box_kinds import BoxKind, kinds_of_boxes
from fronts.rules.item_kinds import JOINTS
from fronts.rules.kinds import SLIDES
from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.lengths import show
from fronts.rules.schedule import schedule
from fronts.sheets.box_drawings import box_drawings
from fronts.sheets.registry import every_printout
from fronts.sheets.sheet_page import source_of
from tests.drawings.kitchens import demo
from tests.drawings.reading import meetings, texts
from tests.rules.small_kitchens import cabinet, inch, kitchen, opening
from tests.sheets.printed import PRINTED, demo_pages

KINDS = list(product(SLIDES, JOINTS, (0, 2), ("pull-out", "drawers")))


def _made(slide: str, joint: str, shelves: int, closed_by: str, *, sizes: int = 1) -> Kitchen:
    """Tall cabinets with one box each, every next one wider."""
    made = FrontFacts(box_to_make=BoxToMake(slide, shelves, 10))  # type: ignore[arg-type]
    cabinets = [
        cabinet(
            opening(closed_by, front=made, width=inch("15") + 25 * number),  # type: ignore[arg-type]
            label=f"B{number}", width=inch("18") + 25 * number, x=inch("40") * number,
        )
        for number in range(sizes)
    ]  # fmt: skip
    return replace(
        kitchen(*cabinets),
        boxes_made_of=BoxesMadeOf(joint=joint),  # type: ignore[arg-type]
    )


def _kind(of: Kitchen) -> BoxKind:
    (kind,) = kinds_of_boxes(schedule(of), of)
    return kind


def _drawn(kind: BoxKind) -> list[str]:
    return [drawn.svg for row in box_drawings(kind, "in") for drawn in row]


@pytest.mark.parametrize("sizes", [1, 2], ids=["one size", "two sizes"])
@pytest.mark.parametrize(("slide", "joint", "shelves", "closed_by"), KINDS)
def test_drawings_bear_every_letter_and_no_text_meets_another(
    slide: str, joint: str, shelves: int, closed_by: str, sizes: int
) -> None:
    """Letters alone where sizes differ, with their figures where all boxes are alike."""
    kind = _kind(_made(slide, joint, shelves, closed_by, sizes=sizes))
    said = {text.text for svg in _drawn(kind) for text in texts(svg)}
    lengths = lengths_by_letter(kind, kind.sizes[0])
    wanted = {
        f"{letter} {show(length, 'in')}" if sizes == 1 else letter
        for letter, length in lengths.items()
    }
    assert {text for text in said if re.match(r"[A-Z]\b", text)} == wanted
    assert set("".join(map("".join, piece_letters(kind).values()))) <= set(lengths)
    for svg in _drawn(kind):
        assert meetings(svg) == []


def test_the_demos_boxes_can_be_built_from_their_sheet() -> None:
    """A page a kind; every box, piece size, diagonal and place of the schedule stands on it."""
    of, worked_out = demo()
    pages = [" ".join(page.split()) for page in demo_pages("boxes")]
    kinds = kinds_of_boxes(worked_out, of)
    assert len(pages) == len(kinds) == 2
    for page, kind in zip(pages, kinds, strict=True):
        assert f"{kind.count} boxes to make" in page
        for size in kind.sizes:
            for box in size.boxes:
                assert box.front in page
                assert show(box.rise, "in") in page
            for part in size.parts.values():
                assert f"{show(part.length, 'in')} × {show(part.width, 'in')}" in page
            assert show(size.diagonal, "in") in page
        for step in box_steps(kind, "in"):
            assert " ".join(step.words.split()) in page
            assert " ".join(step.care.split()) in page
        assert "OSHA 1910.213" in page


def test_counts_are_those_of_the_cut_list() -> None:
    """Six sides of three boxes, each of two."""
    page = " ".join(demo_pages("boxes")[0].split())
    parts = [part for part in demo()[1].parts if part.front.startswith("B2.a")]
    sides = sum(part.count for part in parts if part.part == "box-side")
    assert sides == 6
    assert f"2 a box, {sides} in all" in page


def test_under_slides_have_their_recess_and_notch() -> None:
    """13 mm below the bottom; the back ends above the bottom, so that the slides pass."""
    under, side = (" ".join(page.split()) for page in demo_pages("boxes"))
    assert "13 mm above the lower edge" in under
    assert "its lower edge 19.35 mm above the sides’" in under
    assert "box back D × G" in under
    assert "that is their notch" in under
    assert "notch" not in side
    assert "Slides’ middle line above it" in side


def test_what_a_box_wants_is_said_where_it_is_built() -> None:
    """Blocking behind the stiles, a guide at the top of a high one, tiers that are too close."""
    page = " ".join(demo_pages("boxes")[1].split())
    assert "B4.b: its slides want blocking behind the face frame" in page
    low = _made("side", "butt", 2, "pull-out")
    (of,) = low.cabinets
    close = replace(low, cabinets=(replace(of, openings=(
        replace(of.openings[0], height=inch("9")),
    )),))  # fmt: skip
    html = next(each for each in every_printout(source_of(close, PRINTED))
                if each.file == "boxes.pdf").html()  # fmt: skip
    assert "its tiers are closer than its sides are high" in " ".join(html.split())


def test_only_a_job_with_boxes_to_make_has_the_sheet() -> None:
    """Found boxes are there already."""
    found = source_of(kitchen(cabinet(opening("drawers"))), PRINTED)
    made = source_of(_made("side", "butt", 0, "drawers"), PRINTED)
    assert "boxes.pdf" not in [each.file for each in every_printout(found)]
    assert "boxes.pdf" in [each.file for each in every_printout(made)]
