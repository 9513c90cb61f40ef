"""The forms that take a file of offers: the file itself, then what was seen of it."""

import json
import re
from collections.abc import Sequence
from typing import Any

from django import forms

from fronts.pages.shared.file_field import BytesField
from fronts.rules.offers import MOST_OFFERS
from shopjobs.forms.house import HouseForm

MOST_BYTES = 2 * 1024 * 1024
LINE_NUMBER = re.compile(r"[0-9]{1,9}")
Cells = list[tuple[int, list[str]]]
CHANGED = (
    "Somebody changed suppliers or prices since you looked at this file. "
    "See below what it would change now, then take it in."
)
GONE = "What was read of the file has got lost. Choose the file again."


class OffersFileForm(HouseForm):
    """A file of offers."""

    file = BytesField(
        what="CSV or XLSX file",
        most=MOST_BYTES,
        label="CSV or XLSX file",
        help_text="Its first line names the columns, as in the list that is downloaded. Nothing "
        "is changed before you have seen what the file says.",
    )


class CellsField(forms.CharField):
    """The cells of a file's lines as they were read, sent along with their preview.

    Whatever is sent in their place is refused, or read as a file would be.
    """

    def __init__(self, *, columns: int, **kwargs: Any) -> None:
        self.columns = columns
        words = {"required": GONE, "null_characters_not_allowed": GONE}
        super().__init__(strip=False, widget=forms.HiddenInput, error_messages=words, **kwargs)

    def clean(self, value: Any) -> list[tuple[int, list[str]]]:
        said = super().clean(value)
        try:
            rows = json.loads(said)
        except (ValueError, RecursionError) as fault:
            raise forms.ValidationError(GONE) from fault
        if not isinstance(rows, list) or len(rows) > MOST_OFFERS:
            raise forms.ValidationError(GONE)
        if not all(self._is_line(row) for row in rows):
            raise forms.ValidationError(GONE)
        return [(number, cells) for number, cells in rows]

    def _is_line(self, row: Any) -> bool:
        match row:
            case [int(), list(cells)]:
                return len(cells) == self.columns and all(isinstance(each, str) for each in cells)
        return False


class LeftOutField(forms.Field):
    """The lines of a file that are not to be taken in, by their numbers."""

    widget = forms.MultipleHiddenInput

    def to_python(self, value: Any) -> set[int]:
        plain = (str(each) for each in value or ())
        return {int(each) for each in plain if LINE_NUMBER.fullmatch(each)}


class TakeForm(HouseForm):
    """What of a file is taken in: all that was read, but for the lines that are left out.

    `now` names the offers as they are; where that is not what was seen, they are seen again.
    """

    seen = forms.CharField(max_length=64, required=False, widget=forms.HiddenInput)

    def __init__(self, *args: Any, columns: int, now: str = "", **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.fields["cells"] = CellsField(columns=columns)
        self.fields["leave"] = LeftOutField(required=False)
        self.now = now

    def clean(self) -> dict[str, Any]:
        """Nothing is taken in that was seen beside other offers."""
        given = super().clean() or {}
        if not self.errors and given.get("seen") != self.now:
            self.has_clashes = True
            self.add_error(None, CHANGED)
        return given

    @property
    def cells(self) -> Cells:
        """The lines as they were read; none where that got lost."""
        cells: Cells = self.cleaned_data.get("cells", []) if self.is_bound else []
        return cells

    @property
    def left_out(self) -> set[int]:
        """The lines that are not taken in."""
        left: set[int] = self.cleaned_data.get("leave", set()) if self.is_bound else set()
        return left


def cells_text(cells: Sequence[tuple[int, Sequence[str]]]) -> str:
    """Cells as `CellsField` reads them back."""
    return json.dumps([[number, list(row)] for number, row in cells], ensure_ascii=False)
