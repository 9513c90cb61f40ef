"""The fields of the shop's tables: hinges by height and by weight, load classes of slides."""

import re
from collections.abc import Callable, Sequence
from fractions import Fraction
from typing import Any, cast

from django import forms
from django.core.exceptions import ValidationError

from fronts.facts.number_form_field import plain
from fronts.measures import MeasureError, read_weight, write_weight
from fronts.rules.kinds import Unit
from fronts.rules.length_sums import read_sum
from fronts.rules.lengths import LengthError, write
from shopjobs.words import capitalized

Row = tuple[Fraction, int]
Read = Callable[[str, Unit], Fraction]
Write = Callable[[Fraction, Unit], str]
_COUNT = re.compile(r"[0-9]{1,3}")
_TEN = Fraction(10)
_LONG = re.compile(r"[0-9]+\.[0-9]{2,}")


class TableField(forms.Field):
    """Rows of people's own text; nothing where it is empty, which leaves it to common practice."""

    def __init__(self, *, unit: str, **kwargs: Any) -> None:
        self.spoken = cast(Unit, unit)
        super().__init__(required=False, **kwargs)

    def in_brief(self, rows: Sequence[Any]) -> str:
        """The rows on one line, for people to read and not to save."""
        words = str(self.prepare_value(rows)).replace("\n", ", ")
        return _LONG.sub(lambda found: plain(round(Fraction(found[0]) * 10) / _TEN), words)


class HingeTable(TableField):
    """Hinges by a size or a weight up to which so many do: a row for each."""

    def __init__(self, *, weighs: bool, **kwargs: Any) -> None:
        self.read: Read = read_weight if weighs else read_sum
        self.write: Write = write_weight if weighs else write
        super().__init__(widget=forms.Textarea(attrs={"rows": 5}), **kwargs)

    def to_python(self, value: Any) -> Sequence[Row] | None:
        lines = [line for line in str(value or "").splitlines() if line.strip()]
        return [self._row(line) for line in lines] or None

    def prepare_value(self, value: Any) -> Any:
        if isinstance(value, str | None):
            return value
        return "\n".join(f"{self.write(most, self.spoken)}: {count}" for most, count in value)

    def _row(self, line: str) -> Row:
        typed, _, count = line.replace("\t", ":").rpartition(":")
        if not typed.strip() or not _COUNT.fullmatch(count.strip()):
            raise ValidationError(
                f"“{line.strip()[:40]}”: enter a size, a colon and how many hinges."
            )
        return _told(lambda each: self.read(each, self.spoken), typed.strip()), int(count)


class LoadClasses(TableField):
    """Loads with commas between them."""

    widget = forms.TextInput

    def to_python(self, value: Any) -> Sequence[Fraction] | None:
        typed = str(value or "").strip()
        if not typed:
            return None
        return [_told(lambda one: read_weight(one, self.spoken), each.strip())
                for each in typed.split(",")]  # fmt: skip

    def prepare_value(self, value: Any) -> Any:
        if isinstance(value, str | None):
            return value
        return ", ".join(write_weight(each, self.spoken) for each in value)


def table_fields(unit: str) -> dict[str, forms.Field]:
    """A field for each of the shop's tables, by its name."""
    rows = "A row for each: {} up to, colon, hinges."
    return {
        "hinges_by_height": HingeTable(
            weighs=False, unit=unit, label="By a door’s height", help_text=rows.format("height")
        ),
        "hinges_by_weight": HingeTable(
            weighs=True, unit=unit, label="By its weight", help_text=rows.format("weight")
        ),
        "slide_classes": LoadClasses(
            unit=unit, label="Load classes of slides", help_text="Loads with commas between them."
        ),
        "material": forms.CharField(label="A slab", max_length=80, required=False),
        "frame_material": forms.CharField(
            label="The frame of a five-piece", max_length=80, required=False
        ),
    }  # fmt: skip


def _told(read_one: Callable[[str], Fraction], typed: str) -> Fraction:
    try:
        return read_one(typed)
    except (LengthError, MeasureError) as error:
        raise ValidationError(f"{capitalized(str(error))}.") from error
