"""Templates for holes: each hole of the schedule once, at its own distances from the edges."""

from collections import Counter
from collections.abc import Iterator
from typing import TypeAlias

from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.hinge_drilling import cup_centre, hinges_upright, plate_centres
from fronts.rules.hole_templates import hole_templates
from fronts.rules.jig_profiles import jig_profiles
from fronts.rules.kinds import CABINET_BUILDS, Side
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.results import Front, Schedule
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from fronts.rules.template_holes import bored_before
from fronts.rules.template_results import HoleTemplate, TemplateRoom
from tests.drawings.kitchens import demo
from tests.rules.laws import KITCHEN_LAW
from tests.rules.small_kitchens import BOX, all_round, cabinet, inch, kitchen, opening
from tests.strategies import kitchens
from tests.strategies_of_hardware import equipped_kitchens

ROOM = TemplateRoom(one=(Mm(145), Mm(160)), most=(Mm(440), Mm(480)), both=Mm(77))
Bored: TypeAlias = tuple[str, str, Mm, Mm]
"""Front, face, and the place from the face's lower left corner as one looks at it."""


def bored(of: Kitchen, worked_out: Schedule) -> Iterator[Bored]:
    """Every hole of the schedule, read from it without the rule."""
    own = {each.label for each in of.doors_on_hand if each.knob_hole}
    for front in worked_out.fronts:
        fitting = worked_out.fitting(front.label)
        for hole in fitting.holes if fitting else ():
            yield front.label, "box", hole.box_x, hole.box_y
            if fitting and fitting.pilot:
                yield front.label, "back", front.width - hole.front_x, hole.front_y
        for knob in front.knobs:
            if front.door_on_hand not in own:
                yield front.label, "front", knob.x, knob.y
            if fitting and fitting.knob_screw and fitting.knob_screw.recess:
                across, up = fitting.side_offset, fitting.jig_thickness
                yield front.label, "box", knob.x - across, knob.y - up
        hinge = front.hinge
        if hinge and not hinge.in_old_bores and not front.bought:
            for centre in front.hinge_centres:
                cup = cup_centre(front, centre, hinge.cup_from_edge)
                yield front.label, "back", front.width - cup.x, cup.y


def marked(template: HoleTemplate, worked_out: Schedule) -> Iterator[Bored]:
    """Where its marks come to lie in all its uses."""
    for use in template.uses:
        front = worked_out.front(use.front)
        fitting = worked_out.fitting(use.front)
        wide, high = front.width, front.height
        if template.face == "box":
            assert fitting
            wide, high = fitting.jig_length, fitting.box_height
        for mark in template.marks:
            x, y = (use.across or 0) + mark.x, (use.up or 0) + mark.y
            x = x if use.upright == "left" else wide - x
            yield use.front, template.face, x, y if use.level == "bottom" else high - y


@KITCHEN_LAW
@given(kitchens() | equipped_kitchens())
def test_every_hole_is_marked_once_where_it_is(of: Kitchen) -> None:
    """Mounting holes, knobs, recesses and cups: none left out, none beside its place, none more."""
    worked_out = schedule(of)
    templates = hole_templates(worked_out, of, ROOM)
    on_faces = [each for each in templates if not each.face.startswith("cabinet")]

    found = Counter(place for each in on_faces for place in marked(each, worked_out))
    assert found == Counter(bored(of, worked_out))


@KITCHEN_LAW
@given(kitchens() | equipped_kitchens())
def test_plates_lie_where_the_schedule_has_them(of: Kitchen) -> None:
    """Two screws 32 mm apart about each plate's middle, 37 mm behind (common practice)."""
    worked_out = schedule(of)
    templates = hole_templates(worked_out, of, ROOM)
    plates = [each for each in templates if each.face.startswith("cabinet")]
    hung = [
        front
        for front in worked_out.fronts
        if front.hinge and not CABINET_BUILDS[of.cabinet(front.cabinet).build].framed
    ]

    assert Counter(use.front for each in plates for use in each.uses) == Counter(
        {each.label: len(plate_centres(each)) for each in hung if plate_centres(each)}
    )
    for template in plates:
        for use in template.uses:
            front = worked_out.front(use.front)
            _lies_at_a_plate(template, front)


