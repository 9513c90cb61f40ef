"""What a fitting sheet says where the hand is: pieces, places, weights, slides, cautions."""

import re
from dataclasses import replace

import pytest

from fronts.figures.boxes import box_figures
from fronts.figures.knobs import knob_lines
from fronts.figures.weights import needs_two_people
from fronts.figures.work_steps import work_for
from fronts.rules.handles import handles_at
from fronts.rules.items import HandleItem, Hardware
from fronts.rules.kitchen import FrontFacts, Kitchen, Measured, Opening, Point
from fronts.rules.knob_fixing import has_own_hole
from fronts.rules.lengths import read
from fronts.rules.merged_jigs import merged_jigs
from fronts.rules.runs import stood
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from tests.drawings.kitchens import demo, pull_out
from tests.kitchen_files import metric_kitchen
from tests.rules.small_kitchens import BOX, cabinet, inch, kitchen, opening
from tests.rules.small_kitchens import only_front as front_of
from tests.sheets.printed import demo_pages, fitting_pages

pytestmark = pytest.mark.slow


def printed(of: Kitchen) -> str:
    """The text of all its fitting sheets."""
    return " ".join(" ".join(fitting_pages(of)).split())


def steps_of(of: Kitchen) -> list[str]:
    """The steps of its only front."""
    found = schedule(of)
    fittings = {each.front: each for each in found.fittings}
    return [step for work in work_for(found.fronts, fittings, of) for step in work.steps]


def test_a_metric_kitchen_is_told_in_millimetres() -> None:
    """A pull-out and a door of the demo's: screws, drill, ledges and plates as they are sold."""
    metric = metric_kitchen()
    shown = tuple(one for one in metric.cabinets if one.label in ("B5", "W3"))
    text = printed(replace(metric, cabinets=shown))

    for words in ("4 pc, M4 × 30", "⌀ 6 stop", "2 of 6 × 60", "2 pc, M4 × 40", "37 mm back"):
        assert words in text
    assert not re.search(r"\d in\b|#8|8-32", text)


def test_pieces_stand_apart_from_their_sizes() -> None:
    """`4 pc, #8 × 1 1/4`: nobody reads a screw of 4 × 1 1/4."""
    text = printed(kitchen(pull_out()))
    assert "4 pc, #8 × 1 1/4" in text
    assert "1 pc, 8-32 × 1 3/4" in text
    everything = " ".join(" ".join(demo_pages("fitting")).split())
    assert not re.search(r"\d × [\d/ ]+ (#8|8-32)", everything)


def test_figures_come_in_the_order_in_which_they_are_used() -> None:
    """The box goes in on its slide and is drilled before the front is set, the knob comes last."""
    of, worked_out = demo()
    jigs = merged_jigs(worked_out, stood(of))
    used = ["Slide", "Drill", "Side offset", "Jig", "Ledges", "Slot", "Side shims",
            "Bottom shims", "Screws", "Knob", "Pull", "Knob screw"]  # fmt: skip
    for fit in worked_out.fittings:
        lines = box_figures(worked_out.front(fit.front), fit, of, jigs)
        names = [each.name for each in lines]
        assert names == [name for name in used if name in names]
        assert {"Slide", "Drill", "Screws", "Knob screw"} <= set(names)


def test_a_knob_is_marked_to_the_shops_step() -> None:
    """5 21/64 and 3 1/32, where the shop works to 1/16: 5 5/16 and 3 1/16, and it is said."""
    of = kitchen(cabinet(opening()))
    (even,) = (each for each in knob_lines(front_of(of), None, of) if each.name == "Knob")
    front, place = front_of(of), Point(inch("5 21/64"), inch("3 1/32"))
    odd = replace(front, handles=handles_at([place], None, front.kind, front.face, "8-32"))
    (line,) = (each for each in knob_lines(odd, None, of) if each.name == "Knob")
    assert line.figure.replace("\u00a0", " ") == "→ 5 5/16 ↑ 3 1/16"
    assert line.more.endswith(", to the nearest 1/16")
    assert even.more == "from lower left, seen from the front"


def test_no_knob_of_the_demo_is_drilled_to_a_64th() -> None:
    """Rounded to 1/16 it says so; a hole that is there is where it is."""
    of, worked_out = demo()
    rounded = 0
    for front in worked_out.fronts:
        if not front.knobs or has_own_hole(front, of):
            continue
        (line,) = (each for each in knob_lines(front, None, of) if each.name in {"Knob", "Pull"})
        for part in re.findall(r"[→↑]\u00a0([\d\u00a0/]+)", line.figure):
            assert read(part.strip("\u00a0").replace("\u00a0", " "), "in") % inch("1/16") == 0
        off = any(at % inch("1/16") for knob in front.knobs for at in (knob.x, knob.y))
        assert off == line.more.endswith(", to the nearest 1/16")
        rounded += off
    assert rounded


