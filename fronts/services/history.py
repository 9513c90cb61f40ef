"""Taking back what was done, and doing it again; what comes of it must be a sound kitchen."""

from collections.abc import Iterable
from datetime import datetime

from django.apps import apps
from django.core.exceptions import ValidationError
from django.db.models import F, Q

from fronts.facts.column_words import column_words
from fronts.models import Front, Opening, StockEntry
from fronts.models.kept import Kept
from fronts.services.label_clashes import past_cabinet
from fronts.services.openings import refuse_shared_names
from fronts.services.order_approvals import refuse_more_sent_than_approved
from fronts.services.saving import AskFirst
from fronts.services.shelf import refuse_below_nothing
from shopjobs.access import Capability
from shopjobs.models import Person, Revision, Shop
from shopjobs.row_changes import RowChange, changes_of
from shopjobs.selectors import has_owner
from shopjobs.services.history_steps import is_taken_back
from shopjobs.services.recording import Told, recorded, tell
from shopjobs.services.refused import Refused
from shopjobs.services.undo import Clash, clashes, take_back
from shopjobs.words import moment_in_words

_NAMED_AND_PLACED = frozenset({"fronts.cabinet", "fronts.opening", "fronts.front"})
"""Tables whose rows must agree with each other."""
_ORDERED = frozenset({
    "fronts.orderapproval", "fronts.approvedline", "fronts.ordersending", "fronts.sentline",
    "fronts.orderarrival",
})  # fmt: skip
_STOCK = "fronts.stockentry"
_OF_ORDER = _ORDERED | {
    "fronts.ordercheck", "fronts.orderlist", "fronts.frontreceipt", "fronts.goods", _STOCK,
}  # fmt: skip
_BUYING = frozenset({
    "fronts.supplier", "fronts.goods", "fronts.offer", "fronts.usualcurrency", _STOCK,
})  # fmt: skip
"""Tables of what the shop buys, from whom, and what of it there is."""
_DOOR = "fronts.dooronhand"
_RACK = frozenset({"fronts.offcut", _DOOR})
_DAYS = frozenset({"fronts.shopdates", "fronts.closeddays"})


class ChangedSince(AskFirst):
    """Somebody changed since what would be taken back; that would go."""


@recorded
def revision_undo(*, revision: Revision, at: datetime, by: Person, confirmed: bool = False) -> str:
    """Take back what a revision did; of an undo, do that again. Returns what was done.

    What was changed since goes too, but only once that is confirmed.
    """
    if is_taken_back(revision):
        raise Refused("This has been taken back already.")
    since = clashes(revision)
    if since and not confirmed:
        raise ChangedSince(_asked(revision), [_words(clash) for clash in since])
    take_back(revision)
    _refuse_unsound(revision)
    text = _told(revision)
    tell(Told(
        shop=revision.shop, job=revision.job, text=text, at=at, by=by, counts=True,
        about=revision.about, undoes=revision,
    ))  # fmt: skip
    return text


def _asked(revision: Revision) -> str:
    """What would be taken back: `“B1: width 18 → 20” of 26 Nov 10:54 was changed since.`"""
    return f"“{revision.text}” of {moment_in_words(revision.at)} was changed since."


def _told(revision: Revision) -> str:
    """What an undo is called; an undo of an undo says what holds again."""
    undone = revision.undoes
    return f"Did again: {undone.text}" if undone is not None else f"Undid: {revision.text}"


def _refuse_unsound(revision: Revision) -> None:
    """What comes of it must stand: names, places, and somebody who owns the shop."""
    changes = changes_of(revision.changes)
    if any(change.table == "shopjobs.person" for change in changes):
        _refuse_without_owner(revision.shop)
    of_kitchen = [change for change in changes if change.table in _NAMED_AND_PLACED]
    _refuse_strayed_doors([each.key for each in changes if each.table == _DOOR])
    if revision.job is not None and any(change.table in _ORDERED for change in changes):
        refuse_more_sent_than_approved(revision.job)
    refuse_below_nothing(_in_stock(changes))
    if revision.job is None or not of_kitchen:
        return
    if any(change.touches("label") or change.touches("closed_by") for change in of_kitchen):
        refuse_shared_names(revision.job)
    keys = {change.key for change in of_kitchen}
    openings = Opening.objects.filter(Q(pk__in=keys) | Q(cabinet__in=keys))
    for opening in openings.filter(cabinet__job=revision.job).select_related("cabinet"):
        for fault in past_cabinet(opening, opening.cabinet, revision.job.unit).values():
            raise ValidationError(f"Opening {opening.label}: {fault}.")


def _refuse_strayed_doors(doors: list[int]) -> None:
    """A door that is a front by now stays in its job."""
    fronts = Front.objects.filter(door__in=doors).exclude(opening__cabinet__job=F("door__job"))
    for front in fronts.select_related("door", "opening__cabinet")[:1]:
        raise Refused(f"Front {front.opening} is made of door {front.door} by now.")


def _in_stock(changes: Iterable[RowChange]) -> set[int]:
    """The things of which there is another amount somewhere by now, by their keys."""
    of_stock = [change for change in changes if change.table == _STOCK]
    said = {(each.before or each.after or {}).get("goods_id") for each in of_stock}
    rows = StockEntry.objects.filter(pk__in=[change.key for change in of_stock])
    return {*filter(None, said), *rows.values_list("goods", flat=True)} if of_stock else set()


def _refuse_without_owner(shop: Shop) -> None:
    if not has_owner(shop):
        raise Refused("The shop would be left without an owner.")


def _words(clash: Clash) -> str:
    """`B5.a, width: changed by Ada, 26 Nov 10:54`."""
    what = clash.name or "a row"
    if clash.column:
        table = apps.get_model(clash.table)
        column = table._meta.get_field(clash.column)
        known = column_words(table.facts) if issubclass(table, Kept) else {}
        says = known[column.name][0] if column.name in known else column.verbose_name
        what = f"{what}, {says}"
    if clash.since is None:
        return what
    return f"{what}: by {clash.since.who}, {moment_in_words(clash.since.at)} ({clash.since.text})"


def capability_for(revision: Revision, person: Person) -> Capability:
    """What somebody must be allowed in order to take a revision back.

    What one did oneself one may take back; what others did to a kitchen, who may change it.
    """
    tables = {change.table for change in changes_of(revision.changes)}
    if tables <= {"shopjobs.client", "shopjobs.site"}:
        return "jobs"
    if revision.job is None:
        return _capability_for_shop(tables)
    if tables <= _OF_ORDER:
        return "order"
    if "fronts.jobbudget" in tables:
        return "budget"
    if tables <= {"fronts.fitrecord", "fronts.snag", "fronts.snagphoto"}:
        return "fit"
    if "shopjobs.job" in tables:
        return "jobs"
    return "measure" if revision.person_id == person.pk else "edit_kitchen"


def _capability_for_shop(tables: set[str]) -> Capability:
    """The same of what belongs to no job."""
    if tables <= _BUYING:
        return "prices"
    if tables <= _DAYS:
        return "jobs"
    if tables <= _RACK:
        return "edit_kitchen"
    return "people" if tables & {"shopjobs.person"} else "standard"
