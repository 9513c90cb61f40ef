"""Fronts with a rule of their own, and glass, as sheets say them."""

from dataclasses import replace
from fractions import Fraction

from fronts.figures.cautions import GLASS
from fronts.rules.kitchen import FrontFacts
from fronts.rules.machine_facts import Machine
from fronts.sheets import front_schedule
from fronts.sheets.sheet_page import source_of
from tests.rules.small_kitchens import beside, cabinet, inch, kitchen, opening
from tests.sheets.printed import PRINTED, fitting_pages


def test_special_fronts_say_how_they_are_fixed() -> None:
    """A tip-out's tray, a panel's machine, a lift's swing and a fixed front's screws, on paper."""
    machine = FrontFacts(machine=Machine(most_width=inch("16"), most_kg=Fraction(9)))
    first = cabinet(opening("tip-out", front=FrontFacts(room_behind=inch("4"))))
    panel = opening("appliance-panel", front=machine)
    others = [
        replace(beside(first, label=f"B{n}", openings=(of,)), x=n * first.width)
        for n, of in enumerate((panel, opening("lift-up"), opening("fixed")), start=2)
    ]
    tip_out, on_machine, lifted, fixed = (
        " ".join(text.split()) for text in fitting_pages(kitchen(first, *others))
    )

    assert "at most 13 long" in tip_out
    assert "behind the front; measured 4" in tip_out
    assert "at most 16 wide, at most 19.8 lb" in on_machine
    assert "62 above the floor" in lifted
    assert "4 pc, #8 × 1 1/4" in fixed


def test_the_cut_sheet_has_the_glass() -> None:
    """Panes by size and their stops, with the caution; nothing of it where panels are."""
    glazed, panelled = (
        front_schedule.content(
            source_of(
                kitchen(cabinet(opening(front=FrontFacts(build="five-piece", glass=so)))), PRINTED
            )
        )
        for so in (True, False)
    )

    assert "glass 12 1/8 in × 24 5/8 in, 1/8 in" in glazed
    assert "glass stop" in glazed
    assert GLASS in glazed
    assert "Glass instead of panels" not in panelled
