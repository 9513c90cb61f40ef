"""History: shown, taken back step by step, and the kitchen as it was."""

from datetime import date
from functools import partial

from django.contrib import messages
from django.core.exceptions import PermissionDenied
from django.core.paginator import Paginator
from django.db.models import QuerySet
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect
from django.utils.http import url_has_allowed_host_and_scheme
from django.views.decorators.http import require_GET, require_POST

from fronts.figures.differences import front_lines, need_lines
from fronts.models import Cabinet
from fronts.pages.history.forms import CompareForm, FilterForm, UndoForm
from fronts.pages.history.rows.lines import days_of
from fronts.pages.shared.drawn_walls import drawn_walls
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.history_addresses import history_address, undo_address
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.rules.differences import differences
from fronts.rules.runs import stood
from fronts.rules.schedule import schedule
from fronts.services.history import capability_for, revision_undo
from fronts.services.past import kitchen_after
from fronts.services.saving import AskFirst, key_of
from fronts.snapshot import kitchen_of
from shopjobs.access import SignedInRequest, may, needs
from shopjobs.models import Job, Revision, Shop
from shopjobs.pages import render_page
from shopjobs.selectors import revisions_of
from shopjobs.services.history_steps import taken_back

A_PAGE = 50
PAGE = "fronts/history/page.html"
JOB_LAYOUT, SHOP_LAYOUT = "fronts/job.html", "shopjobs/shop.html"


@job_view("measure", "GET", "HEAD")
def job_history(request: SignedInRequest, job: Job) -> HttpResponse:
    """Everything that was done to the job."""
    cabinets = [
        (key_of(cabinet), cabinet.label)
        for cabinet in Cabinet.objects.filter(job=job).order_by("position", "pk").only("label")
    ]
    return _history(request, job, job.unit, cabinets)


@needs("standard")
@require_GET
def shop_history(request: SignedInRequest) -> HttpResponse:
    """Everything that was done to the shop's own ways and people."""
    return _history(request, request.shop, request.shop.unit, [])


@job_view("measure", "POST")
def job_undo(request: SignedInRequest, job: Job) -> HttpResponse:
    """Take back what somebody did to the job."""
    return _undo(request, job)


@job_view("measure", "GET", "HEAD")
def job_undo_bar(request: SignedInRequest, job: Job) -> HttpResponse:
    """Undo and Redo as they are once something changed on the page `back`."""
    context = {"job": job, "back": _safe_back(request, request.GET.get("back", ""), job)}
    return render_page(request, "fronts/history/bar_part.html", context)


@needs("jobs")
@require_POST
def shop_undo(request: SignedInRequest) -> HttpResponse:
    """Take back what somebody did to the shop's ways, where one may do that."""
    return _undo(request, request.shop)


@job_view("measure", "GET", "HEAD")
def job_past(request: SignedInRequest, job: Job, key: int) -> HttpResponse:
    """The kitchen as a revision left it, and what is otherwise now, or after another revision."""
    revision = get_object_or_404(revisions_of(job), pk=key)
    form = CompareForm(request.GET or None, revisions=revisions_of(job))
    other = form.other
    kitchen = stood(kitchen_after(job, revision))
    later = kitchen_of(job) if other is None else kitchen_after(job, other)
    then = schedule(kitchen)
    since = differences(then, schedule(later))
    context = {
        "job": job,
        "step": "history",
        "revision": revision,
        "form": form,
        "other": other,
        "drawn": drawn_walls(then, kitchen),
        "fronts": front_lines(since, job.unit),
        "needs": need_lines(since),
    }
    return render_page(request, "fronts/history/past.html", context)


def _history(
    request: SignedInRequest, owner: Job | Shop, unit: str, cabinets: list[tuple[str, str]]
) -> HttpResponse:
    form = FilterForm(request.GET or None, shop=request.shop, cabinets=cabinets)
    rows = revisions_of(owner).select_related("person").order_by("-pk")
    dead = taken_back(rows.exclude(undoes=None).defer("changes"))
    page = Paginator(_chosen(rows, form), A_PAGE).get_page(request.GET.get("page"))
    context = {
        **_around(owner),
        "step": "history",
        "form": form,
        "days": days_of(list(page), dead, unit),
        "page": page,
        "here": request.get_full_path(),
    }
    return render_page(request, PAGE, context)


def _chosen(rows: QuerySet[Revision], form: FilterForm) -> QuerySet[Revision]:
    """The revisions that the filter asks for; one that can't be read asks for nothing."""
    asked = form.cleaned_data if form.is_bound and not form.errors else {}
    if asked.get("person"):
        rows = rows.filter(person=asked["person"])
    if asked.get("about"):
        rows = rows.filter(about=asked["about"])
    day: date | None = asked.get("day")
    return rows if day is None else rows.filter(at__date=day)


def _undo(request: SignedInRequest, owner: Job | Shop) -> HttpResponse:
    form = UndoForm(posted(request))
    return form_answer(
        request,
        form,
        show=partial(_refused, request, owner, form),
        ask=lambda asks: _refused(request, owner, form, asks=asks, status=422),
        save=lambda: _taken_back(request, owner, form),
        done=lambda text: _told(request, owner, form, text),
    )


def _taken_back(request: SignedInRequest, owner: Job | Shop, form: UndoForm) -> str:
    asked = form.cleaned_data
    revision = get_object_or_404(revisions_of(owner).filter(can_undo=True), pk=asked["revision"])
    revision.shop, revision.job = request.shop, owner if isinstance(owner, Job) else None
    if not may(request.user, capability_for(revision, request.user)):
        raise PermissionDenied
    return revision_undo(revision=revision, confirmed=asked["confirmed"], **who(request))


def _told(request: SignedInRequest, owner: Job | Shop, form: UndoForm, text: str) -> HttpResponse:
    messages.success(request, f"{text}.")
    return redirect(_safe_back(request, form.data.get("back", ""), owner))


def _refused(
    request: SignedInRequest,
    owner: Job | Shop,
    form: UndoForm,
    *,
    status: int = 200,
    asks: AskFirst | None = None,
) -> HttpResponse:
    """Say why it can't be taken back, or what goes if it is."""
    context = {
        **_around(owner),
        "form": form,
        "asks": asks,
        "back": _safe_back(request, form.data.get("back", ""), owner),
    }
    return render_page(request, "fronts/history/undo.html", context, status=status)


def _around(owner: Job | Shop) -> dict[str, object]:
    """What stands around a page of a job's history, or of the shop's."""
    job = owner if isinstance(owner, Job) else None
    layout = JOB_LAYOUT if job else SHOP_LAYOUT
    return {"layout": layout, "job": job, "undo": undo_address(owner)}


def _safe_back(request: SignedInRequest, back: str, owner: Job | Shop) -> str:
    """Where one was; nowhere but on this site."""
    if url_has_allowed_host_and_scheme(back, allowed_hosts={request.get_host()}):
        return back
    return history_address(owner)
