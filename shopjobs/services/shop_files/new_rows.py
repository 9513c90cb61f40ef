"""Rows of a file as they become rows of this database, under keys of their own."""

from collections.abc import Hashable, Sequence
from dataclasses import dataclass
from typing import Any

from django.db import IntegrityError
from django.db.models import ForeignKey, Model

from shopjobs.models import Revision
from shopjobs.row_values import Values
from shopjobs.services.refused import Refused, first_line
from shopjobs.services.shop_files.history_keys import changes_here
from shopjobs.services.shop_files.new_keys import NewKeys
from shopjobs.services.shop_files.rows import clock_fields, row_from
from shopjobs.services.shop_files.tables import Table, label_of, references, target_of


@dataclass(frozen=True, slots=True)
class Line:
    """One row as the file states it, under the key that it had where it comes from."""

    label: str
    key: Hashable
    values: Values

    def __str__(self) -> str:
        return f"{self.label} {self.key}"


class NewRows:
    """Writes rows and remembers each one's new key; what it can't point at yet, it settles last."""

    def __init__(self) -> None:
        self._keys = NewKeys()
        self._later: list[tuple[Line, Model, ForeignKey[Any, Any]]] = []

    def write(self, table: Table, lines: Sequence[Line]) -> None:
        """Write rows of one table, with every value as it is stated."""
        rows = [self._row(table, line) for line in lines]
        clocks = clock_fields(table)
        stated = [{name: getattr(row, name) for name in clocks} for row in rows]
        try:
            table._base_manager.bulk_create(rows)
        except IntegrityError as error:
            first = first_line(error)
            raise Refused(f"The rows of {label_of(table)} don't fit: {first}") from error
        if clocks:
            for row, times in zip(rows, stated, strict=True):
                vars(row).update(times)
            table._base_manager.bulk_update(rows, clocks)
        for line, row in zip(lines, rows, strict=True):
            self._keys.give(line.label, line.key, row.pk)
        # Revisions name earlier ones too, so that these have their keys by now.
        revisions = [row for row in rows if isinstance(row, Revision)]
        for revision in revisions:
            revision.changes = changes_here(revision.changes, self._keys)
        Revision._base_manager.bulk_update(revisions, ["changes"])

    def settle(self) -> None:
        """Let rows point at those that came after them."""
        for line, row, reference in self._later:
            new = self._new_key(line, reference)
            if new is None:
                raise _outside(line, reference)
            type(row)._base_manager.filter(pk=row.pk).update(**{reference.attname: new})

    def _row(self, table: Table, line: Line) -> Model:
        row = row_from(table, line.values, where=str(line))
        for reference in references(table):
            new = self._new_key(line, reference)
            if new is not None:
                setattr(row, reference.attname, new)
            elif not reference.null:
                raise _outside(line, reference)
            elif line.values[reference.name] is not None:
                self._later.append((line, row, reference))
        return row

    def _new_key(self, line: Line, reference: "ForeignKey[Any, Any]") -> Any:
        """The key here of the row that it points at; None as long as there is none."""
        return self._keys.of(target_of(reference), line.values[reference.name])


def _outside(line: Line, reference: "ForeignKey[Any, Any]") -> Refused:
    return Refused(f"{line}, {reference.name}: it points at nothing in this file.")
