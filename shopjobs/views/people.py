"""The people of the shop."""

from typing import Any

from django.contrib import messages
from django.http import Http404, HttpResponse
from django.utils import timezone
from django.views.decorators.http import require_http_methods, require_POST

from shopjobs.access import SignedInRequest, needs
from shopjobs.forms.people import NewPasswordForm, NewPersonForm, PersonForm
from shopjobs.models import Person
from shopjobs.pages import go_to, render_page
from shopjobs.selectors import colleague_of, people_of
from shopjobs.services.people import (
    password_set,
    person_change,
    person_create,
    person_deactivate,
    person_reactivate,
)
from shopjobs.services.refused import Refused
from shopjobs.views.made_once import made_once


def _person_or_404(request: SignedInRequest, person_id: int) -> Person:
    try:
        return colleague_of(request.user, person_id)
    except Person.DoesNotExist as missing:
        raise Http404 from missing


@needs("people")
@require_http_methods(["GET", "POST"])
def person_list(request: SignedInRequest) -> HttpResponse:
    """Show the people of the shop; add one."""
    form = NewPersonForm(request.POST if request.method == "POST" else None)
    if form.is_bound and (new := made_once(request, form, person_create)):
        messages.success(request, f"{new.shown_name} can sign in now as “{new}”.")
        return go_to(request, "shopjobs:person-list")
    return render_page(
        request,
        "shopjobs/person_list.html",
        {"form": form, "people": people_of(request.user)},
        partial="new-person",
        status=422 if form.is_bound else 200,
    )


@needs("people")
@require_http_methods(["GET", "POST"])
def person_page(request: SignedInRequest, person_id: int) -> HttpResponse:
    """Show and change a person's name and role."""
    person = _person_or_404(request, person_id)
    form = PersonForm(request.POST if request.method == "POST" else None, person=person)
    if form.is_bound and form.is_valid():
        try:
            # Another copy of the row, so that the page's heading keeps what is saved.
            fresh = colleague_of(request.user, person.pk)
            person_change(person=fresh, by=request.user, at=timezone.now(), **form.cleaned_data)
        except Refused as refused:
            form.refuse(refused)
        else:
            messages.success(request, f"{fresh.shown_name} is saved.")
            return go_to(request, "shopjobs:person-list")
    return _person_page(request, person, "person-form", form=form)


@needs("people")
@require_POST
def person_password(request: SignedInRequest, person_id: int) -> HttpResponse:
    """Set a person's password, to be told to them."""
    person = _person_or_404(request, person_id)
    form = NewPasswordForm(request.POST, person=person)
    if not form.is_valid():
        return _person_page(request, person, "password-form", password_form=form)
    password = form.cleaned_data["password"]
    password_set(person=person, password=password, by=request.user, at=timezone.now())
    messages.success(request, f"The password of {person.shown_name} is set.")
    return go_to(request, "shopjobs:person-list")


@needs("people")
@require_POST
def person_close(request: SignedInRequest, person_id: int) -> HttpResponse:
    """Close a person's account."""
    person = _person_or_404(request, person_id)
    try:
        person_deactivate(person=person, by=request.user, at=timezone.now())
    except Refused as refused:
        messages.error(request, refused.message)
        return go_to(request, "shopjobs:person-page", person.pk)
    messages.success(request, f"The account of {person.shown_name} is closed.")
    return go_to(request, "shopjobs:person-list")


@needs("people")
@require_POST
def person_open(request: SignedInRequest, person_id: int) -> HttpResponse:
    """Open a closed account again."""
    person = _person_or_404(request, person_id)
    person_reactivate(person=person, by=request.user, at=timezone.now())
    messages.success(request, f"{person.shown_name} can sign in again.")
    return go_to(request, "shopjobs:person-list")


def _person_page(
    request: SignedInRequest, person: Person, partial: str, **forms: Any
) -> HttpResponse:
    shown = {
        "person": person,
        "form": PersonForm(person=person),
        "password_form": NewPasswordForm(person=person),
    } | forms
    bound = any(form.is_bound for form in forms.values())
    return render_page(
        request, "shopjobs/person_page.html", shown, partial=partial, status=422 if bound else 200
    )
