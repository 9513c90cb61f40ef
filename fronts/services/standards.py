"""The house standard: what the shop, a job, a cabinet or an opening says."""

from collections.abc import Sequence
from datetime import datetime
from fractions import Fraction
from itertools import pairwise

from django.core.exceptions import ValidationError

from fronts.facts.rows import by_column, columns_of
from fronts.models import Cabinet, JobStandard, KindStandard, Opening, ShopStandard
from fronts.rules.lengths import LONGEST, Mm, exact
from fronts.rules.limits import LEAST_KG, MOST_HINGES, MOST_KG, MOST_TABLE_ROWS
from fronts.rules.standard_keys import Standard
from fronts.rules.validity import standard_faults
from fronts.services.saving import checked, enter, job_changed, saved, ways_changed
from shopjobs.models import Job, Person, Shop
from shopjobs.services.recording import recorded

Owner = Shop | Job | KindStandard | Cabinet | Opening
Level = ShopStandard | JobStandard | KindStandard | Cabinet | Opening


@recorded
def standard_set(
    *, owner: Owner, standard: Standard, at: datetime, by: Person | None = None
) -> Level:
    """Set all that one level says."""
    level = level_of(owner)
    enter(level, columns_of(standard))
    checked(level, by_column(Standard, standard_faults(standard)))
    saved(level)
    _tell(owner, "house standard", by, at)
    return level


@recorded
def tables_set(
    *,
    owner: Shop | Job,
    hinges_by_height: Sequence[tuple[Mm, int]] | None,
    hinges_by_weight: Sequence[tuple[Fraction, int]] | None,
    slide_classes: Sequence[Fraction] | None,
    material: str,
    frame_material: str,
    at: datetime,
    by: Person | None = None,
) -> ShopStandard | JobStandard:
    """Set the shop's tables; None and "" leave them to the farther level. Weights in kg."""
    level = shared_level_of(owner)
    enter(level, {
        "hinges_by_height": _table("hinges_by_height", hinges_by_height, LONGEST),
        "hinges_by_weight": _table("hinges_by_weight", hinges_by_weight, MOST_KG, LEAST_KG),
        "slide_classes": _classes(slide_classes),
        "material": material,
        "frame_material": frame_material,
    })  # fmt: skip
    checked(level)
    saved(level)
    _tell(owner, "tables", by, at)
    return level


def level_of(owner: Owner) -> Level:
    """The row that holds what this owner says; made, but not kept, where there is none."""
    return owner if isinstance(owner, (KindStandard, Cabinet, Opening)) else shared_level_of(owner)


def kind_level(job: Job, kind: str) -> KindStandard:
    """The row of what cabinets of a kind say; made, but not kept, where there is none."""
    held = KindStandard.objects.filter(job=job, kind=kind).first()
    return held or KindStandard(job=job, kind=kind)


def shared_level_of(owner: Shop | Job) -> ShopStandard | JobStandard:
    """The row that holds what this shop or job says; made, but not kept, where there is none."""
    if isinstance(owner, Shop):
        return ShopStandard.objects.filter(shop=owner).first() or ShopStandard(shop=owner)
    return JobStandard.objects.filter(job=owner).first() or JobStandard(job=owner)


def _tell(owner: Owner, what: str, by: Person | None, at: datetime) -> None:
    match owner:
        case KindStandard():
            text = f"Changed what {owner} say of the {what}"
            job_changed(job=owner.job, text=text, by=by, at=at)
        case Cabinet():
            text = f"Changed what cabinet {owner.label} says of the {what}"
            job_changed(job=owner.job, text=text, by=by, at=at, about=owner)
        case Opening():
            text = f"Changed what opening {owner} says of the {what}"
            cabinet = owner.cabinet
            job_changed(job=cabinet.job, text=text, by=by, at=at, about=cabinet)
        case Shop() | Job():
            ways_changed(owner=owner, what=what, by=by, at=at)


def _table(
    name: str,
    rows: Sequence[tuple[Fraction, int]] | None,
    limit: Fraction,
    least: Fraction = Fraction(0),
) -> list[list[str | int]] | None:
    """Rows of a size or weight up to which so many hinges do; both must grow together."""
    if rows is None:
        return None
    if not 1 <= len(rows) <= MOST_TABLE_ROWS:
        raise ValidationError({name: f"enter 1 to {MOST_TABLE_ROWS} rows"})
    sizes, counts = [row[0] for row in rows], [row[1] for row in rows]
    kept = min(sizes) > 0 and least <= min(sizes) and max(sizes) <= limit
    if not kept or not 1 <= min(counts) <= max(counts) <= MOST_HINGES:
        raise ValidationError({name: f"enter sizes above zero, and 1 to {MOST_HINGES} hinges"})
    for (most, count), (next_most, next_count) in pairwise(rows):
        if next_most <= most or next_count < count:
            raise ValidationError({name: "each row must be more than the one before it"})
    return [[exact(most), count] for most, count in rows]


def _classes(classes: Sequence[Fraction] | None) -> list[str] | None:
    if classes is None:
        return None
    if len(classes) > MOST_TABLE_ROWS:
        raise ValidationError({"slide_classes": f"enter 1 to {MOST_TABLE_ROWS} loads"})
    rising = all(one < other for one, other in pairwise(classes))
    if not classes or not LEAST_KG <= classes[0] <= classes[-1] <= MOST_KG or not rising:
        raise ValidationError({"slide_classes": "enter loads above zero, each above the last"})
    return [exact(each) for each in classes]
