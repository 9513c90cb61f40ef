"""The form that names a set of fronts: whole walls and cabinets, or fronts one by one."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from fronts.rules.limits import LONGEST_SET
from fronts.selectors.grain_sets import NamedFront
from shopjobs.forms.house import HouseForm


@dataclass(frozen=True, slots=True)
class Tick:
    """A box to tick: `name`, `value` as they are sent, `says` to whom it belongs by now."""

    name: str
    value: str
    label: str
    ticked: bool
    says: str = ""


@dataclass(frozen=True, slots=True)
class CabinetTicks:
    """A whole cabinet, and its fronts."""

    whole: Tick
    fronts: tuple[Tick, ...]


@dataclass(frozen=True, slots=True)
class WallTicks:
    """A whole wall, and its cabinets."""

    whole: Tick
    cabinets: tuple[CabinetTicks, ...]


class GrainSetForm(HouseForm):
    """A set's name, and which fronts are in it; their order is that of the wall."""

    name = forms.CharField(
        label="Name of the set",
        max_length=LONGEST_SET,
        error_messages={"required": "Enter a name for the set."},
    )
    walls = forms.MultipleChoiceField(required=False)
    cabinets = forms.MultipleChoiceField(required=False)
    fronts = forms.TypedMultipleChoiceField(label="Fronts", required=False, coerce=int)

    def __init__(self, *args: Any, known: Sequence[NamedFront], before: str, **kwargs: Any) -> None:
        self.known = known
        own = [str(front.key) for front in known if before and front.grain_set == before]
        kwargs["initial"] = {"name": before, "fronts": own}
        super().__init__(*args, **kwargs)
        self._offer("walls", (front.wall for front in known))
        self._offer("cabinets", (front.cabinet for front in known))
        self._offer("fronts", (str(front.key) for front in known))

    def clean(self) -> dict[str, Any]:
        """Gather the fronts; a set without one is none."""
        cleaned: dict[str, Any] = super().clean() or self.cleaned_data
        chosen = {
            front.key
            for front in self.known
            if front.wall in cleaned.get("walls", ())
            or front.cabinet in cleaned.get("cabinets", ())
            or front.key in cleaned.get("fronts", ())
        }
        if not chosen and "fronts" not in self.errors:
            self.add_error("fronts", ValidationError("Tick the fronts that read as one piece."))
        cleaned["chosen"] = chosen
        return cleaned

    def ticks(self) -> Iterator[WallTicks]:
        """The boxes to tick, wall by wall."""
        for wall in dict.fromkeys(front.wall for front in self.known):
            there = [front for front in self.known if front.wall == wall]
            cabinets = dict.fromkeys(front.cabinet for front in there)
            yield WallTicks(
                self._tick("walls", wall, f"All of wall {wall}"),
                tuple(
                    self._cabinet(label, [front for front in there if front.cabinet == label])
                    for label in cabinets
                ),
            )

    def _cabinet(self, label: str, fronts: Sequence[NamedFront]) -> CabinetTicks:
        return CabinetTicks(
            self._tick("cabinets", label, f"All of {label}"),
            tuple(
                self._tick("fronts", str(front.key), front.label, front.grain_set)
                for front in fronts
            ),
        )

    def _tick(self, name: str, value: str, label: str, says: str = "") -> Tick:
        ticked = [str(one) for one in self[name].value() or ()]
        return Tick(name, value, label, value in ticked, says)

    def _offer(self, name: str, values: Iterable[str]) -> None:
        field = self.fields[name]
        if isinstance(field, forms.MultipleChoiceField):
            field.choices = [(value, value) for value in dict.fromkeys(values)]
