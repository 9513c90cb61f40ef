"""What is learned: shown, and nothing is changed."""

from typing import cast

from django.http import HttpResponse
from django.views.decorators.http import require_http_methods

from fronts.figures.learned import learned_shown
from fronts.rules.kinds import Unit
from fronts.rules.learned import ENOUGH, what_is_learned
from fronts.selectors.learned import LATEST_JOBS, fitted_fronts
from fronts.snapshot import ways_of
from shopjobs.access import SignedInRequest, needs
from shopjobs.pages import render_page

PAGE = "fronts/learned/page.html"


@needs("standard")
@require_http_methods(["GET", "HEAD"])
def shop_learned(request: SignedInRequest) -> HttpResponse:
    """Show what the records of fit say of the shop's numbers."""
    shop = request.shop
    learned = what_is_learned(fitted_fronts(shop))
    unit = cast(Unit, str(shop.unit))
    context = {
        "shop": shop,
        "learned": learned_shown(learned, ways_of(shop).practice, unit),
        "enough": ENOUGH,
        "latest_jobs": LATEST_JOBS,
    }
    return render_page(request, PAGE, context)
