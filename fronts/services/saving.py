"""How every service saves a row, counts the change and tells of it."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import datetime
from functools import partial
from typing import TypeVar

from django.core.exceptions import ValidationError
from django.db import IntegrityError
from django.db.models import Model

from fronts.models import Cabinet
from fronts.services.change_lines import line_of
from shopjobs.models import Job, Person, Shop
from shopjobs.services import recording
from shopjobs.services.recording import Told, tell

Row = TypeVar("Row", bound=Model)
_BEFORE, _EVER, _SAVED = "_before_entering", "_ever_changed", "_was_saved"
_NOTHING = object()


class AskFirst(ValueError):  # noqa: N818 - a question, no error
    """What was asked would take what somebody else did; `dependents` names that.

    The same service does it once it is called with `confirmed=True`.
    """

    def __init__(self, message: str, dependents: Iterable[str]) -> None:
        super().__init__(message)
        self.message = message
        self.dependents = tuple(dependents)


def enter(row: Model, values: Mapping[str, object]) -> None:
    """Put the values into the row, by the names of its columns."""
    _remember(row)
    for name, value in values.items():
        setattr(row, name, value)


def changed(row: Model) -> set[str]:
    """The columns that may differ from what the database holds: all of a row not yet saved.

    A column that ever differed stays among them, since what was saved may have been undone.
    """
    columns = {field.attname for field in row._meta.concrete_fields if not field.primary_key}
    held, before = row.__dict__, row.__dict__.get(_BEFORE)
    if row._state.adding or before is None:
        return columns
    ever: set[str] = held[_EVER]
    ever |= {name for name in columns & held.keys() if held[name] != before.get(name, _NOTHING)}
    return ever


def _remember(row: Model) -> None:
    """Keep what the row holds before anything is entered; what came since then counts too."""
    if _BEFORE in row.__dict__:
        changed(row)
    elif not row._state.adding:
        row.__dict__ |= {_BEFORE: dict(row.__dict__), _EVER: set()}


def checked(row: Model, faults: Mapping[str, str] | None = None) -> None:
    """Check the row by itself; `faults` are what a service found beside that."""
    found: dict[str, list[str]] = {}
    links = {field.name for field in row._meta.fields if field.is_relation}
    try:
        row.full_clean(exclude=links, validate_unique=False, validate_constraints=False)
    except ValidationError as error:
        found = error.message_dict
    for name, message in (faults or {}).items():
        found.setdefault(name, []).append(message)
    if found:
        raise ValidationError(found)


def saved(row: Row) -> Row:
    """Save what changed of the row; all of it where it is new."""
    if row._state.adding:
        return recording.saved(row)
    names = changed(row)
    # Once saved, what the database holds may be older than what the row remembers of it.
    before = None if row.__dict__.get(_SAVED) else row.__dict__.get(_BEFORE)
    recording.saved(row, names, before)
    row.__dict__[_SAVED] = True
    return row


def saved_under_its_label(row: Row, *, taken: str) -> Row:
    """Save the row; where its label is another's already, `taken` says so at the label.

    What else the service did is undone then: the error must leave its transaction.
    """
    try:
        return saved(row)
    except IntegrityError as error:
        raise ValidationError({"label": [taken]}) from error


def checked_at(row: Model, where: str, faults: Mapping[str, str] | None = None) -> None:
    """Check one row of several; what is wrong with it says where it is."""
    try:
        checked(row, faults)
    except ValidationError as error:
        told = [
            f"{where}, {name}: {message}" if name != "__all__" else f"{where}: {message}"
            for name, messages in error.message_dict.items()
            for message in messages
        ]
        raise ValidationError(told) from error


def job_changed(
    *,
    job: Job,
    text: str,
    by: Person | None,
    at: datetime,
    about: Cabinet | None = None,
    went: Sequence[str] = (),
    stays: bool = False,
) -> None:
    """Count a change of the job's kitchen and tell what it was, and what went with it.

    A change that `stays` has nothing before it that Undo could bring back.
    """
    told = _told(job, text, by, at, about, counts=True, went=went)
    tell(replace(told, stays=stays))


def job_told(
    *, job: Job, text: str, by: Person | None, at: datetime, about: Cabinet | None = None
) -> None:
    """Tell what somebody did for a job that leaves its kitchen as it is."""
    tell(_told(job, text, by, at, about, counts=False))


def _told(
    job: Job,
    text: str,
    by: Person | None,
    at: datetime,
    about: Cabinet | None,
    *,
    counts: bool,
    went: Sequence[str] = (),
) -> Told:
    return Told(
        shop=job.shop, job=job, text=text, by=by, at=at, counts=counts,
        about=key_of(about), went=went, words=partial(line_of, unit=job.unit) if counts else None,
    )  # fmt: skip


def shop_changed(
    *, shop: Shop, text: str, by: Person | None, at: datetime, went: Sequence[str] = ()
) -> None:
    """Count a change of each of the shop's jobs, and tell once what it was."""
    words = partial(line_of, unit=shop.unit)
    tell(Told(shop=shop, text=text, by=by, at=at, counts=True, went=went, words=words))


def shop_told(*, shop: Shop, text: str, by: Person | None, at: datetime, fine: bool = True) -> None:
    """Tell what somebody did for a shop that leaves its kitchens as they are.

    `fine`: where the rows say it in a finer line, that is told.
    """
    words = partial(line_of, unit=shop.unit) if fine else None
    tell(Told(shop=shop, text=text, by=by, at=at, words=words))


def ways_changed(
    *,
    owner: Shop | Job,
    what: str,
    by: Person | None,
    at: datetime,
    went: Sequence[str] = (),
) -> None:
    """Count and tell a change of the ways of a shop, or of those of one job."""
    if isinstance(owner, Shop):
        shop_changed(shop=owner, text=f"Changed the shop's {what}", by=by, at=at, went=went)
    else:
        job_changed(job=owner, text=f"Changed the job's {what}", by=by, at=at, went=went)


def key_of(cabinet: Cabinet | None) -> str:
    """What a revision names a cabinet by, whatever it is called by then."""
    return "" if cabinet is None else f"cabinet {cabinet.pk}"
