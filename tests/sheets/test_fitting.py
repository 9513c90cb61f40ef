"""The fitting sheet: one page for an ordinary cabinet, with what is needed there."""

import re
from dataclasses import replace

import pytest

from fronts.figures import cautions
from fronts.figures.boxes import box_figures, hole_places
from fronts.figures.hinges import hinge_figures
from fronts.figures.knobs import knob_lines
from fronts.figures.work_steps import work_for
from fronts.rules.hanging_method import HangingMethod
from fronts.rules.kinds import Hinged, Mount
from fronts.rules.kitchen import Opening
from fronts.rules.knob_fixing import has_own_hole
from fronts.rules.lengths import show
from fronts.rules.merged_jigs import merged_jigs
from fronts.rules.results import Front
from fronts.rules.runs import stood
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from fronts.sheets import fitting
from fronts.sheets.pdf import PAPERS, Paper
from fronts.sheets.sheet_page import SheetSource
from tests.drawings.kitchens import HOSTILE, demo, hostile, pull_out, too_close
from tests.rules.small_kitchens import BOX, cabinet, door, inch, kitchen, only_front, opening
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
        for line in box_figures(front, fit, of, merged_jigs(worked_out, stood(of))):
            assert " ".join(line.figure.split()) in text, (fit.front, line)
            assert line.more in text, (fit.front, line)
        holes = hole_places(front, fit, "in")
        for said in (f"→ {hole.box_x} ↑ {hole.box_y}" for hole in holes):
            assert said in text, (fit.front, said)
        for said in (f"→ {hole.back_x} ↑ {hole.back_y}" for hole in holes):
            assert said in text, (fit.front, said)
        assert f"stop at {show(fit.drill_stop, 'in')}" in text


def test_every_door_has_its_hinges_plates_cups_and_knob() -> None:
    """On the door, in the opening, from which side, and where the knob and its screw go."""
    of = demo()[0]
    for front in demo()[1].fronts:
        if front.hinge_centres:
            text = of_cabinet(front.cabinet)
            lines = {each.name: each for each in hinge_figures(front, of)}
            for line in lines.values():
                assert " ".join(line.figure.split()) in text, (front.label, line)
                assert line.more in text, (front.label, line)
            assert {"Hinges", "On the door", "Plates", "Knob", "Knob screw"} <= set(lines)


@pytest.mark.parametrize(
    ("mount", "hinged", "plates", "measured"),
    [
        ("overlay", "left", "3 · 24 1/2", "up from opening's bottom"),
        ("inset", "left", "3 19/32 · 23 29/32", "up from opening's bottom"),
        ("overlay", "top", "3 · 12", "from opening's left, seen from the front"),
    ],
)
def test_plates_lie_where_the_doors_centres_come_in_the_opening(
    mount: Mount, hinged: Hinged, plates: str, measured: str
) -> None:
    """Worked by hand: a centre 3 1/2 up a door that laps 1/2 is 3 up in the opening.

    Inset by 3/32, an opening of 15 × 27 1/2: 3 1/2 and 3/32.
    """
    of = kitchen(cabinet(opening(hinged=hinged, standard=Standard(mount=mount))))
    line = next(each for each in hinge_figures(only_front(of), of) if each.name == "Plates")
    assert line.figure == plates
    assert line.more.startswith(measured)


def test_the_cups_side_is_said_from_both_sides() -> None:
    """A door hinged left is bored at the right as it lies on its face; at its top, at its top."""
    sides: tuple[Hinged, ...] = ("left", "top")
    doors = {each: kitchen(cabinet(opening(hinged=each))) for each in sides}
    said = {side: hinge_figures(only_front(of), of) for side, of in doors.items()}
    assert said["left"][0].more == "mirrored on its back"
    assert said["top"][0].more == "at its top"
    for lines in said.values():
        (cups,) = (line for line in lines if line.name == "Cups")
        assert (cups.figure, cups.more) == ("⌀ 35 mm, 13 deep", "B 5 mm, centre 22.5 mm in")


def test_a_hole_is_named_by_its_corner() -> None:
    """Hole 1 is lower left of the box seen from the front, and so lower right of the back."""
    of = kitchen(pull_out())
    found = schedule(of)
    places = hole_places(found.fronts[0], found.fittings[0], "in")
    assert [each.corner for each in places] == [
        "lower left", "upper left", "upper right", "lower right",
    ]  # fmt: skip
    (text,) = fitting_pages(of)
    for number, each in enumerate(places, 1):
        assert f"{number} {each.corner}" in " ".join(text.split())


