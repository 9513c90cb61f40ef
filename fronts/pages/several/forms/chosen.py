"""Which rows are meant, and what is done to them."""

from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple

from django import forms

from fronts.pages.shared.item_choice import Items
from fronts.rules import limits
from fronts.rules.kinds import FRONT_BUILDS, FRONT_KINDS, MADE_BY, name_of, words_of
from shopjobs.forms.house import HouseForm
from shopjobs.models import Job
from shopjobs.words import capitalized

FRONTS, COPY, MIRROR, DELETE = "fronts", "copy", "mirror", "delete"
"""What the buttons send."""
AS_IT_IS, USUAL = "", "usual"
_ALL = _ANOTHER = ""


class Standing(NamedTuple):
    """A row that may be chosen: its key on the page, what is said of it, and its run."""

    key: str
    says: str
    wall: str
    kind: str


class SeveralForm(HouseForm):
    """Rows by their keys, and the values of whichever button was pressed.

    `do` is that button; what belongs to another one is not looked at. `walls_to` are those of the
    job that is copied `to`; `at` answers with the walls of another.
    """

    rows = forms.MultipleChoiceField(
        label="Rows", error_messages={"required": "Choose at least one row."}
    )
    which = forms.ChoiceField(label="Which of their fronts", required=False)
    build = forms.ChoiceField(label="Built as", required=False)
    material = forms.CharField(label="Material", max_length=limits.LONGEST_MATERIAL, required=False)
    handle = forms.ChoiceField(label="Knob or pull", required=False)
    hinge = forms.ChoiceField(label="Hinge", required=False)
    made_by = forms.ChoiceField(label="Made", required=False)
    to = forms.ChoiceField(label="In job", required=False)
    wall = forms.ChoiceField(
        label="On wall",
        required=False,
        error_messages={"invalid_choice": "Choose one of the walls of that job, or name another."},
    )
    new_wall = forms.CharField(
        label="Name of another wall", max_length=limits.LONGEST_LABEL, required=False
    )
    turned = forms.BooleanField(
        label="As in a mirror: the last comes first, left and right change", required=False
    )

    def __init__(
        self,
        data: Any = None,
        *,
        standing: Sequence[Standing],
        walls: Sequence[str],
        jobs: Sequence[tuple[int, str]],
        to: int,
        walls_to: Sequence[str],
        at: str,
        items: Items,
        chosen: Sequence[str] = (),
    ) -> None:
        super().__init__(data, auto_id="several-%s", initial={"rows": list(chosen), "to": to})
        self.standing, self.walls, self.walls_to = standing, walls, walls_to
        self._offer("rows", [(row.key, row.says) for row in standing])
        fronts = ((kind, capitalized(f"{name_of(kind)} fronts")) for kind in FRONT_KINDS)
        self._offer("which", [(_ALL, "All of them"), *fronts])
        self._offer("build", _or_usual(words_of(FRONT_BUILDS)))
        self._offer("made_by", _or_usual(MADE_BY))
        for name in ("handle", "hinge"):
            self._offer(name, _or_usual({code: f"{code}, {says}" for code, says in items[name]()}))
        self._offer("to", [(str(key), says) for key, says in jobs])
        self.fields["to"].widget.attrs |= {
            "hx-get": at, "hx-target": "#several-walls-to", "hx-swap": "outerHTML",
        }  # fmt: skip
        self._offer("wall", [(_ANOTHER, "Another wall"), *((name, name) for name in walls_to)])

    @property
    def do(self) -> str:
        """The button that was pressed."""
        return str(self.data.get("do", ""))

    @property
    def wall_to(self) -> str:
        """The wall that copies stand on, or "" where neither was said."""
        return str(self.cleaned_data.get("wall") or self.cleaned_data.get("new_wall", ""))

    @property
    def values(self) -> dict[str, Any]:
        """What fronts are to say, by the names of their facts; None leaves it to the standard."""
        given = self.cleaned_data
        chosen = {
            name: None if given[name] == USUAL else given[name]
            for name in ("build", "handle", "hinge", "made_by")
            if given[name] != AS_IT_IS
        }
        return chosen | ({"material": given["material"]} if given["material"] else {})

    def clean(self) -> dict[str, Any]:
        """What the button needs."""
        given = super().clean() or {}
        if self.do != COPY:
            self.errors.pop("wall", None)  # Another job may have been chosen, without its walls.
        if self.do == FRONTS and not self.errors and not self.values:
            self.add_error(None, "Say what their fronts are to be.")
        if self.do == COPY and not self.has_error("wall") and not self.wall_to:
            self.add_error("new_wall", "Name the wall that the copies stand on, like North.")
        if self.do == COPY and not given.get("to"):
            self.add_error("to", "Choose a job.")
        return given

    def _offer(self, name: str, choices: Sequence[tuple[str, str]]) -> None:
        field = self.fields[name]
        if isinstance(field, forms.ChoiceField):
            field.choices = choices


def _or_usual(choices: Mapping[Any, str]) -> list[tuple[str, str]]:
    return [(AS_IT_IS, "As it is"), (USUAL, "As the standard says"), *choices.items()]


def jobs_to_copy_to(job: Job) -> list[tuple[int, str]]:
    """This job, then the others of its shop, the newest first."""
    others = Job.objects.filter(shop=job.shop_id, archived_at=None).exclude(pk=job.pk)
    named = [
        (each.pk, f"{each.number} {each.client_name}".strip()) for each in others.order_by("-pk")
    ]
    return [(job.pk, "This one"), *named]
