"""The words that a job file chooses from, each with what it stands for."""

from typing import get_args

from fronts.rules.kitchen import (
    CabinetBuild,
    ClosedBy,
    FrontBuild,
    Hinged,
    Kind,
    Mount,
    SlideKind,
    Unit,
)

UNITS: dict[str, Unit] = {each: each for each in get_args(Unit)}
MOUNTS: dict[str, Mount] = {each: each for each in get_args(Mount)}
KINDS: dict[str, Kind] = {each: each for each in get_args(Kind)}
CABINET_BUILDS: dict[str, CabinetBuild] = {each: each for each in get_args(CabinetBuild)}
FRONT_BUILDS: dict[str, FrontBuild] = {each: each for each in get_args(FrontBuild)}
CLOSED_BY: dict[str, ClosedBy] = {each: each for each in get_args(ClosedBy)}
HINGED: dict[str, Hinged] = {each: each for each in get_args(Hinged)}
SLIDES: dict[str, SlideKind] = {
    "bottom": "bottom", "side": "side", "under": "under",
    "bottom-mount": "bottom", "side-mount": "side", "undermount": "under",
}  # fmt: skip
NO_SLIDE = "none"
