"""One event tells the parts of a page that the job has changed."""

from typing import TypeVar

from django.http import HttpResponse
from django_htmx.http import trigger_client_event

Answer = TypeVar("Answer", bound=HttpResponse)


def announce_change(response: Answer) -> Answer:
    """Let what follows changes of the job ask for itself again, once the answer stands."""
    return trigger_client_event(response, "job-changed", after="settle")
