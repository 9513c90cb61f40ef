"""Kitchens to draw: the demo's, and small ones with the trouble that a test is about."""

from dataclasses import replace
from functools import cache
from pathlib import Path

from fronts.drawings.front_view import Bores
from fronts.jobfile import read_file
from fronts.rules.box_facts import Box
from fronts.rules.job_facts import JobFacts
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.practice import PRACTICE
from fronts.rules.results import Schedule
from fronts.rules.schedule import schedule
from tests.rules.small_kitchens import BOX, cabinet, inch, kitchen, opening

DEMO = Path(__file__).resolve().parents[2] / "fixtures" / "demo.job.json"
BORES = Bores(PRACTICE.knob_hole, PRACTICE.cup_diameter)
HOSTILE = '<script>alert("1")</script>&\'; ../../x 🪚'


@cache
def demo() -> tuple[Kitchen, Schedule]:
    """The demo kitchen and its schedule."""
    found = read_file(str(DEMO)).kitchen
    return found, schedule(found)


def demo_walls() -> list[str]:
    """The walls of the demo kitchen."""
    return list(dict.fromkeys(each.wall for each in demo()[0].cabinets))


def demo_cabinets() -> list[str]:
    """The cabinets of the demo kitchen."""
    return [each.label for each in demo()[0].cabinets]


def off_centre_box() -> Box:
    """A box that stands 1/4 in from the opening's left edge and 3/4 in from its right."""
    return replace(BOX, side_clearance=inch("1/4"))


def pull_out(label: str = "B1", **changes: object) -> Cabinet:
    """A base cabinet with one pull-out on a box off the middle."""
    hole = opening("pull-out", boxes=(off_centre_box(),))
    return replace(cabinet(hole), label=label, **changes)  # type: ignore[arg-type]


def too_close() -> Kitchen:
    """Two doors whose fronts are 1/32 in apart where 1/16 in is the least: a stop for both."""
    wide = opening(x=inch("1/2"), width=inch("17"))
    first = cabinet(wide)
    second = replace(first, label="B2", x=inch("18 1/32"))
    return kitchen(first, second)


def hostile() -> Kitchen:
    """Every text that a person may enter, as bad as it may come."""
    named = replace(opening(), label=HOSTILE)
    long = replace(pull_out("W" * 40), x=inch("18"))
    found = kitchen(cabinet(named, label=HOSTILE, wall=HOSTILE), replace(long, wall=HOSTILE))
    job = JobFacts(HOSTILE, client=HOSTILE, site="é" * 40 + HOSTILE, step=found.job.step)
    return replace(found, job=job)
