"""Templates at true size, measured on the printed page to a tenth of a millimetre."""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import cache

import pytest
from hypothesis import given, settings

from fronts.figures.templates import template_title
from fronts.jobfile import read_file
from fronts.rules.hole_templates import hole_templates
from fronts.rules.items import Hardware
from fronts.rules.jig_profiles import jig_profiles
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.standard_keys import Standard
from fronts.sheets import templates
from fronts.sheets.pdf import PAPERS, Paper, render
from fronts.sheets.sheet_page import SheetSource, source_of
from fronts.sheets.templates import REACH
from tests.drawings.kitchens import DEMO, hostile
from tests.rules.laws import KITCHEN_LAW
from tests.rules.small_kitchens import BOX, all_round, cabinet, inch, kitchen, opening
from tests.sheets.printed import PRINTED, demo_pages, demo_pdf, demo_source, pages_of
from tests.sheets.taped import (
    EDGE,
    bored_circles,
    edges,
    holes_lie,
    jig_lies,
    near,
    registers,
    slot_lies,
    taped,
)
from tests.sheets.true_size import Card, Drawn, Place, pages_drawn
from tests.strategies import kitchens
from tests.strategies_of_hardware import HINGES, equipped_kitchens

SIZES = {"letter": (215.9, 279.4), "a4": (210.0, 297.0)}
"""ANSI/ASME Y14.1 size A, 8 1/2 × 11 in; ISO 216 A4."""
UNPRINTED = 6.35
"""Most printers leave a quarter of an inch of the paper white (common practice, no source)."""


@cache
def metric() -> SheetSource:
    """The demo's metric kitchen."""
    return source_of(read_file(str(DEMO.parent / "demo-metric.job.json")).kitchen, PRINTED)


@cache
def printed(unit: str, paper: Paper) -> tuple[Drawn, ...]:
    """The pages of templates of the demo's kitchen in inches, or in millimetres."""
    if unit == "in":
        return tuple(pages_drawn(demo_pdf("templates", paper)))
    return drawn(metric(), paper)


def drawn(source: SheetSource, paper: Paper = "letter") -> tuple[Drawn, ...]:
    """The pages of any kitchen's templates."""
    return tuple(pages_drawn(render(templates.content(source), paper)))


@pytest.mark.slow
@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize(("unit", "long"), [("in", 4 * 25.4), ("mm", 100)])
def test_every_page_has_its_bars_and_stays_on_the_paper(
    unit: str, long: float, paper: Paper
) -> None:
    """One bar level, one upright, outside the cards; an inch is 25.4 mm exactly."""
    pages = printed(unit, paper)
    assert pages
    for page in pages:
        assert (page.width, page.height) == (near(SIZES[paper][0]), near(SIZES[paper][1]))
        bars = [each for each in page.lines if each.width == EDGE and each.long > 50]
        assert [each.long for each in bars] == [near(long)] * 2
        assert {(each.is_level, each.is_upright) for each in bars} == {(True, False), (False, True)}
        for place in _places(page):
            assert UNPRINTED <= place[0] <= page.width - UNPRINTED
            assert UNPRINTED <= place[1] <= page.height - UNPRINTED


def _places(page: Drawn) -> Iterator[Place]:
    for line in page.lines:
        yield from (line.start, line.end)
    for card in page.cards:
        yield from ((card.left, card.bottom), (card.right, card.top))


@pytest.mark.slow
@pytest.mark.parametrize("unit", ["in", "mm"])
def test_no_two_cards_lie_over_each_other(unit: str) -> None:
    """And none lies on a bar."""
    for page in printed(unit, "letter"):
        for at, one in enumerate(page.cards):
            assert not any(one.holds(each.start) or one.holds(each.end) for each in page.lines)
            for other in page.cards[at + 1 :]:
                apart = one.right < other.left or other.right < one.left
                assert apart or one.top < other.bottom or other.top < one.bottom


@pytest.mark.slow
@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("unit", ["in", "mm"])
def test_every_place_is_where_the_schedule_has_it(unit: str, paper: Paper) -> None:
    """Holes from their edges, jigs' ends; in parts that are taped by their crosses."""
    _measured(demo_source() if unit == "in" else metric(), printed(unit, paper))


@pytest.mark.slow
@given(kitchens() | equipped_kitchens())
@settings(KITCHEN_LAW, max_examples=12)
def test_the_same_in_any_kitchen(of: Kitchen) -> None:
    """All that the schedule has bored is on paper, true to size, and names its fronts."""
    source = source_of(of, PRINTED)
    if templates.has_templates(source):
        _measured(source, drawn(source, "a4"))
    else:
        assert hole_templates(source.schedule, source.kitchen, REACH) == ()


def _measured(source: SheetSource, pages: Sequence[Drawn]) -> None:
    """Holes by what they are, then the ends of jigs, then their slots: numbered in this order."""
    holes = hole_templates(source.schedule, source.kitchen, REACH)
    titles = list(dict.fromkeys(map(template_title, holes)))
    holes = tuple(sorted(holes, key=lambda each: titles.index(template_title(each))))
    profiles = jig_profiles(source.jig_plan.jigs)
    slotted = [each for each in profiles if each.slot]
    found = taped(pages)
    assert sorted(found) == list(range(1, len(holes) + len(profiles) + len(slotted) + 1))
    cards = (found[number] for number in sorted(found))
    for template in holes:
        holes_lie(next(cards), template, source.kitchen.job.unit)
    for profile in profiles:
        jig_lies(next(cards), profile)
    for profile in slotted:
        slot_lies(next(cards), profile)


