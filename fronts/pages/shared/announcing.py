"""One event tells the parts of a page that the job has changed."""

from typing import TypeVar

from django.http import HttpResponse
from django_htmx.http import trigger_client_event

Answer = TypeVar("Answer", bound=HttpResponse)


def announce_change(response: Answer, *, drawn: bool = False) -> Answer:
    """Let what follows changes of the job ask for itself again, once the answer stands.

    Where its drawing is in the answer already, all but that.
    """
    return trigger_client_event(response, "job-drawn" if drawn else "job-changed", after="settle")
