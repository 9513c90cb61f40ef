"""The fitting sheet: one page for an ordinary cabinet, with what is needed there."""

import re
from dataclasses import replace

import pytest

from fronts.rules.lengths import show
from fronts.rules.results import Front
from fronts.rules.schedule import schedule
from fronts.sheets import cautions, fitting
from fronts.sheets.box_figures import box_figures, hole_places
from fronts.sheets.imprint import Imprint
from fronts.sheets.pdf import PAPERS, Paper
from tests.drawings.kitchens import HOSTILE, demo, hostile, pull_out, too_close
from tests.rules.small_kitchens import cabinet, door, kitchen, only_front, opening
from tests.sheets.printed import PRINTED, demo_pages, fitting_pages

pytestmark = pytest.mark.slow


def of_cabinet(label: str, paper: Paper = "letter") -> str:
    """The text of the cabinet's pages in the demo job's fitting sheets."""
    heading = re.compile(rf"Fitting sheet {re.escape(label)}(?!\S)")
    return " ".join(" ".join(each for each in demo_pages("fitting", paper)
                             if heading.search(each)).split())  # fmt: skip


def size(front: Front) -> str:
    """`15 1/2 × 28 1/2`."""
    return f"{show(front.width, 'in')} × {show(front.height, 'in')}"


def test_every_front_stands_on_its_cabinets_page() -> None:
    """Label and size together on the page of its own cabinet, and on no other."""
    worked_out = demo()[1]
    for front in worked_out.fronts:
        assert f"{front.label} {size(front)}" in of_cabinet(front.cabinet)
        others = {each.cabinet for each in worked_out.fronts} - {front.cabinet}
        assert not any(f"{front.label} {size(front)}" in of_cabinet(each) for each in others)


def test_what_a_box_needs_is_all_there() -> None:
    """Offset, jig, holes, drill and stop, screws, knob screw: each figure on the page."""
    of, worked_out = demo()
    for fit in worked_out.fittings:
        front = worked_out.front(fit.front)
        text = of_cabinet(front.cabinet)
        for line in box_figures(fit, of):
            assert f"{line.figure} {line.more}".split(" mm")[0].strip() in text, (fit.front, line)
        for hole in hole_places(front, fit, "in"):
            assert hole.box_x in text
            assert f"→ {hole.back_x} ↑ {hole.back_y}" in text
        assert f"stop at {show(fit.drill_stop, 'in')}" in text


def test_hinge_centres_are_given_for_every_door() -> None:
    """Where the cups go, from the bottom of the door."""
    for front in demo()[1].fronts:
        if front.hinge_centres:
            centres = " · ".join(show(each, "in") for each in front.hinge_centres)
            assert f"{front.label} {front.hinges} {centres}" in of_cabinet(front.cabinet)


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("closed_by", ["door", "pair", "pull-out", "fixed", "top-hung"])
def test_an_ordinary_cabinet_takes_one_page(closed_by: str, paper: Paper) -> None:
    """A door, a pair, a pull-out on its box, a fixed front: a page each."""
    holes = {
        "door": opening(),
        "pair": opening("pair", hinged=None),
        "fixed": opening("fixed", hinged=None),
        "top-hung": opening(hinged="top"),
    }
    one = pull_out() if closed_by == "pull-out" else cabinet(holes[closed_by])
    assert len(fitting_pages(kitchen(one), paper)) == 1


@pytest.mark.parametrize("paper", PAPERS)
def test_no_cabinet_of_the_demo_takes_more_than_two(paper: Paper) -> None:
    """Not even a stack of four drawers."""
    for each in demo()[0].cabinets:
        heading = re.compile(rf"Fitting sheet {re.escape(each.label)}(?!\S)")
        found = sum(bool(heading.search(text)) for text in demo_pages("fitting", paper))
        assert found <= 2, each.label


def test_steps_follow_the_way_of_hanging() -> None:
    """With the jig, hinged: each has its own order of work, the knob near its end."""
    beside = pull_out("B2", x=cabinet().width)
    door_page, pull_out_page = fitting_pages(kitchen(cabinet(opening()), beside))
    assert "hinged door" in door_page
    assert "with the jig" not in door_page
    assert "front on a box, with the jig" in pull_out_page
    assert "hinged door" not in pull_out_page
    for text in (door_page, pull_out_page):
        assert text.index("backing block behind") < text.index("write them down")


def test_a_box_not_measured_gives_no_order_of_work() -> None:
    """A drawer without its box is neither hung with a jig nor fixed; the sheet says what lacks."""
    (text,) = fitting_pages(kitchen(cabinet(opening("drawer", hinged=None))))
    assert "Order of work" not in text
    assert "its box is not measured" in " ".join(text.split())


def test_cautions_are_those_that_apply() -> None:
    """A pull-out from an old door tips and may carry lead; a new wall door does neither."""
    old = kitchen(
        pull_out(), doors=[door()],
    )  # fmt: skip
    worked_out = schedule(old)
    said = cautions.at_cabinet(old.cabinets[0], worked_out.fronts, worked_out.fittings)
    assert cautions.TIPPING in said
    assert cautions.SMALL_PIECES in said
    assert cautions.OLD_PAINT not in said
    plain = kitchen(cabinet(opening(), kind="wall"))
    said = cautions.at_cabinet(plain.cabinets[0], schedule(plain).fronts, [])
    assert cautions.TIPPING not in said
    assert cautions.SMALL_PIECES not in said
    assert said[-1] == cautions.LAST
    refits = [each for each in demo()[1].fronts if each.door_on_hand]
    at = next(each for each in demo()[0].cabinets if each.label == refits[0].cabinet)
    assert cautions.OLD_PAINT in cautions.at_cabinet(at, refits, [])
    assert "Old paint may hold lead" in of_cabinet(at.label)


def test_a_stop_concerns_its_own_cabinets_only() -> None:
    """Fronts too close are stopped on both their pages, in words."""
    trouble = too_close()
    both = fitting_pages(trouble)
    assert len(both) == 2
    for text in both:
        assert "STOP — do not cut" in text
        assert "1/32 in apart" in " ".join(text.split())
    sound = fitting_pages(kitchen(cabinet(opening())))
    assert "STOP" not in sound[0]


def test_there_is_room_to_write_what_was_measured() -> None:
    """A row for each front, with the gaps that are planned."""
    pair = kitchen(cabinet(opening("pair", hinged=None)))
    (text,) = fitting_pages(pair)
    for word in ("Gaps", "Left", "Right", "Top", "Bottom", "Done", "Initials", "Date"):
        assert word in text
    assert text.count("plan 1/8") == 2


def test_a_hostile_job_prints_as_text() -> None:
    """Markup and paths in every name come out as they were typed, on their own pages."""
    pages = fitting_pages(hostile())
    text = " ".join(" ".join(pages).split())
    assert '<script>alert("1")</script>' in text
    assert "../../x" in text
    assert "W" * 20 in text
    assert len(pages) <= 4


def test_lengths_that_had_to_be_rounded_say_so() -> None:
    """What is not on the display step carries its ≈ on the sheet too."""
    of = kitchen(cabinet(opening()))
    worked_out = schedule(of)
    odd = only_front(of).width / 7
    changed = replace(worked_out, fronts=(replace(worked_out.fronts[0], width=odd),))
    html = fitting.content(changed, of, Imprint(PRINTED, "0000-0000"))
    assert f"{show(odd, 'in')} × " in html
    assert show(odd, "in").startswith("≈")
    assert HOSTILE not in html
