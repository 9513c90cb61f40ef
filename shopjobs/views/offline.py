"""What a phone without a signal needs of the site: its worker, and the leave to send what waits."""

from django.conf import settings
from django.contrib.auth.decorators import login_not_required
from django.http import HttpRequest, HttpResponse, JsonResponse
from django.middleware.csrf import get_token
from django.views.decorators.cache import never_cache
from django.views.decorators.http import require_safe

from shopjobs.access import SignedInRequest, signed_in

WORKER = settings.BASE_DIR / "static" / "js" / "sw.js"


@login_not_required
@never_cache
@require_safe
def worker(_: HttpRequest) -> HttpResponse:
    """The worker that answers with pages that were taken along; it holds for the whole site."""
    return HttpResponse(WORKER.read_bytes(), content_type="text/javascript")


@require_safe
@signed_in
def may_send(request: SignedInRequest) -> HttpResponse:
    """Who is signed in, and the token with which what waits on the phone may be sent."""
    person = f"{request.shop.pk}.{request.user.pk}"
    return JsonResponse({"person": person, "token": get_token(request)})
