"""Mirroring a kitchen mirrors its schedule; moving it along the wall moves nothing else."""

from collections import Counter
from collections.abc import Iterable
from dataclasses import replace

from hypothesis import assume, given
from hypothesis import strategies as st

from fronts.rules.fitting_results import Fitting
from fronts.rules.kinds import SIDES
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import INCH, NOTHING, Mm
from fronts.rules.results import Edge, Finding, Front, Part, Schedule
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides
from fronts.rules.thing_kinds import Run
from fronts.rules.wall_results import WallRuns
from tests.rules.laws import KITCHEN_LAW
from tests.rules.strategies import grids
from tests.rules.transforms import (
    hinge_side,
    mirrored,
    mirrored_label,
    moved,
    turned,
    without_choice,
    without_measured_widths,
)
from tests.strategies import kitchens
from tests.strategies_of_hardware import equipped_kitchens

any_kitchen = (
    (kitchens() | grids() | equipped_kitchens()).map(without_choice).map(without_measured_widths)
)
Told = Counter[tuple[str, str, tuple[str, ...]]]


def _concentric(found: Schedule) -> bool:
    """Whether two fronts overlap about one middle: left and right of it are anyone's guess."""
    seen = Counter((e.wall, e.plane, e.x + e.right) for e in found.fronts)
    overlaps = any((each.edges[s].gap or 0) < 0 for each in found.fronts for s in ("left", "right"))
    return overlaps and max(seen.values()) > 1


@KITCHEN_LAW
@given(any_kitchen)
def test_sizes_places_and_gaps(of: Kitchen) -> None:
    """Each front has its size, its mirrored place, and its gaps and overlays on the other side."""
    found, seen = schedule(of), schedule(mirrored(of))
    assume(not _concentric(found))

    assert len(found.fronts) == len(seen.fronts)
    for each in found.fronts:
        other = seen.front(mirrored_label(of, each.label))
        assert _plain(each) == _plain(other)
        assert other.x == -each.right
        assert other.hinged == hinge_side(each.hinged)
        assert [(e.overlay, e.gap) for e in _edges(turned(other.edges))] == [
            (e.overlay, e.gap) for e in _edges(each.edges)
        ]
        assert [(other.width - k.x, k.y) for k in reversed(other.knobs)] == [
            (k.x, k.y) for k in each.knobs
        ]
        if each.hinged in ("left", "right"):
            assert other.hinge_centres == each.hinge_centres


def _edges(sides: Sides[Edge]) -> list[Edge]:
    return [sides[side] for side in SIDES]


def _plain(front: Front) -> tuple[object, ...]:
    """All that a mirror leaves as it is."""
    lean = None if front.lean is None else abs(front.lean)
    return (
        front.kind, front.plane, front.width, front.height, front.thickness, front.y,
        front.build, front.material, front.door_on_hand, front.trim_width, front.trim_height,
        front.hinges, front.weight_kg, lean, front.movement, front.hinge, front.fixed_by,
        front.tray, front.machine, front.glass,
    )  # fmt: skip


@KITCHEN_LAW
@given(any_kitchen)
def test_fittings(of: Kitchen) -> None:
    """Left offsets become right ones; jigs, screws and slides stay; holes change sides."""
    found, seen = schedule(of), schedule(mirrored(of))
    boxes = {each.front: each for each in seen.fittings}

    assert len(found.fittings) == len(boxes)
    for each in found.fittings:
        other = boxes[mirrored_label(of, each.front)]
        assert other.side_offset == each.right_offset
        assert _fixed(each) == _fixed(other)
        assert {(other.jig_length - h.box_x, h.box_y) for h in other.holes} == {
            (h.box_x, h.box_y) for h in each.holes
        }
        if each.shims and other.shims:
            assert (other.shims.right, other.shims.side) == (each.shims.side, each.shims.right)


@KITCHEN_LAW
@given(any_kitchen)
def test_boxes(of: Kitchen) -> None:
    """Found or made, with its slide and its load, each is the same behind its front's mirror."""
    found, seen = schedule(of), schedule(mirrored(of))
    boxes = {each.front: each for each in seen.boxes}

    assert len(found.boxes) == len(boxes)
    for each in found.boxes:
        other = boxes[mirrored_label(of, each.front)]
        assert replace(other, front=each.front) == each


