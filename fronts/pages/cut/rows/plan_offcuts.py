"""What a finished plan takes of the shop's offcuts, and what it leaves to keep."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import datetime

from fronts.cutting.model import Plan
from fronts.figures.offcuts import left_of, lost_words, offcut_size
from fronts.models import CutPlan, Offcut
from fronts.rules.offcuts import offcut_label
from fronts.rules.practice import Practice
from fronts.selectors.offcuts import offcuts_kept, offcuts_taken, pieces_left


@dataclass(frozen=True, slots=True)
class PieceShown:
    """A piece that a plan leaves; `label` and `key` are those of the offcut that is kept of it."""

    place: str
    material: str
    size: str
    source: str
    label: str = ""
    key: int = 0
    state: str = ""


@dataclass(frozen=True, slots=True)
class PlanOffcuts:
    """Offcuts before and after a plan: taken, lost, to keep, kept; when it was sawn, by whom."""

    key: int
    taken: str
    lost: tuple[str, ...]
    to_keep: tuple[PieceShown, ...]
    kept: tuple[PieceShown, ...]
    sawn_at: datetime | None
    sawn_by: str

    @property
    def numbers(self) -> dict[str, str]:
        """What is written on the pieces, by their places."""
        return {piece.place: piece.label for piece in self.kept}

    @property
    def places(self) -> list[str]:
        """What there is to tick."""
        return [piece.place for piece in self.to_keep]


def plan_offcuts(
    plan: CutPlan, plans: Sequence[tuple[str, Plan]], practice: Practice, unit: str
) -> PlanOffcuts:
    """All of it, for the page; `plans` are those of the materials."""
    pieces = [*_pieces(plan, plans, practice, unit)]
    return PlanOffcuts(
        key=plan.pk,
        taken=", ".join(offcut_label(number) for number in sorted(offcuts_taken(plan))),
        lost=tuple(lost_words(plan)),
        to_keep=tuple(piece for piece in pieces if not piece.label),
        kept=tuple(piece for piece in pieces if piece.label),
        sawn_at=plan.sawn_at,
        sawn_by=plan.sawn_by.shown_name if plan.sawn_by else "",
    )


def _pieces(
    plan: CutPlan, plans: Sequence[tuple[str, Plan]], practice: Practice, unit: str
) -> Iterator[PieceShown]:
    kept = offcuts_kept(plan)
    for piece in pieces_left(plan, plans, practice, kept):
        row = kept.get(piece.place)
        shown = PieceShown(
            piece.place, piece.material, offcut_size(piece.facts, unit), left_of(piece.left)
        )
        if row is not None:
            shown = replace(shown, label=row.label, key=row.pk, state=_state(row))
        yield shown


def _state(row: Offcut) -> str:
    if row.gone_at is not None:
        return row.gone_why or row.get_gone_how_display()
    if not row.is_there:
        return "not sawn yet"
    return f"laid by for {row.job.number}" if row.job else "on the rack"
