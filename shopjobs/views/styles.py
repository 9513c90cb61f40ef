"""A page's styles as one file."""

from django.contrib.auth.decorators import login_not_required
from django.http import Http404, HttpRequest, HttpResponse
from django.utils.cache import patch_cache_control
from django.views.decorators.http import require_safe

from shopjobs import page_styles

A_YEAR = 365 * 24 * 3600


@login_not_required
@require_safe
def styles(_: HttpRequest, names: str, mark: str) -> HttpResponse:
    """The files of these names; kept for good, since another content has another address."""
    wanted = tuple(names.split("-"))
    if len(set(wanted)) < len(wanted):  # A stranger can have nothing made larger than all of them.
        raise Http404(names)
    try:
        joined = page_styles.joined(wanted)
    except FileNotFoundError as missing:
        raise Http404(names) from missing
    answer = HttpResponse(joined.content, content_type="text/css")
    if mark == joined.mark:
        patch_cache_control(answer, public=True, max_age=A_YEAR, immutable=True)
    else:  # A page from before the site was changed gets what there is now.
        patch_cache_control(answer, no_cache=True)
    return answer
