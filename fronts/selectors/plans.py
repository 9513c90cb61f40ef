"""What there is to cut, sorted as it is cut: by material, thickness, and sheet or stick."""

import hashlib
from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction

from django.db.models import QuerySet

from fronts.models import CutPlan, PlanState
from fronts.rules.lengths import Mm, exact
from fronts.rules.materials import Board, material_of
from fronts.rules.results import Part
from shopjobs.models import Job

FRAME = ("stile", "rail")
"""What is ripped to width and sawn from sticks."""
LETTERS = 8
CENTS = 100


@dataclass(frozen=True, slots=True)
class Group:
    """Parts that come from the same stock; `width` where all of them are that wide sticks."""

    material: str
    thickness: Mm
    width: Mm | None
    parts: tuple[Part, ...]

    @property
    def key(self) -> str:
        """A short name that stays while the kitchen changes, for forms and addresses."""
        sizes = [exact(each) for each in (self.thickness, self.width) if each is not None]
        return hashlib.sha256("|".join([self.material, *sizes]).encode()).hexdigest()[:LETTERS]

    @property
    def count(self) -> int:
        """How many pieces."""
        return sum(part.count for part in self.parts)

    @property
    def sticks(self) -> bool:
        """Whether it is cut from sticks: all are equally wide parts of frames."""
        return self.width is not None


def groups_of(parts: Iterable[Part]) -> list[Group]:
    """The groups: sheet goods first, then sticks, each by material and thickness."""
    found: dict[tuple[bool, str, Mm, Mm | None], list[Part]] = defaultdict(list)
    for part in parts:
        width = part.width if part.part in FRAME else None
        found[width is not None, part.material, part.thickness, width].append(part)
    order = sorted(found, key=lambda key: (*key[:3], key[3] or Mm(0)))
    return [Group(key[1], key[2], key[3], _largest_first(found[key])) for key in order]


def _largest_first(parts: Sequence[Part]) -> tuple[Part, ...]:
    return tuple(sorted(parts, key=lambda each: (-each.length, -each.width, each.label)))


def has_grain(material: str) -> bool:
    """Wood and plywood have a grain; MDF, particleboard and glass have none."""
    found = material_of(material)
    return not isinstance(found, Board) or found.name == "plywood"


def parts_fingerprint(parts: Iterable[Part]) -> str:
    """A short name for exactly these parts, whatever order they come in."""
    said = sorted(repr(part) for part in parts)
    digest = hashlib.sha256("\n".join(said).encode()).hexdigest()[:LETTERS]
    return f"{digest[: LETTERS // 2]}-{digest[LETTERS // 2 :]}"


def money(amount: Fraction) -> str:
    """An amount to the cent, in whatever money the shop counts."""
    whole, cents = divmod(round(amount * CENTS), CENTS)
    return f"{whole}.{cents:02d}"


def latest_plan(job: Job) -> CutPlan | None:
    """The plan that was begun last, whatever became of it."""
    return _plans(job).first()


def finished_plan(job: Job) -> CutPlan | None:
    """The plan that was finished last."""
    return _plans(job).filter(state=PlanState.DONE).first()


def _plans(job: Job) -> QuerySet[CutPlan]:
    return CutPlan.objects.filter(job=job).select_related("made_by").order_by("-started_at", "-pk")
