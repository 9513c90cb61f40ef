"""A page's styles as one file."""

import re

from django.contrib.auth.decorators import login_not_required
from django.http import Http404, HttpRequest, HttpResponse
from django.utils.cache import patch_cache_control, patch_vary_headers
from django.views.decorators.http import require_safe
from whitenoise.base import WhiteNoise

from shopjobs import page_styles

_BROTLI = re.compile(r"\bbr\b")


@login_not_required
@require_safe
def styles(request: HttpRequest, names: str, mark: str) -> HttpResponse:
    """The files of these names; kept for good, since another content has another address.

    As other files that are kept they are brotli for whoever takes it, and that is made once.
    """
    wanted = tuple(names.split("-"))
    if len(set(wanted)) < len(wanted):  # A stranger can have nothing made larger than all of them.
        raise Http404(names)
    try:
        joined = page_styles.joined(wanted)
    except FileNotFoundError as missing:
        raise Http404(names) from missing
    takes_brotli = _BROTLI.search(request.headers.get("Accept-Encoding", ""))
    answer = HttpResponse(
        joined.packed if takes_brotli else joined.content, content_type="text/css"
    )
    if takes_brotli:
        answer.headers["Content-Encoding"] = "br"
    patch_vary_headers(answer, ["Accept-Encoding"])
    if mark == joined.mark:
        patch_cache_control(answer, public=True, max_age=WhiteNoise.FOREVER, immutable=True)
    else:  # A page from before the site was changed gets what there is now.
        patch_cache_control(answer, no_cache=True)
    return answer
