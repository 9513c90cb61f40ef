"""One snag: changed, settled, opened again, taken away."""

from functools import partial

from django.contrib import messages
from django.core.exceptions import PermissionDenied
from django.http import HttpResponse
from django.shortcuts import redirect

from fronts.models import Snag
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import entered_at, found_or_404, job_view, posted, who
from fronts.pages.snags.forms import NOBODY, SnagChangeForm, offer_people
from fronts.pages.snags.rows import snag_shown
from fronts.pages.snags.views.parts import (
    back_to,
    here_of,
    people_of,
    row_answer,
    settled_form,
)
from fronts.selectors.snags import fronts_called, snag_of
from fronts.services.snags import snag_change, snag_delete, snag_open_again, snag_settle
from shopjobs.access import SignedInRequest, may
from shopjobs.edit_conflict import last_writer
from shopjobs.forms.house import unsaved
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page
from shopjobs.selectors import colleague_of

ONE = "fronts/snags/snag.html"


@job_view("measure", to_post="fit")
def snag_page(request: SignedInRequest, job: Job, snag_id: int) -> HttpResponse:
    """Show a snag; say otherwise what is wrong, who settles it, by when."""
    snag = found_or_404(snag_of, job, snag_id)
    form = _change_form(request, snag)
    return form_answer(
        request,
        form,
        show=partial(_page, request, snag, form),
        save=partial(_change, request, job, snag_id, form),
        done=lambda _: _changed(request, job, snag_id),
    )


def _change_form(request: SignedInRequest, snag: Snag) -> SnagChangeForm:
    initial = {"words": snag.words, "due": snag.due, "who": snag.assigned_to_id}
    form = SnagChangeForm(posted(request), initial=initial, auto_id="snag-%s")
    offer_people(form, people_of(snag.job, snag), snag.assigned_to_name or NOBODY)
    form.written_by = partial(last_writer, snag.job, (snag,))
    return form


def _change(request: SignedInRequest, job: Job, snag_id: int, form: SnagChangeForm) -> Snag:
    given = form.cleaned_data
    person = colleague_of(request.user, given["who"]) if given["who"] else None
    return snag_change(
        snag=snag_of(job, snag_id), words=given["words"], due=given["due"], who=person,
        **who(request),
    )  # fmt: skip


def _changed(request: SignedInRequest, job: Job, snag_id: int) -> HttpResponse:
    messages.success(request, "The snag is saved.")
    return go_to(request, "fronts:snag", job.pk, snag_id)


def _page(
    request: SignedInRequest, snag: Snag, form: SnagChangeForm, *, status: int = 200
) -> HttpResponse:
    shown = snag_shown(snag, fronts_called(snag.job, [snag]), settled_form(snag))
    context = {
        "job": snag.job,
        "step": "snags",
        "form": form,
        "shown": shown,
        "may_delete": _may_delete(request, snag),
    }
    status = unsaved(form) if form.is_bound else status
    return render_page(request, ONE, context, partial="change", status=status)


@job_view("fit", "POST")
def snag_settle_now(request: SignedInRequest, job: Job, snag_id: int) -> HttpResponse:
    """Mark a snag done, with what was done."""
    snag = found_or_404(snag_of, job, snag_id)
    form = settled_form(snag, request.POST)
    return form_answer(
        request,
        form,
        show=partial(row_answer, request, job, snag_id, form=form),
        save=lambda: snag_settle(
            snag=snag,
            note=form.cleaned_data["done_note"],
            entered=entered_at(request),
            **who(request),
        ),
        done=lambda _: row_answer(request, job, snag_id),
    )


@job_view("fit", "POST")
def snag_open_now(request: SignedInRequest, job: Job, snag_id: int) -> HttpResponse:
    """A snag that was done is not."""
    snag_open_again(snag=found_or_404(snag_of, job, snag_id), **who(request))
    return row_answer(request, job, snag_id)


@job_view("fit", "POST")
def snag_delete_now(request: SignedInRequest, job: Job, snag_id: int) -> HttpResponse:
    """Take a snag away; Undo brings it back."""
    snag = found_or_404(snag_of, job, snag_id)
    if not _may_delete(request, snag):
        raise PermissionDenied
    snag_delete(snag=snag, **who(request))
    messages.success(request, f"The snag on {snag.on} is deleted. Undo brings it back.")
    return redirect(back_to(job, here_of(request, job)))


def _may_delete(request: SignedInRequest, snag: Snag) -> bool:
    """Who wrote it down may take it away, and who may change the kitchen."""
    return snag.raised_by_id == request.user.pk or may(request.user, "edit_kitchen")
