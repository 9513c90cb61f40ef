"""What the shop keeps, and its own numbers; a job's own come first."""

from collections.abc import Iterable
from dataclasses import replace
from fractions import Fraction
from typing import Any

from django.db.models import F

from fronts import models
from fronts.models.standard import SharedStandard
from fronts.rules.job_facts import Stock
from fronts.rules.lengths import Mm
from fronts.rules.practice import PRACTICE, Practice
from fronts.rules.standards import COMMON_STOCK
from fronts.snapshot.in_force import row_in_force, rows_for
from shopjobs.models import Job, Shop


def stock_in_force(owner: Shop | Job) -> Stock:
    """The job's own stock, else its shop's, else what is commonly kept."""
    row = row_in_force(models.Stock, owner)
    if row is None:
        return COMMON_STOCK
    return Stock(
        screw_lengths=_without_blanks(row.screw_lengths),
        knob_screw_lengths=_without_blanks(row.knob_screw_lengths),
        knob_thread=row.knob_thread,
        knob_thread_depth=row.knob_thread_depth,
        slide_lengths=_without_blanks(row.slide_lengths),
    )


def practice_in_force(owner: Shop | Job, *levels: SharedStandard | None) -> Practice:
    """The shop's numbers and tables, with the job's own over them."""
    numbers = models.ShopNumber.objects.filter(rows_for(owner))
    changed: dict[str, Any] = {
        row.name: getattr(PRACTICE, row.name) if row.value is None else Fraction(row.value)
        for row in numbers.order_by(F("job").asc(nulls_first=True))
    }
    for level in levels:
        changed |= tables_of(level)
    return replace(PRACTICE, **changed) if changed else PRACTICE


def tables_of(level: SharedStandard | None) -> dict[str, Any]:
    """What one level says of the shop's tables, by their names in `Practice`."""
    if level is None:
        return {}
    words = {name: getattr(level, name) for name in ("material", "frame_material")}
    found: dict[str, Any] = {name: said for name, said in words.items() if said}
    for name in ("hinges_by_height", "hinges_by_weight"):
        rows = getattr(level, name)
        if rows is not None:
            found[name] = tuple((Fraction(most), int(count)) for most, count in rows)
    if level.slide_classes is not None:
        found["slide_classes"] = tuple(Fraction(each) for each in level.slide_classes)
    return found


def _without_blanks(lengths: Iterable[Mm | None]) -> tuple[Mm, ...]:
    return tuple(each for each in lengths if each is not None)