def _lies_at_a_plate(template: HoleTemplate, front: Front) -> None:
    upright = hinges_upright(front)
    along = sorted(mark.y if upright else mark.x for mark in template.marks)
    inwards = {mark.x if upright else mark.y for mark in template.marks}
    behind = Mm(37) if front.plane == "overlay" else Mm(37) + front.thickness
    assert along[1] - along[0] == 32
    assert inwards == {behind}
    low: Side = "bottom" if upright else "left"
    high: Side = "top" if upright else "right"
    whole = front.height if upright else front.width
    ends = set()
    for use in template.uses:
        if use.front == front.label:
            line = (use.up if upright else use.across) or 0
            side = use.level if upright else use.upright
            middle = line + sum(along, Mm(0)) / 2
            lap = front.edges[low].overlay or Mm(0)
            far = whole - lap - (front.edges[high].overlay or Mm(0)) - middle
            ends.add(middle if side == low else far)
    assert ends <= set(plate_centres(front))


@KITCHEN_LAW
@given(kitchens() | equipped_kitchens(), st.sampled_from([0, 77, 500]))
def test_what_is_the_same_is_drawn_once(of: Kitchen, both: int) -> None:
    """No two drawings are alike, nor does one name a front and place twice."""
    room = TemplateRoom(ROOM.one, ROOM.most, Mm(both))
    templates = hole_templates(schedule(of), of, room)
    drawings = [
        (each.purpose, each.face, each.diameter, bool(each.hands), each.level_edge, each.marks)
        for each in templates
    ]
    assert len(set(drawings)) == len(drawings)
    for each in templates:
        assert len(set(each.uses)) == len(each.uses)
        assert each.uses


@KITCHEN_LAW
@given(kitchens() | equipped_kitchens())
def test_every_jig_ends_as_its_profile_says(of: Kitchen) -> None:
    """Each front that a jig serves is named once, and no profile comes twice."""
    jigs = schedule(of).jigs
    profiles = jig_profiles(jigs)
    assert sorted(label for each in profiles for label in each.fronts) == sorted(
        label for each in jigs for label in each.fronts
    )
    shapes = {(each.thickness, each.ledges, each.slot) for each in profiles}
    assert len(shapes) == len(profiles)
    assert shapes == {(each.thickness, each.ledges, each.slot) for each in jigs}


def test_a_box_half_an_inch_behind_its_opening() -> None:
    """The trade's check value: 1/2 in beside and below, 1/4 in overlay: offsets of 3/4 in.

    Common practice, no source. With holes 1 1/2 in from the box's sides and ends the front's
    lie 2 1/4 in from its lower corners, and one template serves every corner of the box.
    """
    lap = Standard(overlay=all_round("1/4"))
    of = kitchen(cabinet(opening("pull-out", boxes=(BOX,))), standard=lap)
    templates = hole_templates(schedule(of), of, ROOM)
    (box,) = (each for each in templates if each.face == "box")
    assert [(mark.x, mark.y) for mark in box.marks] == [(inch("1 1/2"), inch("1 1/2"))]
    assert len(box.uses) == 4
    low = next(each for each in templates if each.purpose == "pilot")
    assert [(mark.x, mark.y) for mark in low.marks] == [(inch("2 1/4"), inch("2 1/4"))]


def test_what_is_far_is_laid_along_a_line() -> None:
    """A pull in the middle of a wide drawer: one sheet, along a line in the front's middle."""
    of, worked_out = demo()
    templates = hole_templates(worked_out, of, ROOM)
    (pull,) = (each for each in templates
               if each.purpose == "handle" and "B2.a.1" in each.fronts)  # fmt: skip
    assert pull.hands == ()
    assert pull.level_edge
    assert [mark.x for mark in pull.marks] == [Mm(-48), Mm(48)]
    assert {use.across for use in pull.uses} == {inch("11")}


def test_what_is_bored_already_is_named_and_has_no_template() -> None:
    """In the demo a maker bores some doors' cups, and one door brings its knob's hole."""
    of, worked_out = demo()
    known = {each.what: each.fronts for each in bored_before(worked_out, of)}
    assert known == {"cups-bought": ("P2.a", "P3.a.1", "P3.a.2"), "handle": ("B1.a",)}
    for template in hole_templates(worked_out, of, ROOM):
        if template.purpose == "cup":
            assert set(template.fronts).isdisjoint(known["cups-bought"])
        if template.purpose == "handle":
            assert set(template.fronts).isdisjoint(known["handle"])
