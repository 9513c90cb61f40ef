"""Jigs and shims as lines of a table, on the page and on paper."""

from dataclasses import dataclass, replace

from fronts.figures.set_ups import off_by
from fronts.figures.sizes import size
from fronts.rules.fitting_results import Jig, Shim
from fronts.rules.lengths import show
from fronts.rules.merged_jigs import JigPlan


@dataclass(frozen=True, slots=True)
class JigLine:
    """A jig's block, its ledges and its slot ("" where it has none), and the fronts it serves.

    `name` is what it is called by: how thick and how long it is.
    """

    name: str
    block: str
    ledges: str
    slot: str
    fronts: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class ShimLine:
    """Shims of one thickness: how many at the sides, how many below."""

    thickness: str
    side: int
    bottom: int
    fronts: tuple[str, ...]


def jig_line(jig: Jig, unit: str) -> JigLine:
    """The jig in the job's unit."""
    ledges = jig.ledges
    return JigLine(
        name=size(unit, jig.thickness, jig.length),
        block=size(unit, jig.thickness, jig.length, ledges.block_depth),
        ledges=f"{ledges.count}: {size(unit, ledges.thickness, ledges.length)}",
        slot="" if jig.slot is None else size(unit, jig.slot.width, jig.slot.depth),
        fronts=jig.fronts,
    )


def made_jig_lines(plan: JigPlan, unit: str) -> tuple[JigLine, ...]:
    """The jigs that are made; beside each front that sits off on one, by how much."""

    def served(front: str) -> str:
        off = off_by(plan, front, unit)
        return f"{front} ({off})" if off else front

    return tuple(
        replace(jig_line(jig, unit), fronts=tuple(served(front) for front in jig.fronts))
        for jig in plan.jigs
    )


def shim_line(shim: Shim, unit: str) -> ShimLine:
    """The shims in the job's unit."""
    return ShimLine(show(shim.thickness, unit), shim.side, shim.bottom, shim.fronts)
