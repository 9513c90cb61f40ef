"""Who may do what, in one place, and how a view asks for it."""

from collections.abc import Callable, Mapping
from functools import wraps
from types import MappingProxyType
from typing import Concatenate, Literal, ParamSpec, cast

from django.core.exceptions import PermissionDenied
from django.db import transaction
from django.http import HttpRequest
from django.http.response import HttpResponseBase
from django.utils.cache import add_never_cache_headers
from django_htmx.middleware import HtmxDetails

from shopjobs.models import Person, Role, Shop
from shopjobs.services.locks import shop_lock

Capability = Literal[
    "jobs", "edit_kitchen", "measure", "fit", "order", "prices", "budget", "people", "standard"
]

_OWNER = frozenset({Role.OWNER})
_DESK = frozenset({Role.OWNER, Role.OFFICE})
_ALL = frozenset({Role.OWNER, Role.OFFICE, Role.INSTALLER})

CAN: Mapping[Capability, frozenset[Role]] = MappingProxyType(
    {
        "jobs": _DESK,  # make, change and delete jobs
        "edit_kitchen": _DESK,  # cabinets, openings, boxes, doors on hand
        "measure": _ALL,  # sizes found on site
        "fit": _ALL,  # what was fitted, and how it came out
        "order": _DESK,  # go through and check the hardware order
        "prices": _DESK,  # suppliers, and what they ask
        "budget": _OWNER,  # what a job may cost
        "people": _OWNER,  # who belongs to the shop, and which clients are one
        "standard": _OWNER,  # the shop's own habits
    }
)
"""Each capability and the roles that have it. Everyone of the shop may read."""


class SignedInRequest(HttpRequest):
    """A request of a person who is signed in and belongs to `shop`."""

    user: Person
    shop: Shop
    htmx: HtmxDetails


P = ParamSpec("P")
View = Callable[Concatenate[SignedInRequest, P], HttpResponseBase]
AnyView = Callable[Concatenate[HttpRequest, P], HttpResponseBase]


def may(person: Person, capability: Capability) -> bool:
    """Return whether the person's role has the capability."""
    return person.role in CAN[capability]


def abilities(request: HttpRequest) -> dict[str, object]:
    """Give templates `may.<capability>`, so that they offer only what will be allowed."""
    person = getattr(request, "user", None)
    if not isinstance(person, Person):
        return {"may": {}}
    return {"may": {capability: may(person, capability) for capability in CAN}}


def signed_in(view: View[P]) -> AnyView[P]:
    """Hand the view its person and shop; keep what it answers out of every cache."""

    @wraps(view)
    def guarded(request: HttpRequest, /, *args: P.args, **kwargs: P.kwargs) -> HttpResponseBase:
        mine = cast(SignedInRequest, request)
        if mine.user.shop is None:
            raise PermissionDenied("You don't belong to a shop.")
        mine.shop = mine.user.shop
        response = view(mine, *args, **kwargs)
        if not response.has_header("Cache-Control"):
            add_never_cache_headers(response)
        return response

    return guarded


def needs(capability: Capability) -> Callable[[View[P]], AnyView[P]]:
    """Let only those roles in that have the capability; others get the 403 page."""

    def guard(view: View[P]) -> AnyView[P]:
        @wraps(view)
        def checked(
            request: SignedInRequest, /, *args: P.args, **kwargs: P.kwargs
        ) -> HttpResponseBase:
            if not may(request.user, capability):
                raise PermissionDenied
            return view(request, *args, **kwargs)

        return signed_in(checked)

    return guard


def in_turn(view: View[P]) -> View[P]:
    """While one request changes what is the shop's, others of the shop that would wait.

    What the view reads then is what nobody else changes until it has answered.
    """

    @wraps(view)
    def locked(request: SignedInRequest, /, *args: P.args, **kwargs: P.kwargs) -> HttpResponseBase:
        if request.method != "POST":
            return view(request, *args, **kwargs)
        with transaction.atomic():
            request.shop = shop_lock(request.shop.pk)
            return view(request, *args, **kwargs)

    return locked