def test_laps_carry_their_sign() -> None:
    """Past the opening with a plus, inside it with a minus, under a heading that says so."""
    laps: tuple[tuple[Mount, str], ...] = (("overlay", "+1/2"), ("inset", "−3/32"))
    for mount, lap in laps:
        of = kitchen(cabinet(opening(standard=Standard(mount=mount))))
        (text,) = fitting_pages(of)
        assert "Laps (+) or inside (−)" in text
        assert " ".join([lap] * 4) in " ".join(text.split())


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
    assert "Or foam tape" in pull_out_page
    order = ("Pilot holes", "Screws from inside", "Jig and clamps off", "Open gently")
    assert [*order] == sorted(order, key=pull_out_page.index)


@pytest.mark.parametrize(
    ("one", "method"),
    [
        (opening(), "hinges"),
        (opening(hinged="top"), "top-hung"),
        (opening(hinged="bottom"), "bottom-hung"),
        (opening("fixed"), "fixed"),
        (opening("lift-up"), "top-hung"),
        (opening("tip-out"), "tip-out"),
        (opening("appliance-panel"), "machine"),
        (opening("pull-out", boxes=(BOX,)), "jig"),
        (opening("pull-out", boxes=(BOX,), standard=Standard(mount="inset")), "inset-jig"),
        (opening("pull-out", boxes=(replace(BOX, rise=inch("0")),),
                 standard=Standard(mount="inset")), "shims"),
        (opening("pull-out", boxes=(replace(BOX, rise=inch("-3/4")),)), "no-jig"),
        (opening("drawer"), None),
    ],
)  # fmt: skip
def test_each_method_of_hanging_has_its_own_order_of_work(
    one: Opening, method: HangingMethod | None
) -> None:
    """Inset fronts with a jig are set with side shims; a door that swings up needs a prop."""
    of = kitchen(cabinet(one))
    found = schedule(of)
    fittings = {each.front: each for each in found.fittings}
    works = work_for(found.fronts, fittings, of)
    assert [each.method for each in works] == ([method] if method else [])
    steps = " ".join(works[0].steps) if works else ""
    assert ("prop holds" in steps) == (method in ("top-hung", "bottom-hung"))
    assert ("fingers clear" in steps) == (method in ("top-hung", "bottom-hung", "tip-out"))
    assert ("no hinges" in steps) == (method == "machine")
    hung_in_cups = ("hinges", "top-hung", "bottom-hung")
    assert ("Bore the cups" in steps) == (method in hung_in_cups)
    assert ("Two bottom shims" in steps) == (method == "shims")
    assert ("Side shims in" in steps) == (method in ("shims", "inset-jig"))


def test_a_door_with_a_hole_of_its_own_is_not_drilled_for_its_knob() -> None:
    """The step says so, and the figure too."""
    of, worked_out = demo()
    front = next(each for each in worked_out.fronts if has_own_hole(each, of))
    fit = worked_out.fitting(front.label)
    assert "use the door's own hole" in of_cabinet(front.cabinet)
    (knob,) = (each for each in knob_lines(front, fit, of) if each.name == "Knob")
    assert knob.more.endswith("its own hole")


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
    assert cautions.WALL in said
    assert cautions.TRADES in said
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
        assert "Only after the stop is settled." in text
        assert "1/32 in apart" in " ".join(text.split())
    sound = fitting_pages(kitchen(cabinet(opening())))
    assert "STOP" not in sound[0]
    assert "Only after" not in sound[0]


def test_there_is_room_to_write_what_was_measured() -> None:
    """A row for each front, with the gaps that are planned."""
    pair = kitchen(cabinet(opening("pair", hinged=None)))
    (text,) = fitting_pages(pair)
    for word in ("Gap left", "Gap right", "Gap top", "Gap bottom", "Done, by, on"):
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
    html = fitting.content(SheetSource(of, changed, PRINTED))
    assert f"{show(odd, 'in')} × " in html
    assert show(odd, "in").startswith("≈")
    assert HOSTILE not in html
