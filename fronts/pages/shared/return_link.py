"""Back to where somebody came from to mend a measurement: known words, never an address."""

import re

from django.urls import reverse

from shopjobs.access import SignedInRequest
from shopjobs.models import Job

_AT_CABINET = re.compile(r"fit-([0-9]{1,18})")
"""`?back=fit-12`: the fit page of cabinet 12."""


def return_word(request: SignedInRequest) -> str:
    """The word in the page's address, "" where it is none that is known."""
    word = request.GET.get("back", "")
    return word if _AT_CABINET.fullmatch(word) else ""


def return_link(request: SignedInRequest, job: Job) -> str:
    """The address that the word stands for, "" where one did not come from there."""
    known = _AT_CABINET.fullmatch(return_word(request))
    return reverse("fronts:job-fit-cabinet", args=[job.pk, int(known[1])]) if known else ""
