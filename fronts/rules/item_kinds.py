"""What kinds of hardware there are, in the words that files, tables and pages share."""

from collections.abc import Mapping
from typing import Literal, TypeAlias

from fronts.rules.kinds import CabinetBuild

HingeFrame: TypeAlias = Literal["face-frame", "frameless", "either"]
HandleWay: TypeAlias = Literal["across", "upright"]
Joint: TypeAlias = Literal["butt", "rabbet", "dado", "through-dovetail"]

HINGE_FRAMES: Mapping[HingeFrame, str] = {
    "either": "Any cabinet",
    "face-frame": "Face-frame cabinets",
    "frameless": "Frameless cabinets",
}
HANDLE_WAYS: Mapping[HandleWay, str] = {"across": "Across", "upright": "Upright"}
JOINTS: Mapping[Joint, str] = {
    "butt": "Butt",
    "rabbet": "Rabbet",
    "dado": "Dado",
    "through-dovetail": "Through dovetail",
}


def suits_build(frame: HingeFrame, build: CabinetBuild) -> bool:
    """Whether a hinge for such cabinets goes on one that is built so."""
    return frame in ("either", build)
