"""A view of one job of the shop, and what such views ask of their requests."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import datetime, timedelta
from functools import wraps
from typing import Any, Concatenate, ParamSpec, TypeVar

from django.core.exceptions import ObjectDoesNotExist, PermissionDenied
from django.db import transaction
from django.db.models import QuerySet
from django.http import Http404, HttpResponse
from django.utils import timezone
from django.utils.dateparse import parse_datetime
from django.views.decorators.http import require_http_methods

from shopjobs.access import AnyView, Capability, SignedInRequest, may, needs
from shopjobs.models import Job
from shopjobs.services.locks import shop_lock

ENTERED = "X-Entered"
"""The header in which a phone says when it was entered what it sends late."""
LONGEST_WAIT = timedelta(days=60)
P = ParamSpec("P")
T = TypeVar("T")


def job_view(
    capability: Capability,
    *methods: str,
    to_post: Capability | None = None,
    holds: bool = True,
    shop_first: bool = False,
) -> Callable[[Callable[Concatenate[SignedInRequest, Job, P], HttpResponse]], AnyView[Any]]:
    """Hand the view its job; while one request changes a job, others that would wait.

    The view's page is drawn after that, when others may go on.
    `methods` are those that the view answers, GET and POST where none is named;
    `to_post` is what one must be allowed beside `capability` in order to change anything.
    A view that has slow work to do before it changes anything holds its job itself then, by
    `job_held`: it `holds` not from its beginning. One whose services hold the shop does so
    before its job: `shop_first`.
    """

    def guard(
        view: Callable[Concatenate[SignedInRequest, Job, P], HttpResponse],
    ) -> AnyView[Any]:
        @needs(capability)
        @wraps(view)
        def found(
            request: SignedInRequest, /, job_id: int, *args: P.args, **kwargs: P.kwargs
        ) -> HttpResponse:
            jobs = Job.objects.filter(shop=request.shop)
            if request.method != "POST":
                return view(request, _one_of(jobs, request, job_id), *args, **kwargs)
            if to_post is not None and not may(request.user, to_post):
                raise PermissionDenied
            if not holds:
                return view(request, _one_of(jobs, request, job_id), *args, **kwargs)
            with job_held(request, job_id, shop_first=shop_first) as job:
                return view(request, job, *args, **kwargs)

        return require_http_methods([*(methods or ("GET", "HEAD", "POST"))])(found)

    return guard


@contextmanager
def job_held(request: SignedInRequest, job_id: int, *, shop_first: bool = False) -> Iterator[Job]:
    """The job as it is now, which nobody else changes until the block ends; or its shop too."""
    with transaction.atomic():
        if shop_first:
            shop_lock(request.shop.pk)
        jobs = Job.objects.filter(shop=request.shop)
        jobs = jobs.select_for_update(of=("self",), no_key=True)
        yield _one_of(jobs, request, job_id)


def _one_of(jobs: QuerySet[Job], request: SignedInRequest, job_id: int) -> Job:
    job = found_or_404(jobs.get, pk=job_id)
    job.shop = request.shop
    return job


def found_or_404(find: Callable[..., T], *args: Any, **kwargs: Any) -> T:
    """What a selector finds; what it doesn't find does not exist."""
    try:
        return find(*args, **kwargs)
    except ObjectDoesNotExist as missing:
        raise Http404 from missing


def who(request: SignedInRequest) -> dict[str, Any]:
    """When something is done, and by whom, as the services ask."""
    return {"at": timezone.now(), "by": request.user}


def entered_at(request: SignedInRequest) -> datetime:
    """When what is sent was entered: before now where it waited for a signal, as its phone says.

    What is no time, or none that can be, is now.
    """
    now = timezone.now()
    try:
        said = parse_datetime(request.headers.get(ENTERED, ""))
    except ValueError:
        said = None
    is_known = said is not None and said.tzinfo is not None and now - LONGEST_WAIT < said < now
    return said if said is not None and is_known else now


def posted(request: SignedInRequest) -> Any:
    """What was posted, or None."""
    return request.POST if request.method == "POST" else None
