"""The drawings of one cabinet's fitting sheet, each made once for the room that it is given."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from django.utils.safestring import SafeString

from fronts.drawings.cabinet import cabinet_elevation
from fronts.drawings.front_back import front_from_back
from fronts.drawings.front_view import Bores
from fronts.drawings.jig import jig_drawing
from fronts.drawings.svg import Px
from fronts.rules.fitting_results import Fitting, Jig
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.lengths import show
from fronts.rules.merged_jigs import JigPlan
from fronts.rules.results import Front, Schedule

CROWDED = Fraction(2, 3)
"""A sheet's table of fronts has their sizes, so that the cabinet itself may have more room."""


@dataclass(frozen=True, slots=True)
class Drawn:
    """A drawing with its heading, in a place so wide."""

    heading: str
    svg: SafeString
    width: Px

    @property
    def css_width(self) -> str:
        return f"{self.width / 100:.0f}px"


@dataclass(frozen=True, slots=True)
class CabinetDrawings:
    """What is to be drawn: one cabinet with its fronts and their fittings."""

    schedule: Schedule
    kitchen: Kitchen
    cabinet: Cabinet
    fronts: Sequence[Front]
    fittings: Mapping[str, Fitting]
    jig_plan: JigPlan

    @property
    def boxed(self) -> list[Front]:
        """The fronts on boxes."""
        return [each for each in self.fronts if each.label in self.fittings]

    @property
    def bored(self) -> list[Front]:
        """The fronts whose backs are bored or screwed into, so that they are drawn."""
        return [each for each in self.fronts if each.hinge_centres or each.label in self.fittings]

    @property
    def jigs(self) -> list[Jig]:
        """Each jig that is made for these fronts, once."""
        needed = {each.label for each in self.boxed if self.fittings[each.label].method == "jig"}
        return [each for each in self.jig_plan.jigs if not needed.isdisjoint(each.fronts)]

    def elevation(self, room: tuple[Px, Px]) -> Drawn:
        svg = cabinet_elevation(
            self.schedule,
            self.kitchen,
            self.cabinet.label,
            unit=self.schedule.job.unit,
            room=room,
            small=CROWDED,
        )
        return Drawn(f"{self.cabinet.label} from the front", SafeString(svg), room[0])

    def back(self, front: Front, room: tuple[Px, Px]) -> Drawn:
        practice = self.kitchen.practice
        bores = Bores(practice.knob_hole, practice.cup_diameter)
        fitting = self.fittings.get(front.label)
        svg = front_from_back(front, fitting, bores, unit=self.schedule.job.unit, room=room)
        return Drawn(f"{front.label}, its back", SafeString(svg), room[0])

    def jig(self, jig: Jig, room: tuple[Px, Px], *, side_only: bool = False) -> Drawn:
        """A jig; with `side_only` its heading says how long it is."""
        here = [each for each in self.boxed if each.label in jig.fronts]
        thickest = max(each.thickness for each in here)
        unit = self.schedule.job.unit
        svg = jig_drawing(jig, thickest, unit=unit, room=room, side_only=side_only)
        heading = f"Jig for {', '.join(each.label for each in here)}"
        heading += f", {show(jig.length, unit)} long" if side_only else ""
        return Drawn(heading, SafeString(svg), room[0])
