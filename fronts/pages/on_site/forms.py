"""The form in which one size of an opening is taken."""

from typing import Any, ClassVar

from django import forms
from django.core.exceptions import ValidationError
from django.forms import BoundField

from fronts.facts.rows import columns_of
from fronts.pages.shared.kitchen_form import KitchenForm
from fronts.pages.shared.pictures import MOST_BYTES, small_picture
from fronts.rules.kitchen import Measured
from fronts.rules.lengths import Mm
from fronts.rules.limits import LONGEST_LABEL
from shopjobs.forms.house import HouseForm
from shopjobs.forms.seen import SEEN

PHOTO = "photo"
"""Begins the ids of a wall's form for a photo."""
SURE = "sure"
"""Named by the button that keeps a size that was asked about; its value is what it keeps."""
_BEGINS = "measured_"


class PhotoForm(HouseForm):
    """A photo of a wall, from the camera or from what there is."""

    wall = forms.CharField(max_length=LONGEST_LABEL, widget=forms.HiddenInput)
    image = forms.FileField(
        label="Photo",
        max_length=200,
        widget=forms.FileInput(attrs={"accept": "image/*", "data-photo": ""}),
        error_messages={"required": "Choose a photo, or take one."},
    )

    picture: bytes = b""
    """The photo, made small and plain."""

    @property
    def pictures(self) -> list[bytes]:
        """The photo, if it is one."""
        return [self.picture] if self.is_valid() else []

    def clean_image(self) -> Any:
        """What is no picture is refused here, where its file was chosen."""
        image = self.cleaned_data["image"]
        if image.size > MOST_BYTES:
            raise ValidationError(f"Keep a photo to {MOST_BYTES // 2**20} MB.")
        self.picture = small_picture(image)
        return image


class SizeForm(KitchenForm):
    """One size as it was read off a tape."""

    also: ClassVar[tuple[tuple[type, str, tuple[str, ...]], ...]] = ((Measured, _BEGINS, ()),)
    is_merged = True

    def __init__(self, *args: Any, held: Measured, size: str, **kwargs: Any) -> None:
        self.column = f"{_BEGINS}{size}"
        values = {f"{_BEGINS}{name}": length for name, length in columns_of(held).items()}
        super().__init__(*args, initial=values, **kwargs)
        for name in {*self.fields} - {self.column, SEEN}:
            del self.fields[name]
        self.asked.field.widget.attrs |= {"data-reading": True, "class": "reading"}

    @property
    def asked(self) -> BoundField:
        """The field of the size."""
        return self[self.column]

    @property
    def typed(self) -> str:
        """What stands in the field, as it was typed."""
        return str(self.asked.value() or "")

    @property
    def length(self) -> Mm | None:
        """The size that was entered, None where the field was left empty."""
        length: Mm | None = self.cleaned_data[self.column]
        return length

    @property
    def is_sure(self) -> bool:
        """Whether the very size that is sent was asked about, and is to be kept."""
        return bool(self.typed) and self.data.get(SURE) == self.typed
