"""The shop's clients: found, reached, changed, made one, let go."""

from functools import partial

from django.contrib import messages
from django.core.exceptions import PermissionDenied
from django.http import Http404, HttpResponse
from django.utils import timezone
from django.views.decorators.http import require_GET, require_http_methods, require_POST

from shopjobs.access import SignedInRequest, in_turn, may, needs, signed_in
from shopjobs.client_list import client_page, clients_of, jobs_for, names_offered, sites_of
from shopjobs.edit_conflict import last_writer
from shopjobs.forms.clients import ClientForm, ClientSearchForm, MergeForm
from shopjobs.forms.house import unsaved
from shopjobs.models import Client
from shopjobs.pages import go_to, render_page
from shopjobs.services.clients import client_change, client_delete, clients_merge, site_delete
from shopjobs.services.refused import Refused

ONE = "shopjobs/client_page.html"


def _client_or_404(request: SignedInRequest, client_id: int) -> Client:
    client = clients_of(request.user).filter(pk=client_id).select_related("shop").first()
    if client is None:
        raise Http404
    return client


@signed_in
@require_GET
def client_list(request: SignedInRequest) -> HttpResponse:
    """Show the shop's clients; to an installer those with work to do."""
    form = ClientSearchForm(request.GET)
    words = form.cleaned_data["q"] if form.is_valid() else ""
    page = client_page(request.user, words, request.GET.get("page", ""))
    pages = page.paginator.get_elided_page_range(page.number, on_each_side=2, on_ends=1)
    shown = {"asking": form, "page": page, "pages": pages, "words": words}
    status = 200 if form.is_valid() else 422
    return render_page(request, "shopjobs/client_list.html", shown, partial="listed", status=status)


@signed_in
@require_http_methods(["GET", "POST"])
@in_turn
def one_client(request: SignedInRequest, client_id: int) -> HttpResponse:
    """Show a client with sites and jobs; change what is known of them."""
    client = _client_or_404(request, client_id)
    form = ClientForm(request.POST if request.method == "POST" else None, client=client)
    form.written_by = partial(last_writer, request.shop, [client])
    if form.is_bound and _changed(request, form, client):
        messages.success(request, f"Client {form.cleaned_data['name']} is saved.")
        return go_to(request, "shopjobs:client-page", client.pk)
    return _shown(request, client, form, MergeForm())


@needs("people")
@require_POST
@in_turn
def client_merge(request: SignedInRequest, client_id: int) -> HttpResponse:
    """Make a client one with another, whose name is typed."""
    client, form = _client_or_404(request, client_id), MergeForm(request.POST)
    if form.is_valid():
        name = form.cleaned_data["into"]
        into = clients_of(request.user).filter(name=name).select_related("shop").first()
        try:
            if into is None:
                raise Refused(f"There is no client {name}.", field="into")
            clients_merge(client=client, into=into, by=request.user, at=timezone.now())
        except Refused as refused:
            form.refuse(refused)
        else:
            messages.success(request, f"{client.name} is one with {into.name} now.")
            return go_to(request, "shopjobs:client-page", into.pk)
    return _shown(request, client, ClientForm(client=client), form)


@needs("jobs")
@require_POST
@in_turn
def client_delete_now(request: SignedInRequest, client_id: int) -> HttpResponse:
    """Let go of a client for whom there is no job."""
    client = _client_or_404(request, client_id)
    try:
        client_delete(client=client, by=request.user, at=timezone.now())
    except Refused as refused:
        messages.error(request, refused.message)
        return go_to(request, "shopjobs:client-page", client_id)
    messages.success(request, f"Client {client.name} is deleted.")
    return go_to(request, "shopjobs:client-list")


@needs("jobs")
@require_POST
@in_turn
def site_delete_now(request: SignedInRequest, client_id: int, site_id: int) -> HttpResponse:
    """Let go of a client's site at which there is no job."""
    client = _client_or_404(request, client_id)
    site = client.sites.filter(pk=site_id).select_related("shop").first()
    if site is None:
        raise Http404
    try:
        site_delete(site=site, by=request.user, at=timezone.now())
    except Refused as refused:
        messages.error(request, refused.message)
    else:
        messages.success(request, f"Site {site.address} is deleted.")
    return go_to(request, "shopjobs:client-page", client_id)


def _changed(request: SignedInRequest, form: ClientForm, client: Client) -> bool:
    if not may(request.user, "jobs"):
        raise PermissionDenied
    if not form.is_valid():
        return False
    try:
        fresh = _client_or_404(request, client.pk)
        client_change(client=fresh, by=request.user, at=timezone.now(), **form.cleaned_data)
    except Refused as refused:
        form.refuse(refused)
        return False
    return True


def _shown(
    request: SignedInRequest, client: Client, form: ClientForm, merge: MergeForm
) -> HttpResponse:
    shown = {
        "client": client,
        "form": form,
        "merge": merge,
        "sites": sites_of(client),
        "jobs": jobs_for(client)[:100],
        "clients": names_offered(request.shop.pk) if may(request.user, "people") else [],
    }
    part, asked = ("merge-form", merge) if merge.is_bound else ("client-form", form)
    return render_page(request, ONE, shown, partial=part, status=unsaved(asked))
