"""The way of a form that makes something new, the same for jobs and people."""

from collections.abc import Callable
from typing import Any, TypeVar, cast

from django.utils import timezone

from shopjobs.access import SignedInRequest
from shopjobs.forms.house import HouseForm
from shopjobs.sent_once import saved_before, saved_once
from shopjobs.services.refused import Refused

T = TypeVar("T")


def made_once(request: SignedInRequest, form: HouseForm, make: Callable[..., T]) -> T | None:
    """What the form makes, once however often it is sent; None where it is refused."""
    try:
        if before := saved_before(request):
            return cast(Any, before.made)  # type: ignore[no-any-return] # made by this form
        if not form.is_valid():
            return None
        new = {"shop": request.shop, "by": request.user, **form.cleaned_data}
        return saved_once(request, lambda: make(at=timezone.now(), **new))
    except Refused as refused:
        form.refuse(refused)
        return None
