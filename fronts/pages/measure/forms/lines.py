"""Lines of a notebook, typed or pasted."""

from typing import Any

from django import forms

from fronts.notebook import NO_FACES, Added, Faces, NotebookRefused, read_more
from fronts.rules.kitchen import Kitchen
from fronts.rules.limits import LONGEST_NOTEBOOK
from fronts.rules.runs import standing_in
from shopjobs.forms.house import HouseForm
from shopjobs.words import capitalized


class LinesForm(HouseForm):
    """What stands behind what is on the wall, a line for each thing, or `before` one of these."""

    lines = forms.CharField(
        label="Write a line, or paste several",
        max_length=LONGEST_NOTEBOOK,
        strip=False,
        widget=forms.Textarea(
            attrs={"rows": 2, "autocomplete": "off", "spellcheck": "false", "data-lines": ""}
        ),
        error_messages={"required": "Write a line, like B2 36 drawer 6 over pair."},
    )

    def __init__(
        self,
        *args: Any,
        kitchen: Kitchen,
        wall: str,
        before: str = "",
        faces: Faces = NO_FACES,
        **kwargs: Any,
    ) -> None:
        kwargs.setdefault("auto_id", "lines-%s")
        super().__init__(*args, **kwargs)
        self.kitchen, self.wall, self.faces = kitchen, wall, faces
        on_wall = (what.label for what in standing_in(kitchen) if what.wall == wall)
        self.before = before if before in on_wall else ""
        if self.before:
            self.fields["lines"].label = f"Write a line that goes before {self.before}, or several"
            self.fields["lines"].widget.attrs["autofocus"] = True
        self.added: Added | None = None

    @property
    def read(self) -> Added:
        """What the lines say, once they are read."""
        if self.added is None:
            raise TypeError("the lines are not read yet")
        return self.added

    def clean_lines(self) -> str:
        """Every line is read whole, or all that is wrong is said, line by line."""
        text: str = self.cleaned_data["lines"]
        try:
            self.added = read_more(text, self.kitchen, self.wall, self.faces)
        except NotebookRefused as refused:
            raise forms.ValidationError([
                f"{capitalized(f'line {fault.line}')}: found {fault.found}, wanted {fault.wanted}."
                for fault in refused.faults
            ]) from refused  # fmt: skip
        return text