@pytest.mark.slow
def test_a_pull_out_of_the_trades_check_value() -> None:
    """Opening edge 1/2 in beside and below the box, overlay 1/4 in: both offsets 3/4 in.

    Common practice, no source. Holes 1 1/2 in from the box's edges lie 2 1/4 in from the front's.
    """
    lap = Standard(overlay=all_round("1/4"))
    of = kitchen(cabinet(opening("pull-out", boxes=(BOX,))), standard=lap)
    cards = list(taped(drawn(source_of(of, PRINTED))).values())
    box = next(each for each in cards if "Mounting hole" in each.words)
    back = next(each for each in cards if "Pilot hole" in each.words and "ower" in each.words)
    for card, inches in ((box, 1.5), (back, 2.25)):
        (level,), upright = edges(card)
        (hole,) = bored_circles(card)
        assert abs(hole.centre[1] - level) == near(inches * 25.4)
        assert [abs(hole.centre[0] - x) for x in upright] == [near(inches * 25.4)] * len(upright)
    (hole,) = bored_circles(box)
    assert hole.diameter == near(0.25 * 25.4)


@pytest.mark.slow
def test_a_cup_of_35_millimetres() -> None:
    """Its rim B from the door's edge, so its middle B + 17.5 mm: common practice, no source."""
    cup = next(each for each in HINGES if each.fixed_distance is not None)
    shop = Hardware(hinges=(cup,))
    box = replace(cabinet(opening(hinged="left")), build="frameless")
    source = source_of(kitchen(box, hardware=shop, unit="mm", step=Mm(1)), PRINTED)
    (front,) = source.schedule.fronts
    assert front.hinge is not None
    cards = taped(drawn(source, "a4")).values()
    (card,) = (each for each in cards if "Hinge cup" in each.words)
    (bore,) = bored_circles(card)
    _, upright = edges(card)
    assert bore.diameter == near(35)
    assert [abs(bore.centre[0] - x) for x in upright] == [
        near(float(front.hinge.bore_from_edge) + 17.5)
    ] * len(upright)
    (plate,) = (each for each in cards if "Hinge plate" in each.words)
    rows = sorted(each.centre for each in plate.circles)
    assert rows[1][1] - rows[0][1] == near(32)
    assert [abs(rows[0][0] - x) for x in edges(plate)[1]] == [near(37)] * len(edges(plate)[1])


@pytest.mark.slow
def test_two_knobs_on_a_wide_drawer_are_taped_together() -> None:
    """At the quarter points of a front 41 in wide: 10 1/4 in from its side, more than a sheet."""
    hole = opening("drawer", width=inch("40"))
    source = source_of(kitchen(cabinet(hole, width=inch("43"))), PRINTED)
    pages = drawn(source)
    parts = [each for page in pages for each in page.cards if "Knob" in each.words]
    assert [len(registers(each)) for each in parts] == [2, 2]
    (card,) = (each for each in taped(pages).values() if "Knob" in each.words)
    (knob,) = bored_circles(card)
    (side,) = edges(card)[1]
    assert abs(knob.centre[0] - side) == near(10.25 * 25.4)


@pytest.mark.slow
def test_what_has_no_template_is_said() -> None:
    """What a maker bores, and a hole that a door brings, with the fronts."""
    text = " ".join(" ".join(demo_pages("templates")).split())
    assert "hinge cups: bored by the door maker: P2.a, P3.a.1, P3.a.2." in text
    assert "knob: the door brings its hole: B1.a." in text
    for page in demo_pages("templates")[-len(printed("in", "letter")) :]:
        assert "Print at 100 %, no fit to page." in page


@pytest.mark.slow
def test_any_text_and_many_fronts_fit_their_cards() -> None:
    """Labels as long as they may be, and more of them than one drawing has room for."""
    many = [
        replace(cabinet(opening("pull-out", boxes=(BOX,))), label=f"B{at}", x=inch("18") * at)
        for at in range(60)
    ]
    for of in (hostile(), kitchen(*many)):
        source = source_of(of, PRINTED)
        text = " ".join(pages_of(render(templates.content(source), "letter")))
        for front in source.schedule.fronts:
            if source.schedule.fitting(front.label):
                assert front.label[:30] in text
        for page in drawn(source):
            assert all(_inside(card, page) for card in page.cards)


def _inside(card: Card, page: Drawn) -> bool:
    return card.left > UNPRINTED and card.bottom > UNPRINTED and card.right < page.width


def test_a_job_with_nothing_to_bore_says_so() -> None:
    """It has no such sheet; asked for by its address, the sheet says that there is nothing."""
    source = source_of(kitchen(cabinet(opening("open"))), PRINTED)
    assert not templates.has_templates(source)
    assert "Nothing is bored and no jig is made" in templates.content(source)
