"""What a thing was when its form was made, so that a stale form is noticed."""

import hashlib

from django.db.models import Model


def version_of(*rows: Model | None) -> str:
    """A short text that changes with every value of the rows; "" for a thing not yet saved."""
    saved = [row for row in rows if row is not None and row.pk is not None]
    if not saved:
        return ""
    values = [
        (field.attname, field.value_to_string(row))
        for row in saved
        for field in row._meta.concrete_fields
        if field.attname != "position"
    ]
    return hashlib.sha256(repr(values).encode()).hexdigest()[:16]
