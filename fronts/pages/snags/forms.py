"""The forms in which a snag is written down, changed and settled."""

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from fronts.pages.shared.pictures import MOST_BYTES, small_picture
from fronts.pages.shared.row_key import row_key
from fronts.rules.limits import LONGEST_FRONT_LABEL, LONGEST_NOTE, MOST_SNAG_PHOTOS
from fronts.rules.snags import OF, SnagFacts
from shopjobs.forms.house import DateInput, HouseForm
from shopjobs.forms.seen import SeenForm
from shopjobs.words import fits_one_line, one_line

NOBODY = "nobody yet"
People = Mapping[int, str]
"""Who may settle a snag: names by keys."""
Choice = tuple[str, Any]


class OneText(forms.CharField):
    """A text that may be typed on several lines of a phone, and is one."""

    def __init__(self, **kwargs: Any) -> None:
        super().__init__(
            max_length=LONGEST_NOTE, validators=[one_line],
            widget=forms.Textarea(attrs={"rows": 2}), **kwargs,
        )  # fmt: skip

    def to_python(self, value: Any) -> str:
        """The text with a single space wherever there is any."""
        return " ".join(str(super().to_python(value) or "").split())


def _words() -> OneText:
    return OneText(
        label="What is wrong",
        error_messages={"required": "Say what is wrong, like “scratched at the lower corner”."},
    )


def _due() -> forms.DateField:
    return forms.DateField(
        label="To be settled by",
        required=False,
        widget=DateInput(),
        error_messages={"invalid": "Enter a date, like 2027-03-12."},
    )


class WhoField(forms.TypedChoiceField):
    """A person of the shop by the key, or nobody yet."""

    def __init__(self) -> None:
        super().__init__(label="Who settles it", required=False, coerce=int, empty_value=None)

    def offer(self, people: People, nobody: str = NOBODY) -> None:
        """Let one of these be chosen."""
        self.choices = [("", nobody), *((str(key), name) for key, name in people.items())]


class Pictures(forms.FileInput):
    """Several photos at once, from the camera or from what there is."""

    allow_multiple_selected = True

    def value_from_datadict(self, data: Any, files: Any, name: str) -> Any:
        """Every file of this name."""
        return files.getlist(name) if hasattr(files, "getlist") else []


class PicturesField(forms.Field):
    """Photos, each made small and plain."""

    widget = Pictures

    def clean(self, value: Any) -> list[bytes]:
        """What is no picture is refused here, where its file was chosen."""
        chosen = list(value or ())
        if len(chosen) > MOST_SNAG_PHOTOS:
            raise ValidationError(f"Add {MOST_SNAG_PHOTOS} photos at most.")
        if any(file.size > MOST_BYTES for file in chosen):
            raise ValidationError(f"Keep a photo to {MOST_BYTES // 2**20} MB.")
        if self.required and not chosen:
            raise ValidationError("Choose a photo, or take one.")
        return [small_picture(file) for file in chosen]


def place(of: str, key: int | str = "", label: str = "") -> str:
    """What a snag is on, as a form says it: `front 12 B1.a`; the label tells it once it is gone."""
    return f"{of} {key} {label}".strip()


class PicturesForm(HouseForm):
    """A form with photos."""

    @property
    def pictures(self) -> list[bytes]:
        """The photos, none where the form can't be saved as it was sent."""
        return self.cleaned_data["image"] if self.is_valid() else []


class SnagForm(PicturesForm):
    """A new snag. `places` are what it may be on, with what each is called."""

    on = forms.CharField(label="On", widget=forms.Select)
    words = _words()
    who = WhoField()
    due = _due()
    image = PicturesField(required=False, label="Photos")

    def __init__(self, *args: Any, places: Sequence[Choice], people: People, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.fields["on"].widget.choices = places
        offer_people(self, people)

    def clean_on(self) -> tuple[str, int | None, str]:
        """What it is on: of which kind, by which key, and what it is called."""
        of, _, rest = self.cleaned_data["on"].partition(" ")
        said, _, label = rest.partition(" ")
        if of == "job":
            return of, None, ""
        key = row_key(said) if of in OF else None
        is_label = 0 < len(label) <= LONGEST_FRONT_LABEL and fits_one_line(label)
        if key is None or not is_label:
            raise ValidationError("Choose one from the list.")
        return of, key, label

    def entered(self, label: str) -> SnagFacts:
        """What is wrong, on what is called so."""
        given = self.cleaned_data
        return SnagFacts(given["on"][0], given["words"], label, given["due"])


class SnagChangeForm(SeenForm):
    """A snag said otherwise: what is wrong, who settles it, by when."""

    words = _words()
    who = WhoField()
    due = _due()


class SettledForm(SeenForm):
    """What was done about a snag."""

    done_note = OneText(label="What was done", required=False)


class SnagPhotoForm(PicturesForm):
    """One more photo of a snag, or several."""

    image = PicturesField(label="Photo")


def offer_people(form: forms.Form, people: People, nobody: str = NOBODY) -> None:
    """Let one of these be chosen in a form as who settles a snag."""
    field = form.fields["who"]
    if isinstance(field, WhoField):
        field.offer(people, nobody)


def places_of(
    cabinets: Iterable[tuple[int, str]], fronts: Mapping[int, Sequence[tuple[int, str]]]
) -> list[Choice]:
    """Cabinets and their fronts to choose from; `fronts` by the cabinets' keys."""
    return [
        (f"Cabinet {label}", [
            *((place("front", front, called), called) for front, called in fronts.get(key, ())),
            (place("cabinet", key, label), f"cabinet {label}"),
        ])
        for key, label in cabinets
    ]  # fmt: skip
