"""What follows what along a wall: labels that agree, and followers that keep their place."""

from collections.abc import Mapping
from dataclasses import dataclass

from fronts.models import Cabinet, Thing
from fronts.rules.runs import in_order
from fronts.rules.wall_facts import Thing as ThingFacts
from fronts.services.saving import enter, saved
from fronts.snapshot import kitchen_of
from shopjobs.models import Job


def standing_faults(row: Thing, thing: ThingFacts) -> dict[str, str]:
    """What of a thing does not agree with what else stands in its job; by its columns."""
    cabinets = dict(Cabinet.objects.filter(job=row.job).values_list("label", "wall"))
    others = Thing.objects.filter(job=row.job).exclude(pk=row.pk)
    walls = cabinets | dict(others.values_list("label", "wall"))
    if thing.label in cabinets:
        return {"label": f"there is a cabinet {thing.label}; give another label"}
    if thing.after is None:
        return {}
    if thing.after not in walls:
        return {"after": "choose something that stands in this job"}
    if walls[thing.after] != thing.wall:
        return {"after": f"{thing.after} stands on wall {walls[thing.after]}"}
    if _comes_back(row.label, thing.after, dict(others.values_list("label", "after"))):
        return {"after": f"{thing.after} follows this one in turn"}
    return {}


def _comes_back(label: str, after: str, follows: Mapping[str, str]) -> bool:
    seen: set[str] = set()
    while after and after not in seen:
        if after == label:
            return True
        seen.add(after)
        after = follows.get(after, "")
    return False


@dataclass(frozen=True, slots=True)
class Followed:
    """What follows a cabinet or thing before it changes, and what stands before it."""

    label: str
    wall: str
    rows: tuple[Thing, ...]
    before: str


def followed(row: Cabinet | Thing) -> Followed:
    """What follows it as the tables have it."""
    rows = tuple(Thing.objects.filter(job=row.job, after=row.label).order_by("position", "pk"))
    before = _before(row.job, row.label) if rows else ""
    return Followed(row.label, row.wall, rows, before)


def let_follow(was: Followed, row: Cabinet | Thing | None) -> None:
    """Let followers go on behind it by its new name; where it left them, behind what is there."""
    after = was.before if row is None or row.wall != was.wall else row.label
    if after != was.label:
        for follower in was.rows:
            enter(follower, {"after": after})
            saved(follower)


def _before(job: Job, label: str) -> str:
    order = in_order(kitchen_of(job))
    place = next(at for at, each in enumerate(order) if each.label == label)
    earlier = [each.label for each in order[:place] if each.wall == order[place].wall]
    return earlier[-1] if earlier else ""
