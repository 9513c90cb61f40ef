"""What a row holds, as JSON holds it; and a row's values from that again."""

from collections.abc import Iterable, Mapping
from typing import Any

from django.db.models import Field, ForeignKey, Model

PLAIN = (type(None), bool, int, float, str, list, dict)
"""What JSON holds as it is; everything else goes as its field's own text."""

Values = dict[str, Any]


def value_of(field: "Field[Any, Any]", row: Model) -> Any:
    """What a row holds in one column; what it points at as that row's key."""
    value = field.value_from_object(row)
    return value if isinstance(value, PLAIN) else field.value_to_string(row)


def python_value(field: "Field[Any, Any]", value: Any) -> Any:
    """What the row's attribute is where JSON holds the value."""
    return value if isinstance(field, ForeignKey) else field.to_python(value)


def said_of(row: Model, columns: Iterable["Field[Any, Any]"]) -> Values:
    """What a row says: its values by column, without those that are nothing."""
    values = {field.attname: value_of(field, row) for field in columns}
    return {name: value for name, value in values.items() if value not in (None, "")}


def nothing(field: "Field[Any, Any]") -> Any:
    """What a column holds of which nothing is said."""
    return None if field.null else ""


def row_with(table: type[Model], key: Any, said: Mapping[str, Any]) -> Model:
    """A row under its key that says this, not yet saved."""
    values = {
        field.attname: python_value(field, said.get(field.attname, nothing(field)))
        for field in table._meta.concrete_fields
        if not field.primary_key
    }
    return table(pk=key, **values)
