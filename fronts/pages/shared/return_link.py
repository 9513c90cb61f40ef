"""Back to where somebody came from to mend a measurement: known words, never an address."""

import re

from django.urls import reverse

from shopjobs.access import SignedInRequest
from shopjobs.models import Job

_AT_CABINET = re.compile(r"fit-([0-9]{1,18})")
"""`?back=fit-12`: the fit page of cabinet 12."""
_DOORS = "doors"
"""`?back=doors`: the table of doors on hand."""


def return_word(request: SignedInRequest) -> str:
    """The word in the page's address, "" where it is none that is known."""
    word = request.GET.get("back", "")
    return word if word == _DOORS or _AT_CABINET.fullmatch(word) else ""


def is_from_fitting(request: SignedInRequest) -> bool:
    """Whether somebody came from the fit page of a cabinet."""
    return bool(_AT_CABINET.fullmatch(return_word(request)))


def return_link(request: SignedInRequest, job: Job) -> str:
    """The address that the word stands for, "" where one did not come from there."""
    word = return_word(request)
    if word == _DOORS:
        return reverse("fronts:job-doors", args=[job.pk])
    known = _AT_CABINET.fullmatch(word)
    return reverse("fronts:job-fit-cabinet", args=[job.pk, int(known[1])]) if known else ""
