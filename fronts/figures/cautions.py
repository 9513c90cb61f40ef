"""The cautions that apply to a sheet's work; the sheet advises, codes and makers come first."""

from collections.abc import Sequence
from dataclasses import dataclass

from fronts.rules.fitting_results import Fitting, Jig, Shim
from fronts.rules.kinds import CABINET_KINDS, FRONT_KINDS, CabinetTraits
from fronts.rules.kitchen import Cabinet
from fronts.rules.results import Front

SMALL_PIECES = (
    "Ledges and shims are small: guards on, push stick, clamps (OSHA 1910.213); never hold a tab "
    "by hand while cutting it."
)
BOX_PIECES = (
    "Saw, dado set and router: guards on, push blocks and clamps (OSHA 1910.213); nothing short "
    "or narrow is fed by hand. Eye and ear protection; dust under 5 mg/m³ (OSHA)."
)
DRILLING = "Drilling: backing block; eye and ear protection; dust under 5 mg/m³ (OSHA)."
OLD_PAINT = "Old paint may hold lead, old walls asbestos: test before sanding."
TIPPING = "A heavy pull-out can tip a cabinet that is not fixed to the wall."
TALL = "Fix the cabinet to the wall before its doors are hung: it can tip."
WALL = "Wall cabinets: two people; into studs or solid wall, by the local code, before doors."
GLASS = "Glass in a door: safety glazing where the local code says so."
TRADES = (
    "Clearances to cookers, gas, electricity: the maker's and the local code's; wiring, gas, "
    "plumbing: licensed trades."
)
ON_SITE = (TIPPING, TALL, WALL, GLASS)
"""What hurts at the wall, the gravest first."""
LAST = "Local codes and the makers' instructions come before this sheet."


@dataclass(frozen=True, slots=True)
class Situation:
    """What decides which cautions apply; `cabinet` None at the bench."""

    cabinet: CabinetTraits | None
    drills: bool
    small_pieces: bool
    refit: bool
    tips: bool
    glass: bool


def at_cabinet(cabinet: Cabinet, fronts: Sequence[Front], fittings: Sequence[Fitting]) -> list[str]:
    """The cautions for fitting one cabinet's fronts."""
    return _apply(
        Situation(
            cabinet=CABINET_KINDS[cabinet.kind],
            drills=bool(fronts),
            small_pieces=bool(fittings),
            refit=any(not each.is_new or each.door_on_hand for each in fronts),
            tips=any(FRONT_KINDS[each.kind].tips for each in fronts),
            glass=any(each.glass or "glass" in each.material.lower() for each in fronts),
        )
    )


def most_at_hand(cautions: Sequence[str]) -> str:
    """The one that matters first where a cabinet is hung; the others are a tap away."""
    return next((one for one in ON_SITE if one in cautions), cautions[0])


def at_bench(jigs: Sequence[Jig], shims: Sequence[Shim], fronts: Sequence[Front]) -> list[str]:
    """The cautions for making fronts, jigs and shims in the shop."""
    return _apply(
        Situation(
            cabinet=None,
            drills=bool(fronts),
            small_pieces=bool(jigs or shims),
            refit=any(not each.is_new or each.door_on_hand for each in fronts),
            tips=False,
            glass=any(each.glass or "glass" in each.material.lower() for each in fronts),
        )
    )


def on_site(fronts: Sequence[Front]) -> list[str]:
    """The cautions for going from cabinet to cabinet with drill and driver."""
    return _apply(
        Situation(
            cabinet=None,
            drills=bool(fronts),
            small_pieces=False,
            refit=any(not each.is_new or each.door_on_hand for each in fronts),
            tips=any(FRONT_KINDS[each.kind].tips for each in fronts),
            glass=any(each.glass or "glass" in each.material.lower() for each in fronts),
        )
    )


def at_boxes() -> list[str]:
    """The cautions for building drawer boxes."""
    return [BOX_PIECES, LAST]


def _apply(at: Situation) -> list[str]:
    said = [
        (at.small_pieces, SMALL_PIECES),
        (at.drills, DRILLING),
        (at.refit, OLD_PAINT),
        (at.tips, TIPPING),
        (at.cabinet is not None and at.cabinet.tips and not at.tips, TALL),
        (at.cabinet is not None and at.cabinet.hangs, WALL),
        (at.glass, GLASS),
        (at.cabinet is not None, TRADES),
        (True, LAST),
    ]
    return [words for applies, words in said if applies]
