"""What a row was when its form was made, so that a stale form is noticed."""

import hashlib
from typing import Any

from django.db.models import Model


def version_of(row: Model) -> str:
    """A short text that changes with every value of the row; "" for a row not yet kept."""
    if row.pk is None:
        return ""
    values = [
        (field.attname, field.value_to_string(row))
        for field in row._meta.concrete_fields
        if field.attname != "position"
    ]
    return hashlib.sha256(repr(values).encode()).hexdigest()[:16]


def meanwhile(row: Model, values: dict[str, Any]) -> dict[str, Any]:
    """What the row says now where a stale form says something else."""
    found = {name: getattr(row, name) for name in values if hasattr(row, name)}
    return {name: value for name, value in found.items() if value != values[name]}
