"""The diary as a calendar to subscribe to, at an address of each person's own."""

import hashlib

from django.contrib.auth.decorators import login_not_required
from django.http import Http404, HttpRequest, HttpResponse
from django.http.response import HttpResponseBase
from django.urls import reverse
from django.utils import timezone
from django.utils.cache import get_conditional_response
from django.views.decorators.http import require_GET, require_POST, require_safe

from fronts.pages.dates.rows.calendar_file import BACK, calendar_file, events_of
from fronts.pages.shared.file_answers import asked_about_again, inline
from fronts.selectors.calendar_feeds import feed_of, last_changed, reader_of
from fronts.selectors.dates import marks_of_shop, plan_of
from fronts.services.calendar_feeds import feed_make, feed_withdraw
from shopjobs.access import SignedInRequest, signed_in
from shopjobs.models import Shop
from shopjobs.pages import go_to, render_page, site_address

PAGE = "fronts/dates/feed.html"
LONGEST_TOKEN = 100


@login_not_required
@require_safe
def feed(request: HttpRequest, token: str) -> HttpResponseBase:
    """The calendar of whoever has this address; where it was withdrawn, there is none."""
    person = reader_of(token) if len(token) <= LONGEST_TOKEN else None
    if person is None or person.shop is None:
        raise Http404
    tag = _tag(person.shop)
    file: HttpResponse = get_conditional_response(request, etag=tag) or _file(person.shop)
    file.headers["Referrer-Policy"] = "no-referrer"
    file.headers["X-Robots-Tag"] = "noindex"
    return asked_about_again(file, tag)


def _tag(shop: Shop) -> str:
    """Changes with anything of the shop, and with the day: planned days begin today."""
    said = f"{shop.pk} {shop.name} {last_changed(shop).isoformat()} {timezone.localdate()}"
    return f'"{hashlib.sha256(said.encode()).hexdigest()[:32]}"'


def _file(shop: Shop) -> HttpResponse:
    today = timezone.localdate()
    known = plan_of(shop, today)
    done = marks_of_shop(shop, today - BACK, today)
    content = calendar_file(shop, events_of(known, done), last_changed(shop))
    return inline(content, "text/calendar; charset=utf-8", "jobs.ics")


@signed_in
@require_GET
def own_feed(request: SignedInRequest) -> HttpResponse:
    """Show whether one has such an address."""
    return render_page(request, PAGE, {"feed": feed_of(request.user)})


@signed_in
@require_POST
def own_feed_make(request: SignedInRequest) -> HttpResponse:
    """Make an address, in the place of one there was; it is shown this once."""
    token = feed_make(person=request.user, at=timezone.now())
    address = site_address(request).rstrip("/") + reverse("fronts:feed", args=[token])
    return render_page(request, PAGE, {"feed": feed_of(request.user), "address": address})


@signed_in
@require_POST
def own_feed_withdraw(request: SignedInRequest) -> HttpResponse:
    """End one's address."""
    feed_withdraw(person=request.user)
    return go_to(request, "fronts:own-feed")
