"""The form that takes a CSV file of items."""

from collections.abc import Sequence

from fronts.pages.shared.file_field import BytesField
from shopjobs.forms.house import HouseForm


class ItemsFileForm(HouseForm):
    """A file that replaces all items of one kind; `faults` are what is wrong in it."""

    faults: Sequence[str] = ()

    file = BytesField(
        what="CSV file",
        most=1024 * 1024,
        label="CSV file",
        help_text="Like the one that is downloaded: its headings say what each column holds.",
    )
