"""Where one is signed in. Everyone sees and ends their own sessions alone."""

from django.contrib import messages
from django.http import Http404, HttpResponse
from django.utils import timezone
from django.views.decorators.http import require_GET, require_POST

from shopjobs.access import SignedInRequest, signed_in
from shopjobs.pages import go_to, render_page
from shopjobs.selectors import sessions_of
from shopjobs.services.sessions import session_end, sessions_end


@signed_in
@require_GET
def session_list(request: SignedInRequest) -> HttpResponse:
    """Show one's sessions, this one among them."""
    context = {
        "sessions": sessions_of(request.user, timezone.now()),
        "here": request.session.session_key,
    }
    return render_page(request, "shopjobs/session_list.html", context)


@signed_in
@require_POST
def own_session_end(request: SignedInRequest, handle: str) -> HttpResponse:
    """End one of one's own sessions; anybody else's does not exist."""
    mine = {session.handle: session for session in sessions_of(request.user, timezone.now())}
    if handle not in mine:
        raise Http404
    session_end(session=mine[handle])
    messages.success(request, f"Signed out: {mine[handle].browser or 'a browser'}.")
    return go_to(request, "shopjobs:session-list")


@signed_in
@require_POST
def other_sessions_end(request: SignedInRequest) -> HttpResponse:
    """End all of one's sessions but this one."""
    sessions_end(person=request.user, but=request.session.session_key)
    messages.success(request, "You are signed in nowhere but here.")
    return go_to(request, "shopjobs:session-list")
