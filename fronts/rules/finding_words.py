"""Lengths and weights as findings say them, in the job's unit."""

from dataclasses import dataclass
from fractions import Fraction

from fronts.rules.kinds import Unit
from fronts.rules.lengths import Mm, show_with_unit
from fronts.rules.practice import POUND


@dataclass(frozen=True, slots=True)
class FindingWords:
    """What every finding is worded with."""

    unit: Unit

    def say(self, length: Mm) -> str:
        """The length with its unit, as the shop says it."""
        return show_with_unit(length, self.unit)

    def say_overlay(self, overlay: Mm) -> str:
        """Below zero it is the gap of an inset front."""
        return f"{'an overlay' if overlay >= 0 else 'a gap'} of {self.say(abs(overlay))}"

    def say_weight(self, kilograms: Fraction, *, places: int = 1) -> str:
        """Pounds beside inches, kilograms beside millimetres."""
        if self.unit == "in":
            return f"{float(kilograms / POUND):.{places}f} lb"
        return f"{float(kilograms):.{places}f} kg"
