"""Whose kitchen it is, and what the shop keeps on its shelves."""

from dataclasses import dataclass
from datetime import date
from typing import Annotated

from fronts.rules import limits
from fronts.rules.fact_kinds import Day, Label, Length, Lengths, Text, Thread, Word
from fronts.rules.kinds import UNITS, Unit
from fronts.rules.lengths import Mm
from fronts.rules.practice import inches

HALF_INCH = inches(1, 2)
SIXTEENTH = inches(1, 16)


@dataclass(frozen=True, slots=True)
class Stock:
    """What the shop keeps: lengths on the shelf, and the knobs' thread."""

    screw_lengths: Annotated[tuple[Mm, ...], Lengths("mounting screws", limits.MOST_LENGTHS)] = ()
    knob_screw_lengths: Annotated[tuple[Mm, ...], Lengths("knob screws", limits.MOST_LENGTHS)] = ()
    knob_thread: Annotated[str, Thread("thread")] = "8-32"
    knob_thread_depth: Annotated[
        Mm, Length("depth of the thread in the knob", small=True, asks="the thread's depth")
    ] = HALF_INCH
    slide_lengths: Annotated[tuple[Mm, ...], Lengths("slides", limits.MOST_LENGTHS)] = ()


NO_STOCK = Stock()


@dataclass(frozen=True, slots=True)
class JobFacts:
    """Whose kitchen it is, and in which unit and step the shop works on it."""

    number: Annotated[str, Label("number", example="K-104")]
    client: Annotated[str, Text("client", limits.LONGEST_CLIENT)] = ""
    site: Annotated[str, Text("site", limits.LONGEST_SITE)] = ""
    unit: Annotated[Unit, Word("unit", UNITS)] = "in"
    step: Annotated[Mm, Length("step", most=limits.COARSEST_STEP)] = SIXTEENTH
    fit_on: Annotated[date | None, Day("to be fitted on")] = None
