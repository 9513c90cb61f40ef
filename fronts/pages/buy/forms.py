"""The form that lays by for jobs what of their wants lies free in stock."""

from collections.abc import Mapping
from typing import Any, cast

from django import forms
from django.core.exceptions import ValidationError
from django.http import QueryDict

from fronts.rules.limits import LONGEST_ITEM
from fronts.rules.shelf import FreeShare
from shopjobs.forms.house import HouseForm


class LayByForm(HouseForm):
    """All that was shown, or one item of it; `now` is what may be laid by, by its name in forms."""

    item = forms.CharField(required=False, max_length=LONGEST_ITEM)

    def __init__(self, *args: Any, now: Mapping[str, FreeShare], **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self._now = now

    def clean(self) -> dict[str, Any]:
        """What was shown must be so still; the rest of it waits for another look."""
        given = super().clean() or {}
        shown = cast(QueryDict, self.data).getlist("share")
        item = given.get("item", "")
        known = {value: share for value, share in self._now.items() if value in shown}
        self.shares = [share for share in known.values() if item in ("", share.name)]
        if not self.shares or (not item and len(known) < len(shown)):
            self.has_clashes = True
            raise ValidationError(
                "What is in stock, or wanted of it, has changed. Look again, then go on."
            )
        return given
