"""A form that is sent twice is saved once: each carries a key of its own, made with it.

A double click, a browser that sends again, a phone whose answer got lost: what is sent again
is the same to the last sign, and is answered as it was the first time. The same form with
something else in it is another; who went back to change what was typed is not ignored.
"""

import hashlib
from collections.abc import Callable, Iterator
from typing import Any, TypeVar

from django.core.files.uploadedfile import UploadedFile
from django.utils import timezone

from shopjobs.access import SignedInRequest
from shopjobs.services.sent_forms import Saved, form_saved_before, form_saved_once

T = TypeVar("T")
KEY = "form_key"
"""The hidden field of a form that holds its key; the template tag of this name makes it."""


def saved_before(request: SignedInRequest) -> Saved | None:
    """What came of the form that is sent, where it was saved before."""
    digest = _digest_of(request)
    return form_saved_before(person=request.user, digest=digest) if digest else None


def saved_once(request: SignedInRequest, save: Callable[[], T]) -> T:
    """Save what is sent, unless the same comes at the same time and is saved already."""
    digest = _digest_of(request)
    if not digest:
        return save()
    return form_saved_once(person=request.user, digest=digest, at=timezone.now(), save=save)


def _digest_of(request: SignedInRequest) -> str:
    """The name of what is sent, worked out once a request: a file in it is read for it."""
    known = vars(request)
    if "form_digest" not in known:
        known["form_digest"] = _digest(request)
    digest: str = known["form_digest"]
    return digest


def _digest(request: SignedInRequest) -> str:
    """A name for what is sent and where to, files included; "" where a form has no key."""
    if not request.POST.get(KEY):
        return ""
    sent = sorted(
        (name, values) for name, values in request.POST.lists() if name != "csrfmiddlewaretoken"
    )
    digest = hashlib.sha256(repr((request.path, sent)).encode())
    for name, file in _files(request):
        digest.update(repr((name, file.name, file.size)).encode())
        for chunk in file.chunks():
            digest.update(chunk)
        file.seek(0)
    return digest.hexdigest()


def _files(request: SignedInRequest) -> "Iterator[tuple[str, UploadedFile[Any]]]":
    """Every file that is sent, several of one field in their order."""
    for name in sorted(request.FILES):
        for file in request.FILES.getlist(name):
            yield name, file
