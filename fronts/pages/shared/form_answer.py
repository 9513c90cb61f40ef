"""The way of a request that brings a form, the same for all pages: form, one service, answer."""

from collections.abc import Callable, Sequence
from typing import Any, Protocol, TypeVar

from django.core.exceptions import ValidationError
from django.forms import BaseFormSet
from django.http import HttpResponse

from fronts.services.saving import AskFirst
from shopjobs.access import SignedInRequest
from shopjobs.forms.house import HouseForm, unsaved
from shopjobs.sent_once import saved_before, saved_once
from shopjobs.services.refused import Refused

T = TypeVar("T")


class Show(Protocol):
    """Draws the page with its form, as it stands."""

    def __call__(self, *, status: int = 200) -> HttpResponse: ...


def form_answer(
    request: SignedInRequest,
    form: HouseForm,
    *,
    show: Show,
    save: Callable[[], T],
    done: Callable[[T], HttpResponse],
    ask: Callable[[AskFirst], HttpResponse] | None = None,
    tables: "Sequence[BaseFormSet[Any]]" = (),
) -> HttpResponse:
    """Show the form; once it was sent, save what it says and answer what was `done`.

    What can't be saved is shown again with what is wrong: 422, or 409 where somebody else
    changed the same fact since the form was made. `save` does all or nothing, like any one
    service; what it wants to be confirmed first, `ask` shows. `tables` are the form's own small
    tables. What is sent once more is answered as it was the first time.
    """
    if not form.is_bound:
        return show()
    try:
        before = saved_before(request)
    except Refused as gone:
        form.refuse(gone)
        return show(status=422)
    if before is not None:
        return done(before.made)
    sound = [form.is_valid(), *(table.is_valid() for table in tables)]
    if not all(sound):
        return show(status=unsaved(form))
    try:
        result = saved_once(request, save)
    except AskFirst as question:
        if ask is None:
            raise
        return ask(question)
    except ValidationError as error:
        form.refuse_all(error)
    except Refused as refused:
        form.refuse(refused)
    else:
        return done(result)
    return show(status=422)
