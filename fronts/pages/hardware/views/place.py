"""Whose list a page is about: the shop's, or one job's; both are shown and changed alike."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, cast

from django.http import Http404, HttpResponse
from django.shortcuts import redirect
from django.urls import reverse
from django.views.decorators.http import require_http_methods

from fronts.models import HardwareList
from fronts.models.items import Item
from fronts.pages.hardware.views.kinds import ItemPage
from fronts.pages.shared.job_view import found_or_404, job_view
from fronts.rules.kinds import Unit
from shopjobs.access import AnyView, SignedInRequest, in_turn, needs
from shopjobs.models import Job, Shop

View = Callable[..., HttpResponse]


@dataclass(frozen=True, slots=True)
class Place:
    """The owner of a list, and the addresses of its pages."""

    owner: Shop | Job

    @property
    def job(self) -> Job | None:
        """The job whose own list it is."""
        return self.owner if isinstance(self.owner, Job) else None

    @property
    def unit(self) -> Unit:
        """What its bare numbers are in."""
        return cast(Unit, self.owner.unit)

    @property
    def row(self) -> HardwareList | None:
        """The owner's own list, where there is one."""
        if isinstance(self.owner, Job):
            return HardwareList.objects.filter(job=self.owner).first()
        return HardwareList.objects.filter(shop=self.owner, job=None).first()

    @property
    def around(self) -> dict[str, object]:
        """What stands around each of its pages."""
        shell = "shopjobs/shop.html" if self.job is None else "fronts/job.html"
        return {"place": self, "shell": shell, "job": self.job, "step": "measure"}

    def to(self, name: str, *args: object) -> str:
        """The address of one of its pages."""
        whose = "shop" if self.job is None else "job"
        before = [] if self.job is None else [self.job.pk]
        return reverse(f"fronts:{whose}-{name}", args=[*before, *args])

    def back(self, anchor: str) -> HttpResponse:
        """The page of the whole list."""
        return redirect(f"{self.to('hardware')}#{anchor}")

    def item(self, page: ItemPage, key: int) -> Item:
        """One item of the owner's own list; another's does not exist."""
        row = self.own()
        item: Item = found_or_404(page.table._default_manager.get, hardware=row, pk=key)
        item.hardware = row
        return item

    def own(self) -> HardwareList:
        """The owner's own list."""
        row = self.row
        if row is None:
            raise Http404
        row.shop = self.owner.shop if isinstance(self.owner, Job) else self.owner
        row.job = self.job
        return row

    def may_change(self) -> None:
        """A job's list is changed once it has one of its own."""
        if self.job is not None:
            self.own()


def of_shop(view: View, *methods: str) -> AnyView[Any]:
    """The view of the shop's list."""

    def shown(request: SignedInRequest, /, *args: Any, **kwargs: Any) -> HttpResponse:
        return view(request, Place(request.shop), *args, **kwargs)

    return needs("standard")(require_http_methods(_methods(methods))(in_turn(shown)))


def of_job(view: View, *methods: str) -> AnyView[Any]:
    """The view of a job's list."""

    def shown(request: SignedInRequest, job: Job, /, *args: Any, **kwargs: Any) -> HttpResponse:
        return view(request, Place(job), *args, **kwargs)

    return job_view("edit_kitchen", *_methods(methods))(shown)


def _methods(methods: tuple[str, ...]) -> list[str]:
    return [*(methods or ("GET", "HEAD", "POST"))]
