"""Who names an item of hardware by its code: told where it goes, followed where it is renamed."""

from collections.abc import Iterator, Mapping

from django.db.models import Q, QuerySet

from fronts.models import (
    Cabinet,
    Front,
    HardwareList,
    JobStandard,
    KindStandard,
    Opening,
    ShopStandard,
)
from fronts.models.items import Item
from fronts.models.standard import StandardFields
from fronts.rules.items import BandItem, HandleItem, HingeItem
from fronts.rules.kinds import SIDES
from fronts.services.offers import goods_renamed
from fronts.services.saving import enter, saved
from shopjobs.models import Job, Shop

NAMED_AS: Mapping[type, str] = {HingeItem: "hinge", HandleItem: "handle"}
"""The column of a front that names an item of a kind."""
IN_STANDARD: Mapping[type, tuple[str, ...]] = {
    BandItem: tuple(f"band_{side}" for side in SIDES),
    HingeItem: ("front_hinge",),
    HandleItem: ("front_handle",),
}
"""The columns of a level of the house standard that name an item of a kind."""


def named_by(owner: Shop | Job, item: Item) -> list[str]:
    """The fronts and levels that name an item, in the jobs for which its list holds."""
    names: dict[str, list[str]] = {}
    for front in _fronts(owner, item.facts, item.code):
        names.setdefault(front.opening.cabinet.job.number, []).append(str(front.opening))
    shared = []
    for level in _levels(owner, item.facts, item.code):
        match level:
            case KindStandard():
                names.setdefault(level.job.number, []).append(str(level).lower())
            case Cabinet():
                names.setdefault(level.job.number, []).append(f"cabinet {level.label}")
            case Opening():
                names.setdefault(level.cabinet.job.number, []).append(str(level))
            case JobStandard():
                names.setdefault(level.job.number, []).append("its house standard")
            case _:
                shared.append("the shop's house standard names it")
    jobs = (
        f"in job {number} it is named by {', '.join(dict.fromkeys(labels))}"
        for number, labels in names.items()
    )
    return [*shared, *jobs]


def name_anew(owner: Shop | Job, kind: type, was: str, now: str) -> None:
    """Let all that named an item by its old code name it by its new one, offers of it too."""
    if isinstance(owner, Shop):
        goods_renamed(owner, kind, was, now)
    for front in _fronts(owner, kind, was):
        enter(front, {NAMED_AS[kind]: now})
        saved(front)
    for level in _levels(owner, kind, was):
        columns = IN_STANDARD[kind]
        enter(level, {name: now for name in columns if getattr(level, name) == was})
        saved(level)


def _fronts(owner: Shop | Job, kind: type, code: str) -> "QuerySet[Front]":
    column = NAMED_AS.get(kind)
    if column is None:
        return Front.objects.none()
    fronts = Front.objects.filter(_within(owner, "opening__cabinet__job"), **{column: code})
    order = "opening__cabinet__job__number", "opening", "position"
    return fronts.select_related("opening__cabinet__job").order_by(*order)


def _levels(owner: Shop | Job, kind: type, code: str) -> Iterator[StandardFields]:
    """The levels of the house standard that name an item; a shop's own stands by its own list."""
    columns = IN_STANDARD.get(kind, ())
    if not columns:
        return
    named = Q()
    for name in columns:
        named |= Q(**{name: code})
    if isinstance(owner, Shop):
        yield from ShopStandard.objects.filter(named, shop=owner)
    jobs = JobStandard.objects.filter(named, _within(owner, "job"))
    yield from jobs.select_related("job").order_by("job__number")
    kinds = KindStandard.objects.filter(named, _within(owner, "job"))
    yield from kinds.select_related("job").order_by("job__number", "pk")
    cabinets = Cabinet.objects.filter(named, _within(owner, "job"))
    yield from cabinets.select_related("job").order_by("job__number", "pk")
    openings = Opening.objects.filter(named, _within(owner, "cabinet__job"))
    yield from openings.select_related("cabinet__job").order_by("cabinet__job__number", "pk")


def _within(owner: Shop | Job, way: str) -> Q:
    """The jobs for which the owner's list holds; `way` leads to the job."""
    if isinstance(owner, Job):
        return Q(**{way: owner})
    others = HardwareList.objects.filter(shop=owner, job__isnull=False).values("job")
    return Q(**{f"{way}__shop": owner}) & ~Q(**{f"{way}__in": others})
