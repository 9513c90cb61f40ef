"""A job as a file, or as a notebook: taken in as a new job; and handed out. A job once more."""

import re
from collections.abc import Sequence
from dataclasses import replace
from functools import partial

from django.contrib import messages
from django.core.exceptions import ValidationError
from django.http import HttpResponse
from django.template.loader import render_to_string
from django.views.decorators.http import require_http_methods

from fronts import jobfile
from fronts.notebook import NotebookRefused
from fronts.pages.job_file.forms import JobCopyForm, JobFileForm
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.rules.kitchen import Kitchen
from fronts.selectors.records import records_of
from fronts.services.imports import job_import
from fronts.services.job_copies import job_copy
from fronts.services.notebook_jobs import notebook_enter
from fronts.snapshot import kitchen_of
from shopjobs.access import SignedInRequest, needs
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page
from shopjobs.services.refused import Refused

PAGE = "fronts/job_file/page.html"
COPY = "fronts/job_file/copy.html"
MOST_SHOWN = 200
MOST_CABINETS = 300
"""What a page's answer has the time for; the command takes in any number."""
_NOT_IN_A_NAME = re.compile(r"[^A-Za-z0-9._-]+")


@job_view("measure", "GET", "HEAD")
def job_file(request: SignedInRequest, job: Job) -> HttpResponse:
    """Hand out the job as a job file: its kitchen, and what was recorded on it."""
    text = jobfile.write(kitchen_of(job), records_of(job))
    name = _NOT_IN_A_NAME.sub("-", job.number).strip("-.") or "job"
    headers = {"Content-Disposition": f'attachment; filename="{name}.job.json"'}
    return HttpResponse(text, content_type="application/json", headers=headers)


@needs("jobs")
@require_http_methods(["GET", "POST"])
def job_import_page(request: SignedInRequest) -> HttpResponse:
    """Take in a job file as a new job, or say everything that is wrong with it."""
    form = JobFileForm(posted(request), request.FILES or None)
    faults: list[jobfile.Fault] = []
    return form_answer(
        request,
        form,
        show=partial(_page, request, form, faults),
        save=partial(_take_in, request, form, faults),
        done=partial(_taken_in, request),
    )


@job_view("jobs")
def job_copy_page(request: SignedInRequest, job: Job) -> HttpResponse:
    """Copy a job's kitchen under a new number."""
    form = JobCopyForm(posted(request), job=job)

    def show(*, status: int = 200) -> HttpResponse:
        shown = {"form": form, "job": job}
        return render_page(request, COPY, shown, partial="job-copy", status=status)

    def save() -> Job:
        return job_copy(job=job, **form.cleaned_data, **who(request))

    return form_answer(request, form, show=show, save=save, done=partial(_copied, request, job))


def _copied(request: SignedInRequest, job: Job, copy: Job) -> HttpResponse:
    said = {"job": job, "copy": copy}
    messages.success(request, render_to_string("fronts/job_file/copied.html", said, request))
    return go_to(request, "fronts:job-measure", copy.pk)


def _take_in(request: SignedInRequest, form: JobFileForm, faults: list[jobfile.Fault]) -> Job:
    """The job that the file becomes; `faults` are filled with what is wrong in it."""
    if is_notebook(form.cleaned_data["file"]):
        return _from_notebook(request, form, faults)
    try:
        stated = jobfile.read_bytes(form.cleaned_data["file"])
    except jobfile.Refused as refused:
        faults += refused.faults
        nothing = "Nothing was taken in. What is wrong stands below."
        raise ValidationError({"file": nothing}) from refused
    kitchen = stated.kitchen
    _refuse_too_many(kitchen)
    if form.cleaned_data["number"]:
        kitchen = replace(kitchen, job=replace(kitchen.job, number=form.cleaned_data["number"]))
    try:
        return job_import(
            kitchen=kitchen, records=stated.records, shop=request.shop, **who(request)
        )
    except Refused as refused:
        words = "There is already a job of this number in the shop. Give another number here."
        raise Refused(words, field="number") from refused
    except ValidationError as error:
        raise ValidationError({"file": error.messages}) from error


def is_notebook(data: bytes) -> bool:
    """Whether a file is written line by line; a job file begins with a brace."""
    begin = data.removeprefix(b"\xef\xbb\xbf").lstrip()[:1]
    return begin not in (b"{", b"[", b"")


def _from_notebook(request: SignedInRequest, form: JobFileForm, faults: list[jobfile.Fault]) -> Job:
    """A job of the shop's own ways, with what the notebook's lines say."""
    number = form.cleaned_data["number"]
    try:
        text = jobfile.decoded(form.cleaned_data["file"], "a notebook, which is text in UTF-8")
        if not number:
            raise ValidationError({"number": "Give the new job's number: a notebook has none."})
        return notebook_enter(
            shop=request.shop, number=number, text=text, most=MOST_CABINETS, **who(request)
        )
    except jobfile.Refused as refused:
        faults += refused.faults
    except NotebookRefused as refused:
        faults += [
            jobfile.Fault(f"line {one.line}", one.found, one.wanted) for one in refused.faults
        ]
    raise ValidationError({"file": "Nothing was taken in. What is wrong stands below."})


def _taken_in(request: SignedInRequest, job: Job) -> HttpResponse:
    messages.success(request, _summary(kitchen_of(job)))
    return go_to(request, "fronts:job-measure", job.pk)


def _page(
    request: SignedInRequest,
    form: JobFileForm,
    faults: Sequence[jobfile.Fault],
    *,
    status: int = 200,
) -> HttpResponse:
    more = max(0, len(faults) - MOST_SHOWN)
    shown = {"form": form, "faults": faults[:MOST_SHOWN], "more": more}
    return render_page(request, PAGE, shown, status=status)


def _refuse_too_many(kitchen: Kitchen) -> None:
    count = len(kitchen.cabinets)
    if count > MOST_CABINETS:
        words = (
            f"This file has {count} cabinets, and a page takes in {MOST_CABINETS} at most. Make "
            "it several jobs, or take it in by the command import_job."
        )
        raise ValidationError({"file": words})


def _summary(kitchen: Kitchen) -> str:
    openings = sum(len(each.openings) for each in kitchen.cabinets)
    counted = ((len(kitchen.cabinets), "cabinet"), (openings, "opening"),
               (len(kitchen.doors_on_hand), "door on hand"))  # fmt: skip
    words = [f"{n} {_plural(name) if n != 1 else name}" for n, name in counted]
    return f"Job {kitchen.job.number} is taken in: {', '.join(words)}."


def _plural(name: str) -> str:
    return "doors on hand" if name.startswith("door") else f"{name}s"
