"""The diary: all jobs of a shop, week by week."""

from django.core.paginator import Paginator
from django.http import Http404, HttpResponse
from django.utils import timezone
from django.views.decorators.http import require_GET

from fronts.pages.dates.rows.diary import (
    Week,
    diary_days,
    late_jobs,
    week_named,
    week_of,
)
from fronts.selectors.dates import marks_of_shop, plan_of
from shopjobs.access import SignedInRequest, may, signed_in
from shopjobs.pages import render_page

LATE_AT_ONCE = 12
"""Late jobs on a page; with more, the diary itself would be out of sight."""


@signed_in
@require_GET
def diary(request: SignedInRequest) -> HttpResponse:
    """Show a week of the shop, this one where none is named."""
    today = timezone.localdate()
    named = request.GET.get("week", "")
    week = week_named(named) if named else week_of(today)
    if week is None:
        raise Http404
    return render_page(request, "fronts/dates/diary.html", _week(request, week))


def _week(request: SignedInRequest, week: Week) -> dict[str, object]:
    today = timezone.localdate()
    known = plan_of(request.shop, today, sellers=may(request.user, "prices"))
    done = marks_of_shop(request.shop, week.monday, week.last_shown)
    late = Paginator(late_jobs(known), LATE_AT_ONCE).get_page(request.GET.get("late"))
    return {
        "week": week,
        "before": week.moved(-1),
        "after": week.moved(1),
        "is_now": week == week_of(today),
        "days": diary_days(week, known, done),
        "late": late,
        "today": today,
    }
