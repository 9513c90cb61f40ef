"""The whole list: every kind with its items, or what holds where there is none."""

from dataclasses import dataclass

from django.contrib import messages
from django.http import Http404, HttpResponse
from django.utils.safestring import SafeString

from fronts.models import HardwareList
from fronts.pages.hardware.rows.items import ItemRow, item_rows
from fronts.pages.hardware.rows.stock import stock_rows
from fronts.pages.hardware.views.kinds import ITEM_PAGES, ItemPage
from fronts.pages.hardware.views.place import Place
from fronts.pages.shared.job_view import who
from fronts.rules.items import Hardware
from fronts.rules.kinds import Unit
from fronts.rules.usual_hardware import usual_hardware
from fronts.services.hardware import hardware_clear, hardware_own, items_set
from fronts.snapshot import ways_of
from fronts.snapshot.hardware import hardware_in_force
from fronts.snapshot.in_force import row_in_force
from fronts.snapshot.things import bare
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import render_page

PAGE = "fronts/hardware/page.html"


@dataclass(frozen=True, slots=True)
class KindList:
    """One kind on the page; `usual` are what holds where the list has none of it."""

    page: ItemPage
    items: list[ItemRow]
    usual: list[ItemRow]
    drawing: SafeString


def hardware(request: SignedInRequest, place: Place) -> HttpResponse:
    """Show every kind in the order of preference."""
    row = row_in_force(HardwareList, place.owner)
    ways = ways_of(place.owner)
    usual = usual_hardware(ways)
    context = {
        **place.around,
        "own": place.job is None or (row is not None and row.job_id is not None),
        "stock": list(stock_rows(ways.stock, ways.practice.screw_diameter, place.unit)),
        "kinds": [_kind(page, row, usual, place.unit) for page in ITEM_PAGES.values()],
    }
    return render_page(request, PAGE, context)


def _kind(page: ItemPage, row: HardwareList | None, usual: Hardware, unit: Unit) -> KindList:
    rows = [] if row is None else list(page.rows(row))
    items, plain = [bare(each) for each in rows], getattr(usual, page.path)
    drawn = next(iter(items or plain), None)
    return KindList(
        page,
        item_rows(items, unit, [each.pk for each in rows]),
        [] if items else item_rows(plain, unit),
        page.drawing(drawn, unit),
    )


def usual_begin(request: SignedInRequest, place: Place, kind: ItemPage) -> HttpResponse:
    """Begin a kind from the plain items that hold while the list has none of it."""
    place.may_change()
    if getattr(hardware_in_force(place.owner), kind.path):
        messages.error(request, f"There are {kind.declared.says} on the list already.")
        return place.back(kind.path)
    items = getattr(usual_hardware(ways_of(place.owner)), kind.path)
    items_set(owner=place.owner, kind=kind.kind, items=items, **who(request))
    messages.success(request, f"{kind.heading}: {len(items)} are entered to begin from.")
    return place.back(kind.path)


def list_own(request: SignedInRequest, place: Place) -> HttpResponse:
    """Give a job a list of its own, which begins as the shop's."""
    if place.row is None:
        hardware_own(job=_job(place), **who(request))
        messages.success(request, "This job has a list of its own now. It began as the shop's.")
    return place.back("main")


def list_clear(request: SignedInRequest, place: Place) -> HttpResponse:
    """Let the shop's list hold for a job again."""
    hardware_clear(job=_job(place), **who(request))
    messages.success(request, "The shop's hardware holds for this job again.")
    return place.back("main")


def _job(place: Place) -> Job:
    if place.job is None:
        raise Http404
    return place.job