def test_a_pull_is_called_one() -> None:
    """Two screws of its own thread; whoever has knobs reads of none."""
    pull = Hardware(handles=(HandleItem("P", centres=read("96", "mm"), thread="M4"),))
    of = kitchen(cabinet(opening()), hardware=pull)
    lines = {each.name: each.figure for each in knob_lines(front_of(of), None, of)}
    assert lines["Pull"].count("→") == 2
    assert lines["Knob screw"].startswith("2 pc, M4 × ")
    assert "Drill for the pull last, backing block behind." in steps_of(of)
    text = printed(of)
    assert "knob" not in text
    assert "pull" not in printed(kitchen(cabinet(opening())))


def test_a_heavy_front_is_lifted_by_two() -> None:
    """Over 20 kg (common practice, no source), said beside the weight and at the lift."""
    light = kitchen(cabinet(opening()))
    heavy = replace(light, cabinets=(cabinet(
        opening(front=FrontFacts(thickness=inch("3")), height=inch("60"), width=inch("30")),
        width=inch("33"), height=inch("63"),
    ),))  # fmt: skip
    assert [needs_two_people(front_of(of)) for of in (light, heavy)] == [False, True]
    assert "two people" not in printed(light)
    assert "Two people: over 20 kg (44 lb)." in steps_of(heavy)
    pounds = f"{float(front_of(heavy).weight_kg) / 0.45359237:.1f} lb"  # international pound, 1959
    assert f"{pounds} two people" in printed(heavy)


def test_every_box_says_which_slide() -> None:
    """Kind and length on the sheet of its cabinet."""
    text = " ".join(" ".join(demo_pages("fitting")).split())
    for fit in demo()[1].fittings:
        assert fit.slide_length is not None
        of = demo()[0]
        lines = box_figures(demo()[1].front(fit.front), fit, of, merged_jigs(demo()[1], stood(of)))
        (slide,) = (each for each in lines if each.name == "Slide")
        assert fit.slide is not None
        assert fit.slide in slide.more
        assert f"{slide.figure} {slide.more}" in text


def test_what_was_measured_stands_beside_the_drawing() -> None:
    """Widths, heights and diagonals as they were taken, by where; nothing where none were."""
    taken = Measured(width_top=inch("15 1/16"), height_left=inch("27 3/8"),
                     diagonal_1=inch("31 5/16"), diagonal_2=inch("31 3/8"))  # fmt: skip
    text = printed(kitchen(cabinet(opening(measured=taken))))
    assert (
        "B1.a as measured: width 15 1/16 at the top; height 27 3/8 at the left; "
        "diagonal 31 5/16 ↗, 31 3/8 ↘."
    ) in text
    assert "as measured" not in printed(kitchen(cabinet(opening())))


INSET = Standard(mount="inset")


@pytest.mark.parametrize(
    ("one", "step", "said"),
    [
        (opening("pull-out", boxes=(BOX,)), "before it is loaded", True),
        (opening("drawer", boxes=(BOX,)), "before it is loaded", False),
        (opening("pull-out", boxes=(replace(BOX, front_thickness=inch("1")),)),
         "knob on first", True),
        (opening("pull-out", boxes=(BOX,)), "knob on first", False),
        (opening("pull-out", boxes=(BOX,), standard=INSET), "a pull of tape", True),
        (opening("pull-out", boxes=(BOX,)), "a pull of tape", False),
        (opening("pull-out", boxes=(BOX,)), "try it on a thin shim", True),
        (opening("pull-out", boxes=(BOX,)), "Open gently; tighten inside; try again", True),
        (opening(hinged="top"), "fingers clear", True),
        (opening(), "fingers clear", False),
        (opening(), "backing block", True),
    ],
)  # fmt: skip
def test_a_caution_stands_in_the_step_that_it_belongs_to(
    one: Opening, step: str, said: bool
) -> None:
    """And not where there is nothing to mind."""
    assert any(step in each for each in steps_of(kitchen(cabinet(one)))) == said


def test_a_recessed_knob_goes_on_before_the_front_is_set() -> None:
    """Its screw's head lies behind the front; it is not drilled for at the end."""
    box = replace(BOX, front_thickness=inch("1"))
    steps = steps_of(kitchen(cabinet(opening("pull-out", boxes=(box,)))))
    on, set_ = (next(at for at, each in enumerate(steps) if words in each)
                for words in ("knob on first", "Front on the ledges"))  # fmt: skip
    assert on < set_
    assert not any("Drill for the knob last" in each for each in steps)


def test_a_bought_door_comes_bored() -> None:
    """Its maker bores the cups: the installer holds them against the figures."""
    door = kitchen(cabinet(opening(), standard=Standard(made_by="bought")))
    steps = " ".join(steps_of(door))
    assert "Bored by its maker: check the cups." in steps
    assert "Bore the cups" not in steps
    assert "bored by the door maker" in printed(door)
    assert "bored by the door maker" not in printed(kitchen(cabinet(opening())))


def test_of_a_pair_only_what_is_made_here_is_bored() -> None:
    """Each step says for which of them it is."""
    bought, own = FrontFacts(made_by="bought"), FrontFacts(made_by="here")
    pair = replace(opening("pair"), fronts=(bought, own))
    steps = " ".join(steps_of(kitchen(cabinet(pair))))
    assert "B1.a.1: Bored by its maker: check the cups. B1.a.2: Bore the cups, stop set." in steps
