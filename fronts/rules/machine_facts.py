"""What a machine allows the panel on its door: sizes and weight, from the machine's booklet."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Annotated

from fronts.rules.fact_kinds import Length, Number
from fronts.rules.lengths import Mm
from fronts.rules.limits import LEAST_KG, MOST_KG


@dataclass(frozen=True, slots=True)
class Machine:
    """The panels that a machine takes; None: its booklet gives no such limit, or nobody read it."""

    least_width: Annotated[Mm | None, Length("panel's width, least")] = None
    most_width: Annotated[Mm | None, Length("panel's width, greatest")] = None
    least_height: Annotated[Mm | None, Length("panel's height, least")] = None
    most_height: Annotated[Mm | None, Length("panel's height, greatest")] = None
    most_kg: Annotated[Fraction | None, Number("heaviest panel", "kg", LEAST_KG, MOST_KG)] = None


ANY_MACHINE = Machine()
"""Nothing is known of it."""


def machine_faults(machine: Machine) -> dict[str, str]:
    """No greatest size is under its least one; by the names of the facts."""
    pairs = {
        "most_width": (machine.least_width, machine.most_width),
        "most_height": (machine.least_height, machine.most_height),
    }
    return {
        name: "this is less than the least; exchange the two"
        for name, (least, most) in pairs.items()
        if least is not None and most is not None and most < least
    }
