"""Jigs and shims of the whole kitchen: made once, used in turn."""

from dataclasses import replace

from fronts.rules.fitting_results import Jig, Shim
from fronts.rules.kitchen import Cabinet
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides, Standard
from tests.rules.small_kitchens import BOX, all_round, beside, cabinet, inch, kitchen, opening

INSET = Standard(mount="inset", inset_gap=all_round("3/32"))
SLIDE = replace(BOX, slide="bottom", slide_width=inch("1 3/4"), slide_height=inch("1/2"))


def _run(*boxes: object, thick: tuple[str, ...] = ("3/4",) * 9) -> list[Cabinet]:
    first = cabinet()
    return [
        beside(
            first,
            label=f"B{index + 1}",
            x=index * first.width,
            openings=(
                opening(
                    "pull-out", boxes=(box,), standard=Standard(front_thickness=inch(thick[index]))
                ),
            ),
        )
        for index, box in enumerate(boxes)
    ]


def _jigs(*boxes: object, thick: tuple[str, ...] = ("3/4",) * 9) -> tuple[Jig, ...]:
    return schedule(kitchen(*_run(*boxes, thick=thick))).jigs


def test_the_same_thickness_and_width_share_a_jig() -> None:
    """One jig serves both fronts."""
    (jig,) = _jigs(BOX, replace(BOX, height=inch("20")))

    assert jig.fronts == ("B1.a", "B2.a")
    assert (jig.thickness, jig.length) == (inch("1"), inch("14"))


def test_another_width_wants_its_own() -> None:
    """The same thickness alone shares a blank, and lies next to it in the list."""
    found = _jigs(BOX, replace(BOX, rise=inch("1")), replace(BOX, width=inch("13")))

    assert [(each.thickness, each.length) for each in found] == [
        (inch("1"), inch("13")),
        (inch("1"), inch("14")),
        (inch("1 1/2"), inch("14")),
    ]


def test_a_shared_jig_carries_its_thickest_front_and_clears_its_largest_slide() -> None:
    """Ledges stand proud for the thickest; the slot is the widest of any."""
    wide = replace(SLIDE, slide_width=inch("2"))

    (jig,) = _jigs(BOX, SLIDE, wide, thick=("3/4", "7/8", "3/4"))

    assert jig.ledges.overhang == inch("7/8")
    assert jig.slot is not None
    assert jig.slot.width == inch("2 1/8")


def test_inset_fronts_share_their_shims() -> None:
    """Two at the sides and two below serve every front in turn."""
    of = kitchen(*_run(BOX, BOX), standard=INSET)

    assert schedule(of).shims == (Shim(inch("3/32"), 2, 2, ("B1.a", "B2.a")),)


def test_shims_by_thickness() -> None:
    """Another gap below, and one side that differs: each thickness with what it is for."""
    gaps = Sides(inch("3/32"), inch("1/16"), inch("3/32"), inch("1/8"))
    of = kitchen(*_run(BOX), standard=Standard(mount="inset", inset_gap=gaps), step=inch("1/32"))

    assert [(each.thickness, each.side, each.bottom) for each in schedule(of).shims] == [
        (inch("1/16"), 1, 0),
        (inch("3/32"), 1, 0),
        (inch("1/8"), 0, 2),
    ]


def test_overlay_fronts_need_no_shims() -> None:
    """They are hung on jigs."""
    found = schedule(kitchen(*_run(BOX)))

    assert found.shims == ()
    assert len(found.jigs) == 1
