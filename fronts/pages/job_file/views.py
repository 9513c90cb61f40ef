"""A job as a file: taken in as a new job, and handed out."""

import re
from dataclasses import replace

from django.contrib import messages
from django.core.exceptions import ValidationError
from django.http import HttpResponse
from django.views.decorators.http import require_http_methods

from fronts import jobfile
from fronts.pages.job_file.forms import JobFileForm
from fronts.pages.shared.job_view import job_view, who
from fronts.pages.shared.kitchen_form import sentence
from fronts.rules.kitchen import Kitchen
from fronts.services.imports import job_import
from fronts.snapshot import kitchen_of
from shopjobs.access import SignedInRequest, needs
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page
from shopjobs.services.refused import Refused

PAGE = "fronts/job_file/page.html"
MOST_SHOWN = 200
MOST_CABINETS = 300
"""What a page's answer has the time for; the command takes in any number."""
_NOT_IN_A_NAME = re.compile(r"[^A-Za-z0-9._-]+")


@job_view("measure", "GET", "HEAD")
def job_file(request: SignedInRequest, job: Job) -> HttpResponse:
    """Hand out the job's kitchen as a job file."""
    text = jobfile.write(kitchen_of(job))
    name = _NOT_IN_A_NAME.sub("-", job.number).strip("-.") or "job"
    headers = {"Content-Disposition": f'attachment; filename="{name}.job.json"'}
    return HttpResponse(text, content_type="application/json", headers=headers)


@needs("jobs")
@require_http_methods(["GET", "POST"])
def job_import_page(request: SignedInRequest) -> HttpResponse:
    """Take in a job file as a new job, or say everything that is wrong with it."""
    if request.method != "POST":
        return render_page(request, PAGE, {"form": JobFileForm()})
    form = JobFileForm(request.POST, request.FILES)
    faults: tuple[jobfile.Fault, ...] = ()
    if form.is_valid():
        try:
            kitchen = _renumbered(jobfile.read_bytes(form.cleaned_data["file"]), form)
            _refuse_too_many(kitchen)
            job = job_import(kitchen=kitchen, shop=request.shop, **who(request))
        except jobfile.Refused as refused:
            faults = refused.faults
            form.add_error("file", "Nothing was taken in. What is wrong stands below.")
        except Refused:
            words = "There is already a job of this number in the shop. Give another number here."
            form.add_error("number", words)
        except ValidationError as error:
            for message in error.messages:
                form.add_error("file", sentence(message))
        else:
            messages.success(request, _summary(kitchen))
            return go_to(request, "fronts:job-measure", job.pk)
    shown = {"form": form, "faults": faults[:MOST_SHOWN], "more": max(0, len(faults) - MOST_SHOWN)}
    return render_page(request, PAGE, shown, status=422)


def _renumbered(kitchen: Kitchen, form: JobFileForm) -> Kitchen:
    number = form.cleaned_data["number"]
    return replace(kitchen, job=replace(kitchen.job, number=number)) if number else kitchen


def _refuse_too_many(kitchen: Kitchen) -> None:
    count = len(kitchen.cabinets)
    if count > MOST_CABINETS:
        raise ValidationError(
            f"This file has {count} cabinets, and a page takes in {MOST_CABINETS} at most. Make "
            "it several jobs, or take it in by the command import_job."
        )


def _summary(kitchen: Kitchen) -> str:
    openings = sum(len(each.openings) for each in kitchen.cabinets)
    counted = ((len(kitchen.cabinets), "cabinet"), (openings, "opening"),
               (len(kitchen.doors_on_hand), "door on hand"))  # fmt: skip
    words = [f"{n} {_plural(name) if n != 1 else name}" for n, name in counted]
    return f"Job {kitchen.job.number} is taken in: {', '.join(words)}."


def _plural(name: str) -> str:
    return "doors on hand" if name.startswith("door") else f"{name}s"
