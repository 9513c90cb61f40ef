"""The offcuts of a shop, and what cutting plans take of them and leave."""

from collections.abc import Container, Iterator, Mapping, Sequence
from dataclasses import dataclass

from django.db.models import Q, QuerySet

from fronts.cutting.model import Plan
from fronts.cutting.offcuts_left import OffcutLeft, offcuts_left
from fronts.models import CutPlan, Offcut, OffcutGone
from fronts.rules.lengths import Mm
from fronts.rules.offcuts import OffcutAt, OffcutFacts, is_worth_keeping, number_of
from fronts.rules.practice import Practice
from shopjobs.job_list import MOST_WORDS, word_in
from shopjobs.models import Job, Shop

FREE = Q(job=None) | Q(job__deleted_at__isnull=False)
"""Laid by for nobody, or for a job that was deleted."""
MOST_MATERIALS = 100
_Size = tuple[Mm, Mm | None]


@dataclass(frozen=True, slots=True)
class PieceLeft:
    """A piece that a plan leaves: of which material by its name, what it is, its `place` there."""

    place: str
    material: str
    left: OffcutLeft
    facts: OffcutFacts


def offcuts_of(shop: Shop) -> QuerySet[Offcut]:
    """All that have not gone, by material, then the largest first."""
    rows = Offcut.objects.filter(shop=shop, gone_at=None).select_related("job", "from_job")
    return rows.order_by("material", "thickness", "-length", "-width", "number")


def gone_lately(shop: Shop, most: int) -> QuerySet[Offcut]:
    """Those that went last; what was never sawn was none."""
    rows = Offcut.objects.filter(shop=shop, gone_at__isnull=False).select_related("job", "from_job")
    return rows.exclude(gone_how=OffcutGone.UNMADE).order_by("-gone_at", "-number")[:most]


def offcut_of(shop: Shop, key: int) -> Offcut:
    """One of the shop's, gone or not."""
    return Offcut.objects.select_related("shop", "job", "from_job").get(shop=shop, pk=key)


def offcuts_for(job: Job) -> list[OffcutAt]:
    """What a plan of this job may take: what lies free on the rack, or is laid by for it."""
    rows = Offcut.objects.filter(
        FREE | Q(job=job), shop_id=job.shop_id, gone_at=None, is_there=True
    )
    return [row.at(job.pk) for row in rows.order_by("number")]


def found_in(rows: QuerySet[Offcut], words: str) -> QuerySet[Offcut]:
    """Those with each of the words in their material, or as their own number or a job's."""
    for word in words.split()[:MOST_WORDS]:
        is_it = Q(number=number_of(word.upper()) or 0)
        rows = rows.filter(is_it | word_in(("material", "from_job__number", "job__number"), word))
    return rows


def materials_kept(shop: Shop) -> list[str]:
    """Materials that offcuts of the shop are of, to choose from."""
    rows = Offcut.objects.filter(shop=shop).order_by("material").values_list("material", flat=True)
    return list(rows.distinct()[:MOST_MATERIALS])


def offcuts_taken(plan: CutPlan) -> dict[int, _Size]:
    """The offcuts that a plan takes, by their numbers, in the size that it was told."""
    stocks = (layout["stock"] for found in plan.found for layout in found["layouts"])
    return dict(_taken(stock) for stock in stocks if stock.get("own"))


def _taken(stock: Mapping[str, str]) -> tuple[int, _Size]:
    width = stock["width"]
    return number_of(stock["label"]) or 0, (Mm(stock["length"]), None if not width else Mm(width))


def lost_offcuts(plan: CutPlan) -> dict[int, str]:
    """Of the offcuts that a plan takes, those that it can't have any more, and why not."""
    taken = offcuts_taken(plan)
    if not taken:
        return {}
    rows = Offcut.objects.filter(shop_id=plan.job.shop_id, number__in=taken)
    held = {row.number: row for row in rows.select_related("job")}
    found = {number: _lost(plan, held.get(number), size) for number, size in taken.items()}
    return {number: why for number, why in found.items() if why}


def _lost(plan: CutPlan, row: Offcut | None, size: _Size) -> str:
    if row is None:
        return "is not known"
    if row.gone_at is not None:
        ours = row.gone_how == OffcutGone.SAWN and row.job_id == plan.job_id
        why = row.gone_why or row.get_gone_how_display()
        return "" if ours and plan.sawn_at else f"has gone: {why}"
    if row.job is not None and row.job_id != plan.job_id and row.job.deleted_at is None:
        return f"is laid by for job {row.job.number}"
    if row.job_id != plan.job_id:
        return "is not laid by for this job any more"
    is_same = row.length == size[0] and size[1] in (None, row.width)
    return "" if is_same else "has another size by now"


def pieces_left(
    plan: CutPlan, plans: Sequence[tuple[str, Plan]], practice: Practice, kept: Container[str]
) -> Iterator[PieceLeft]:
    """The pieces of a plan that are worth keeping by its job's `practice`.

    `plans` are of its materials. What was `kept` of it, by its place, stays among them whatever
    the shop says since.
    """
    for number, (asked, (name, whole)) in enumerate(zip(plan.asked, plans, strict=False)):
        if "material" not in asked:  # A plan from before it was noted what it is cut from.
            continue
        ripped = Mm(asked["width"]) if asked["width"] else None
        for left in offcuts_left(whole):
            width, place = left.width or ripped, f"{number}/{left.place}"
            worth = place in kept or is_worth_keeping(left.length, left.width, practice)
            if width is None or not worth:
                continue
            facts = OffcutFacts(
                asked["material"], Mm(asked["thickness"]), left.length, width,
                is_stick=left.width is None, is_grained=left.is_grained,
            )  # fmt: skip
            yield PieceLeft(place, name, left, facts)


def offcuts_kept(plan: CutPlan) -> dict[str, Offcut]:
    """The offcuts that were kept of a plan, by their places in it; gone ones too."""
    rows = Offcut.objects.filter(plan=plan).select_related("job").order_by("number")
    return {row.place: row for row in rows}
