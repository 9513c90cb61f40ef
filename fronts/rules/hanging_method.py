"""How a front is hung: on its box with a jig or shims, on hinges, a machine, or fixed from behind.

The order of work at the cabinet follows from it.
"""

from collections.abc import Mapping
from typing import Literal, TypeAlias

from fronts.rules.fitting_results import Fitting
from fronts.rules.kinds import FRONT_KINDS, Hinged, is_inset
from fronts.rules.results import Front

HangingMethod: TypeAlias = Literal[
    "jig", "inset-jig", "packers", "shims", "no-jig", "hinges", "top-hung", "bottom-hung",
    "tip-out", "machine", "fixed",
]  # fmt: skip

_BY_HINGE_SIDE: Mapping[Hinged, HangingMethod] = {
    "left": "hinges",
    "right": "hinges",
    "top": "top-hung",
    "bottom": "bottom-hung",
}


def hanging_method(front: Front, fitting: Fitting | None) -> HangingMethod | None:
    """How the front is hung; None where that hangs on a box which is not measured yet.

    An inset front on a jig has shims at its sides beside it, and without one shims all round;
    any other without a jig stands on packers, or is set by its offset and height.
    """
    if fitting is not None:
        if fitting.method == "jig":
            return "inset-jig" if is_inset(front.plane) else "jig"
        if fitting.shims is not None:
            return "shims"
        return "packers" if fitting.method == "packers" else "no-jig"
    traits = FRONT_KINDS[front.kind]
    if traits.tips_out or traits.on_machine:
        return "tip-out" if traits.tips_out else "machine"
    if front.hinged is not None:
        return _BY_HINGE_SIDE[front.hinged]
    return None if traits.opens else "fixed"
