"""What somebody changed of a kitchen, as one line: `B5.a: width 27 → 26 7/8`."""

from collections.abc import Mapping, Sequence
from typing import Any

from django.apps import apps

from fronts.facts.column_words import column_words, in_words
from fronts.models import DoorOnHand, JobStandard, ShopStandard, Stock
from fronts.models.kept import Kept
from fronts.rules.job_facts import Stock as StockFacts
from fronts.rules.standard_keys import Standard
from shopjobs.services.row_changes import RowChange
from shopjobs.services.row_values import python_value

_KINDS: Mapping[type, type] = {JobStandard: Standard, ShopStandard: Standard, Stock: StockFacts}
"""Tables that keep declared facts without being things of a kitchen."""
_BESIDE = {"choose": "whichever door on hand fits", "door_id": "door on hand"}
"""Columns that say together what one fact declares."""
_POSITION = "position"


def line_of(changes: Sequence[RowChange], unit: str) -> str:
    """Every fact that changed, thing by thing; "" where a thing was made or deleted."""
    if any(change.before is None or change.after is None for change in changes):
        return ""
    lines = [_line(change, unit) for change in changes]
    return "; ".join(line for line in lines if line)


def facts_that_changed(change: RowChange, unit: str) -> list[tuple[str, str, str]]:
    """What each fact of a row is called, and what it was and is, in words."""
    table = apps.get_model(change.table)
    kind = table.facts if issubclass(table, Kept) else _KINDS.get(table)
    words = {} if kind is None else column_words(kind)
    before, after = change.before or {}, change.after or {}
    said = []
    for name in {**before, **after}:
        if name == _POSITION:
            continue
        column = table._meta.get_field(name)
        called, declared = words.get(column.name) or (_BESIDE.get(name, column.verbose_name), None)
        was, now = (
            _door(side.get(name)) if column.related_model is DoorOnHand
            else in_words(python_value(column, side.get(name)), declared, unit)
            for side in (before, after)
        )  # fmt: skip
        said.append((str(called), was, now))
    return said


def _line(change: RowChange, unit: str) -> str:
    facts = [f"{called} {was} → {now}" for called, was, now in facts_that_changed(change, unit)]
    return f"{change.name}: {', '.join(facts)}" if facts and change.name else ""


def _door(key: Any) -> str:
    if key is None:
        return "nothing"
    label = DoorOnHand.objects.filter(pk=key).values_list("label", flat=True).first()
    return label or "a door that is gone"
