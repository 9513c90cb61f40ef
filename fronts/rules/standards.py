"""The house standard: its defaults, and which level's word holds.

A key is taken from the opening if it says something, else from its cabinet, else from what all
cabinets of its kind say, else from the job (which already holds the shop's). A level that
gives `overlay` or `reveal` replaces both of a farther level; other keys fall through one by one.
"""

from dataclasses import fields, replace
from typing import Any

from fronts.rules.fact_kinds import Declared, EachSide, ItemCode, Length, Text, Word
from fronts.rules.facts import facts_of
from fronts.rules.job_facts import Stock
from fronts.rules.practice import inches
from fronts.rules.standard_keys import Settled, Sides, Standard

EMPTY = Standard()


def _usual(declared: Declared) -> Any:
    match declared:
        case EachSide(usual=usual) if usual is not None:
            return Sides(usual, usual, usual, usual)
        case Length(usual=usual) | Word(usual=usual) | Text(usual=usual) | ItemCode(usual=usual):
            return usual
        case _:
            return None


DEFAULTS = Settled(**{fact.name: _usual(fact.declared) for fact in facts_of(Settled)})
"""What holds where no level says anything."""

COMMON_STOCK = Stock(
    screw_lengths=(inches(3, 4), inches(1), inches(5, 4), inches(3, 2)),
    knob_screw_lengths=(inches(1), inches(7, 4)),
    knob_thread="8-32",
    knob_thread_depth=inches(1, 2),
    slide_lengths=tuple(inches(length) for length in (12, 14, 16, 18, 20, 22, 24)),
)
"""What is taken to lie on the shelf where nobody says (common practice, no source)."""


def settled(*levels: Standard) -> Settled:
    """The standard in force, from `levels` nearest first."""
    merged = merge(*levels)
    said = {key.name: getattr(merged, key.name) for key in fields(Standard)}
    return replace(DEFAULTS, **{key: value for key, value in said.items() if value is not None})


def merge(*levels: Standard) -> Standard:
    """One level that says what all `levels`, nearest first, say together."""
    merged = EMPTY
    for level in levels:
        if level != EMPTY:
            merged = _under(merged, level)
    return merged


def _under(near: Standard, far: Standard) -> Standard:
    laps_said = near.overlay is not None or near.reveal is not None
    taken = {}
    for key in fields(Standard):
        if laps_said and key.name in ("overlay", "reveal"):
            continue
        if getattr(near, key.name) is None:
            taken[key.name] = getattr(far, key.name)
    return replace(near, **taken)
