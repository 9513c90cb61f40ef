"""A row as a line of a shop's file, and back; what it holds is checked as if it were typed."""

from collections.abc import Mapping
from typing import Any

from django.core.exceptions import ValidationError
from django.db.models import DateField, Field, FileField, Model

from shopjobs.row_values import Values, value_of
from shopjobs.services.refused import Refused
from shopjobs.services.shop_files.files import file_here, file_value
from shopjobs.services.shop_files.tables import Table, label_of, plain_fields, references


def values_of(row: Model) -> Values:
    """All that a row holds, what it points at as the keys of those rows."""
    return {field.name: _value_of(field, row) for field in plain_fields(type(row))} | {
        reference.name: getattr(row, reference.attname) for reference in references(type(row))
    }


def _value_of(field: "Field[Any, Any]", row: Model) -> Any:
    """The value as JSON holds it; an uploaded file goes along, by its name."""
    return (
        file_value(getattr(row, field.attname))
        if isinstance(field, FileField)
        else value_of(field, row)
    )


def row_from(table: Table, values: Mapping[str, Any], *, where: str) -> Model:
    """A new row with these values, pointing at nothing yet; `where` is told in a refusal."""
    fields = plain_fields(table)
    names = {field.name for field in (*fields, *references(table))}
    if names != values.keys():
        odd = ", ".join(sorted(names ^ values.keys()))
        raise Refused(f"{where}: these are not the columns of {label_of(table)} ({odd})")
    return table(**{field.attname: _checked(field, values[field.name], where) for field in fields})


def clock_fields(table: Table) -> list[str]:
    """The columns that Django sets to the time of saving, whatever a row says."""
    return [
        field.name
        for field in plain_fields(table)
        if isinstance(field, DateField) and (field.auto_now or field.auto_now_add)
    ]


def _checked(field: "Field[Any, Any]", value: Any, where: str) -> Any:
    """The value as its field reads it. A blank is what a form may refuse, and a row may hold."""
    if isinstance(field, FileField):
        return file_here(field, value, where)
    try:
        return field.clean(value, None)
    except ValidationError as error:
        if getattr(error, "code", "") == "blank":
            return value
        raise Refused(f"{where}, {field.name}: {error.messages[0]}") from error
    except (TypeError, ValueError, ArithmeticError, AttributeError) as error:
        raise Refused(f"{where}, {field.name}: this value can't be read") from error
