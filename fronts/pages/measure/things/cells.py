"""The form behind a row of a wall's table: what isn't typed in its cells stays as it is."""

import json
import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import partial
from typing import Any, TypeAlias, TypeVar

from fronts.models.kept import Kept
from fronts.pages.measure.forms.door_choice import door_labels
from fronts.pages.measure.forms.faced_cabinet import FacedCabinetForm
from fronts.pages.measure.forms.openings import OpeningForm
from fronts.pages.measure.things.door_cells import DoorCellsForm
from fronts.pages.measure.things.doors import DOORS
from fronts.pages.measure.things.others import OTHERS
from fronts.pages.shared.item_choice import items_of
from fronts.pages.shared.kitchen_form import KitchenForm
from fronts.rules.kitchen import Opening
from fronts.selectors.kitchens import cabinet_of, opening_of, thing_of
from fronts.services.saved_faces import faces_of
from fronts.snapshot.standards import standard_of
from fronts.snapshot.things import at_hand, whole
from shopjobs.edit_conflict import last_writer
from shopjobs.forms.seen import SEEN, shown
from shopjobs.models import Job

Form = TypeVar("Form", bound=KitchenForm)
Seen: TypeAlias = Mapping[str, str] | None
_KEY = re.compile(r"((?:cabinet|opening|thing|door)-([0-9]{1,18}))-([a-z_]+)")


@dataclass(frozen=True, slots=True)
class RowForm:
    """The form of one row, bound to what its cells say, and the row as it then is."""

    key: str
    row: Kept
    form: KitchenForm
    entered: Callable[[], Any]
    face: Callable[[], Sequence[Opening] | None] = lambda: None
    """The openings of a face that was typed, None where that stays."""


def typed_cells(data: Mapping[str, str]) -> dict[str, dict[str, str]]:
    """What was typed, by the keys of rows and the names of their facts."""
    typed: dict[str, dict[str, str]] = {}
    for name in data:
        found = _KEY.fullmatch(name)
        if found:
            typed.setdefault(found[1], {})[found[3]] = data[name]
    return typed


def row_form(job: Job, key: str, typed: Mapping[str, str], seen: Seen) -> RowForm:
    """The form of a row; raises what its selector raises where there is none of this key.

    Without what the cells showed before, `seen`, nothing that others saved goes together with it.
    """
    kind, _, number = key.partition("-")
    return _FORMS[kind](job, key, int(number), typed, seen)


def _bound(
    make: Callable[..., Form],
    job: Job,
    row: Kept,
    key: str,
    typed: Mapping[str, str],
    seen: Seen,
) -> Form:
    """The form with what it shows, but for the cells: `seen` is what they showed."""
    said = {**shown(make(None)), **typed}
    data = {f"{key}-{name}": value for name, value in said.items()}
    if seen is not None:
        data[f"{key}-{SEEN}"] = json.dumps({name: seen[name] for name in typed if name in seen})
    form = make(data, prefix=key)
    form.is_merged = seen is not None
    form.written_by = partial(last_writer, job, (row,))
    return form


def _cabinet(job: Job, key: str, number: int, typed: Mapping[str, str], seen: Seen) -> RowForm:
    cabinet = cabinet_of(job, number)
    held, standard = whole(cabinet), standard_of(cabinet)

    def make(data: Any, **more: Any) -> FacedCabinetForm:
        faces = partial(faces_of, job.shop)
        return FacedCabinetForm(data, job=job, cabinet=held, faces=faces, **more)

    form = _bound(make, job, cabinet, key, typed, seen)
    return RowForm(
        key, cabinet, form, lambda: replace(form.entered, standard=standard), lambda: form.openings
    )


def _opening(job: Job, key: str, number: int, typed: Mapping[str, str], seen: Seen) -> RowForm:
    opening = opening_of(job, number)
    known: dict[str, Any] = {
        "unit": job.unit, "before": at_hand(opening),
        "doors": door_labels(job), "items": items_of(job),
    }  # fmt: skip
    form = _bound(
        lambda data, **more: OpeningForm(data, **known, **more), job, opening, key, typed, seen
    )
    return RowForm(key, opening, form, lambda: form.entered)


def _thing(job: Job, key: str, number: int, typed: Mapping[str, str], seen: Seen) -> RowForm:
    row = thing_of(job, OTHERS.table, number)

    def make(data: Any, **more: Any) -> KitchenForm:
        form = OTHERS.form(data, unit=job.unit, held=at_hand(row), **more)
        if OTHERS.settle is not None:
            OTHERS.settle(form, job, row)
        return form

    form = _bound(make, job, row, key, typed, seen)
    return RowForm(key, row, form, lambda: form.entered)


def _door(job: Job, key: str, number: int, typed: Mapping[str, str], seen: Seen) -> RowForm:
    row = thing_of(job, DOORS.table, number)
    held = at_hand(row)

    def make(data: Any, **more: Any) -> DoorCellsForm:
        return DoorCellsForm(data, unit=job.unit, held=held, **more)

    form = _bound(make, job, row, key, typed, seen)
    return RowForm(key, row, form, lambda: replace(form.entered, hinge_bores=held.hinge_bores))


_FORMS = {"cabinet": _cabinet, "opening": _opening, OTHERS.one: _thing, DOORS.one: _door}
