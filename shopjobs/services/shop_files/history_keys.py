"""History names rows by their keys, so that it can bring them back; here they have others.

Left as they are, Undo in a shop that has moved would change rows of another.
"""

from typing import Any

from django.apps import apps

from shopjobs.models import Person, Revision
from shopjobs.row_changes import RowChange
from shopjobs.row_values import Values
from shopjobs.services.refused import Refused
from shopjobs.services.shop_files.new_keys import NewKeys
from shopjobs.services.shop_files.newcomers import RIGHTS
from shopjobs.services.shop_files.tables import label_of, references, target_of


def changes_here(changes: object, keys: NewKeys) -> list[Any]:
    """The changes of a revision, each row under the key that it has here."""
    if not isinstance(changes, list):
        raise _unreadable()
    return [_change_here(change, keys).as_json() for change in changes]


def _change_here(change: object, keys: NewKeys) -> RowChange:
    match change:
        case [str(label), key, before, after]:
            name = ""
        case [str(label), key, before, after, str(name)]:
            pass
        case _:
            raise _unreadable()
    return RowChange(
        table=label,
        key=keys.of_any(label, key),
        before=_values_here(label, before, keys),
        after=_values_here(label, after, keys),
        name=name,
    )


def _values_here(label: str, values: object, keys: NewKeys) -> Values | None:
    """What a row said, without rights over the installation, which nothing may bring back."""
    if values is None:
        return None
    if not isinstance(values, dict):
        raise _unreadable()
    here = dict(values)
    for reference in references(apps.get_model(label)):
        if here.get(reference.attname) is not None:
            here[reference.attname] = keys.of_any(target_of(reference), here[reference.attname])
    if label == label_of(Person):
        here |= dict.fromkeys(RIGHTS & here.keys(), False)
    if label == label_of(Revision) and "changes" in here:
        here["changes"] = changes_here(here["changes"], keys)
    return here


def _unreadable() -> Refused:
    return Refused("This file's history can't be read.")
