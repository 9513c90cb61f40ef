"""Offcuts on the rack: entered by hand, changed, laid by for a job, thrown away.

Whoever writes an offcut holds its shop first, so that two people never take one piece.
"""

from collections.abc import Mapping
from datetime import datetime

from django.db.models import Max

from fronts.models import Offcut, OffcutGone
from fronts.rules.offcuts import MOST_KEPT, OffcutFacts
from fronts.services.saving import checked, enter
from shopjobs.models import Job, Person, Shop
from shopjobs.services.locks import shop_lock
from shopjobs.services.recording import Told, recorded, saved, tell
from shopjobs.services.refused import Refused


@recorded
def offcut_enter(
    *, shop: Shop, facts: OffcutFacts, job: Job | None, by: Person | None, at: datetime
) -> Offcut:
    """Enter a piece that lies there; its number is to be written on it."""
    shop_lock(shop.pk)
    row = offcut_made(shop, facts, {"job": job, "made_at": at, "made_by": by})
    text = f"Entered the offcut {row.label}"
    tell(Told(shop=shop, text=text, at=at, by=by, stays=True))
    return row


def offcut_made(shop: Shop, facts: OffcutFacts, beside: Mapping[str, object]) -> Offcut:
    """A piece under the next number, as part of a service that holds the shop and tells."""
    rows = Offcut.objects.filter(shop=shop)
    if rows.filter(gone_at=None).count() >= MOST_KEPT:
        raise Refused(f"A shop keeps at most {MOST_KEPT} offcuts. Throw some away first.")
    last = rows.aggregate(last=Max("number"))["last"] or 0
    row = Offcut(shop=shop, number=last + 1)
    enter(row, {**columns_of_offcut(facts), **beside})
    checked(row)
    return saved(row)


def columns_of_offcut(facts: OffcutFacts) -> dict[str, object]:
    """What a piece is, by the names of its columns."""
    names = ("material", "thickness", "length", "width", "is_stick", "is_grained")
    return {name: getattr(facts, name) for name in names}


@recorded
def offcut_change(
    *, row: Offcut, facts: OffcutFacts, job: Job | None, by: Person | None, at: datetime
) -> Offcut:
    """Change what a piece is, or for which job it is laid by; None: for nobody in particular."""
    row = _held(row)
    told = _told(row, f"Changed the offcut {row.label}", by, at)
    by_plan = row.by_plan and row.job == job
    enter(row, {**columns_of_offcut(facts), "job": job, "by_plan": by_plan})
    checked(row)
    saved(row)
    tell(told)
    return row


@recorded
def offcut_throw_away(*, row: Offcut, why: str, by: Person | None, at: datetime) -> None:
    """Take a piece off the rack, and say why; it keeps its number."""
    row = _held(row)
    told = _told(row, f"Threw the offcut {row.label} away: {why}", by, at)
    enter(row, {"gone_at": at, "gone_how": OffcutGone.AWAY, "gone_why": why})
    checked(row)
    saved(row)
    tell(told)


def _held(row: Offcut) -> Offcut:
    """The piece as it is now, which nobody else changes until the service is through."""
    shop_lock(row.shop_id)
    row = Offcut.objects.select_related("shop", "job").get(pk=row.pk)
    if row.gone_at is not None:
        raise Refused(f"{row.label} has gone meanwhile: {row.gone_why or 'no reason is given'}.")
    return row


def _told(row: Offcut, text: str, by: Person | None, at: datetime) -> Told:
    """What a cutting plan takes is part of what its job needs: that counts a change of the job."""
    job = row.job if row.by_plan else None
    return Told(shop=row.shop, job=job, text=text, at=at, by=by, counts=job is not None)
