"""What the pages with snags are drawn from: the job's own, and a part of each cabinet's."""

from functools import partial
from http import HTTPStatus
from typing import Any

from django.db.models import QuerySet
from django.forms import Form
from django.http import HttpResponse
from django.shortcuts import redirect
from django.urls import reverse

from fronts.models import Cabinet, Front, Snag
from fronts.pages.shared.announcing import announce_change
from fronts.pages.shared.job_view import found_or_404
from fronts.pages.shared.row_key import row_key
from fronts.pages.snags.forms import SettledForm, SnagForm, place, places_of
from fronts.pages.snags.rows import snag_shown, snags_shown
from fronts.selectors.kitchens import cabinet_of, cabinets_of, front_keys_of
from fronts.selectors.snags import fronts_called, snag_of
from shopjobs.access import SignedInRequest
from shopjobs.edit_conflict import last_writer
from shopjobs.models import Job, Person
from shopjobs.pages import render_page, wants_part
from shopjobs.selectors import names_in

PAGE, HERE, ROW = "fronts/snags/page.html", "fronts/snags/here.html", "fronts/snags/row.html"
NEW = "snag"
"""Begins the ids of the form of a new snag."""


def people_of(job: Job, snag: Snag | None = None) -> dict[int, str]:
    """Who may settle a snag: who is of the shop now, and who is to settle this one."""
    names = names_in(job.shop)
    active = Person.objects.filter(shop=job.shop, is_active=True).values_list("pk", flat=True)
    keys = {*active, *([snag.assigned_to_id] if snag and snag.assigned_to_id else [])}
    return {key: name for key, name in names.items() if key in keys}


def new_form(job: Job, cabinet_id: int | None = None, *sent: Any) -> SnagForm:
    """The form of a new snag in the job, or of one at a cabinet; `sent` is what was posted."""
    rows = cabinets_of(job).prefetch_related(None)
    if cabinet_id is not None:
        rows = rows.filter(pk=cabinet_id)
    cabinets = list(rows.values_list("pk", "label"))
    places = places_of(cabinets, _fronts_in(job))
    if cabinet_id is None:
        places = [(place("job"), "the whole job"), *places]
    else:
        places = [choice for _, inside in places for choice in inside]
    return SnagForm(*sent, places=places, people=people_of(job), auto_id=f"{NEW}-%s")


def _fronts_in(job: Job) -> dict[int, list[tuple[int, str]]]:
    """The job's fronts, by their cabinets' keys."""
    rows: QuerySet[Front] = Front.objects.filter(opening__cabinet__job=job)
    cabinets = dict(rows.values_list("pk", "opening__cabinet_id"))
    found: dict[int, list[tuple[int, str]]] = {}
    for label, key in front_keys_of(job).items():
        found.setdefault(cabinets[key], []).append((key, label))
    return found


def settled_form(snag: Snag, *sent: Any) -> SettledForm:
    """The form that says what was done about a snag."""
    initial = {"done_note": snag.done_note}
    form = SettledForm(*sent, initial=initial, auto_id=f"snag-{snag.pk}-%s")
    form.written_by = partial(last_writer, snag.job, (snag,))
    return form


def job_part(job: Job, form: SnagForm) -> dict[str, Any]:
    """All the job's snags, and the form of a new one."""
    opened, done = snags_shown(job, settled_form)
    return {"job": job, "step": "snags", "form": form, "opened": opened, "done": done}


def cabinet_part(job: Job, cabinet_id: int, form: SnagForm) -> dict[str, Any]:
    """The snags of one cabinet and its fronts, and the form of a new one there."""
    opened, done = snags_shown(job, settled_form, cabinet_id)
    cabinet = cabinet_of(job, cabinet_id)
    return {
        "job": job,
        "form": form,
        "opened": opened,
        "done": done,
        "here": cabinet_id,
        "cabinet": cabinet.label,
    }


def here_of(request: SignedInRequest, job: Job) -> int | None:
    """The cabinet at whose page one is; None on the job's own page, or where it has gone."""
    key = row_key(request.POST.get("here", ""))
    is_there = key is not None and Cabinet.objects.filter(job=job, pk=key).exists()
    return key if is_there else None


def row_answer(
    request: SignedInRequest, job: Job, snag_id: int, *, status: int = 200, **said: Any
) -> HttpResponse:
    """The snag's own row for htmx; else the page on which one is, where it stands."""
    here = here_of(request, job)
    if not wants_part(request) and status == 200:
        return redirect(back_to(job, here, snag_id))
    snag = found_or_404(snag_of, job, snag_id)
    form: Form = said.pop("form", None) or settled_form(snag)
    shown = snag_shown(snag, fronts_called(job, [snag]), form)
    context = {"job": job, "step": "snags", "shown": shown, "here": here or "", **said}
    template = ROW if wants_part(request) else "fronts/snags/refused.html"
    answer = render_page(request, template, context, status=status)
    return announce_change(answer) if status == HTTPStatus.OK else answer


def back_to(job: Job, here: int | None, snag_id: int | None = None) -> str:
    """The address of the page on which one is, at a snag."""
    to = (
        reverse("fronts:job-snags", args=[job.pk])
        if here is None
        else reverse("fronts:job-fit-cabinet", args=[job.pk, here])
    )
    return f"{to}#snag-{snag_id}" if snag_id else to