def _fixed(fitting: Fitting) -> tuple[object, ...]:
    return (
        fitting.method, fitting.jig_thickness, fitting.jig_length, fitting.ledges, fitting.slot,
        fitting.screw, fitting.knob_screw, fitting.slide_length, fitting.tape,
        fitting.shims and fitting.shims.bottom,
    )  # fmt: skip


@KITCHEN_LAW
@given(any_kitchen)
def test_what_is_made_bought_and_told(of: Kitchen) -> None:
    """The same jigs, shims, parts and hardware, and the same findings about the mirrored places."""
    found, seen = schedule(of), schedule(mirrored(of))
    assume(not _concentric(found))

    def name(label: str) -> str:
        return mirrored_label(of, label)

    assert {(j.thickness, j.length, j.slot) for j in found.jigs} == {
        (j.thickness, j.length, j.slot) for j in seen.jigs
    }
    assert [(s.thickness, s.side, s.bottom) for s in found.shims] == [
        (s.thickness, s.side, s.bottom) for s in seen.shims
    ]
    assert _cut(found.parts) == _cut(seen.parts)
    assert {n.item: n.need for n in found.hardware} == {n.item: n.need for n in seen.hardware}
    there = [replace(f, where=tuple(name(label) for label in f.where)) for f in seen.findings]
    assert _told(found.findings) == _told(there)


def _cut(parts: Iterable[Part]) -> Counter[tuple[object, ...]]:
    return Counter((p.part, p.length, p.width, p.thickness, p.material, p.count) for p in parts)


def _told(findings: Iterable[Finding]) -> Told:
    return Counter((f.level, f.code, tuple(sorted(f.where))) for f in findings)


@KITCHEN_LAW
@given(
    kitchens() | grids() | equipped_kitchens(),
    st.integers(-4000, 4000).map(lambda n: n * INCH / 16) | st.fractions(-900, 900),
)
def test_moving_along_the_wall(of: Kitchen, by: Mm) -> None:
    """Nothing changes but x."""
    found, seen = schedule(of), schedule(moved(of, by))

    assert tuple(replace(each, x=each.x - by) for each in seen.fronts) == found.fronts
    assert tuple(replace(one, x=one.x - by) for one in seen.cabinets) == found.cabinets
    assert [_run_ends(one, by) for one in seen.walls] == [_run_ends(one) for one in found.walls]
    assert replace(seen, fronts=(), cabinets=(), walls=()) == replace(
        found, fronts=(), cabinets=(), walls=()
    )


def _run_ends(wall: WallRuns, moved_by: Mm = NOTHING) -> tuple[str, dict[Run, Mm]]:
    return wall.label, {run: reached.length - moved_by for run, reached in wall.runs.items()}


@KITCHEN_LAW
@given(
    (kitchens() | grids() | equipped_kitchens()).map(without_choice),
    st.randoms(use_true_random=False),
)
def test_the_order_of_cabinets_and_walls(of: Kitchen, random: object) -> None:
    """However the list is ordered, each front is the same, and as much is told."""
    cabinets = list(of.cabinets)
    random.shuffle(cabinets)  # type: ignore[attr-defined]
    found, seen = schedule(of), schedule(replace(of, cabinets=tuple(cabinets)))
    assume(not _concentric(found))

    for each in found.fronts:
        other = seen.front(each.label)
        assert replace(other, edges=each.edges) == each
        assert [e.gap for e in _edges(other.edges)] == [e.gap for e in _edges(each.edges)]
    assert {each.front: each for each in found.fittings} == {e.front: e for e in seen.fittings}
    assert _told(found.findings) == _told(seen.findings)
    assert {n.item: n.need for n in found.hardware} == {n.item: n.need for n in seen.hardware}


@KITCHEN_LAW
@given(kitchens())
def test_as_many_doors_serve_in_a_mirror(of: Kitchen) -> None:
    """Which door goes where may differ between equally good plans; how good they are may not."""
    of = without_measured_widths(of)
    found, seen = schedule(of), schedule(mirrored(of))

    assert len(found.doors_on_hand) == len(seen.doors_on_hand)
    assert sum(u.trim_width + u.trim_height for u in found.doors_on_hand) == sum(
        u.trim_width + u.trim_height for u in seen.doors_on_hand
    )
