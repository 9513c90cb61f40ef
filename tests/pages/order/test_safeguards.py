"""The order's safeguards: what another did unseen, who may what, what makes no sense."""

from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client

from fronts.models import (
    OrderApproval,
    OrderArrival,
    OrderSending,
)
from fronts.services.openings import opening_delete
from shopjobs.models import Job, Person
from tests.dom import Part, dom
from tests.factories import (
    HINGES,
    NOW,
    JobFactory,
    door_and_drawer,
    overlaid,
)
from tests.ordering import approved, line_checked, sent_of, sent_to
from tests.pages.order.test_progress import door_opening, page_of, sends
from tests.pages.shared.sending import as_sent

SignIn = Callable[[Person], Client]


@pytest.mark.parametrize("what", ["approve", "changes", "send", "receive", "change", "back"])
def test_who_did_not_see_what_another_did_is_told(
    what: str, kitchen_job: Job, owner: Person, office: Person, signed_in: SignIn
) -> None:
    """What was typed stays, and nothing is done."""
    desk, form = signed_in(office), _stale(what, kitchen_job, owner, signed_in(office))
    before = _counted()

    answer = sends(desk, form, **_TYPED[what])

    assert answer.status_code == 409
    told = dom(answer).one(".summary").words
    assert "The order has changed since you looked (Ada," in told
    assert _counted() == before
    typed = [value for name, value in _TYPED[what].items() if name in ("note", "supplier")]
    assert set(typed) <= set(dom(answer).values)


_TYPED: dict[str, dict[str, str]] = {
    "approve": {"what": "approve"},
    "changes": {"kind": "dismissed", "note": "we have them"},
    "send": {"supplier": "Elm Hardware"},
    "receive": {"what": "these", "note": "by van"},
    "change": {"supplier": "Elm Hardware"},
    "back": {},
}
_FORMS = {
    "approve": "#approve-form", "changes": "#changes-form", "send": "#send-form",
    "receive": ".sending > form", "change": ".sending details form",
    "back": "[id$='-back']",
}  # fmt: skip


def _stale(what: str, job: Job, owner: Person, desk: Client) -> Part:
    """A form that the office looks at, and after which the owner did the next thing."""
    approved(job, owner)
    if what == "approve":
        OrderApproval.objects.all().delete()
        form = page_of(desk, job).one(_FORMS[what])
        line_checked(job, HINGES, owner, note="two for the other job", at=NOW.replace(hour=12))
        return form
    if what in ("receive", "change", "back"):
        sent_to(job, "Ash", owner)
    if what == "changes":
        opening_delete(opening=door_opening(job), at=NOW)
    form = page_of(desk, job).all(_FORMS[what])[0]
    if what in ("receive", "change", "back"):
        receive = page_of(desk, job).one(".sending > form")
        asked = as_sent(receive, what="all")
        ada = Client()
        ada.force_login(owner)
        assert ada.post(receive.attribute("action"), asked).status_code == 302
    else:
        sent_to(job, "Ash", owner)
    return form


def _counted() -> list[int]:
    tables = (OrderApproval, OrderSending, OrderArrival)
    return [table._default_manager.count() for table in tables]


def test_the_installer_reads_what_came_without_a_button(
    kitchen_job: Job, office: Person, installer: Person, signed_in: SignIn
) -> None:
    """And is refused where the addresses are tried."""
    approved(kitchen_job, office)
    sent_to(kitchen_job, "Ash", office)
    van = signed_in(installer)

    page = page_of(van, kitchen_job)

    assert "sent 1 Mar 2027 by otto" in page.one(".sending").words
    assert not page.has("main button")
    assert not page.has("main input:not([type=hidden])")
    here, key = f"/jobs/{kitchen_job.pk}/order/", sent_of(kitchen_job)[0].row.pk
    for path in ("check/", "approve/", "changes/", "sent/", f"sent/{key}/", f"sent/{key}/came/"):
        assert van.post(here + path).status_code == 403


def test_another_shop_finds_nothing_of_it(
    kitchen_job: Job, office: Person, stranger: Person, signed_in: SignIn
) -> None:
    """Neither the order, nor the names of its suppliers."""
    approved(kitchen_job, office)
    sent_to(kitchen_job, "Ash & Sons", office)
    there, key = signed_in(stranger), sent_of(kitchen_job)[0].row.pk
    theirs = JobFactory.create(shop=stranger.shop, number="S-1")
    overlaid(theirs)
    door_and_drawer(theirs)
    approved(theirs, stranger)

    assert there.post(f"/jobs/{kitchen_job.pk}/order/sent/{key}/came/").status_code == 404
    assert there.post(f"/jobs/{theirs.pk}/order/sent/{key}/came/").status_code == 404
    page = page_of(there, theirs)
    assert page.has("#send-form")
    assert not page.has("datalist")
    assert "Ash" not in page.words


@pytest.mark.parametrize(
    ("path", "typed"),
    [
        ("check/", {"line": "\x00"}), ("check/", {"line": ["x gold leaf", "y"]}), ("check/", {}),
        ("approve/", {"what": "burn"}), ("approve/", {}),
        ("changes/", {"kind": "burn", "line": "a b"}), ("changes/", {"kind": "accepted"}),
        ("sent/", {"supplier": "a\x00b", "sent_on": "soon"}),
        ("sent/", {"supplier": "x" * 999, "sent_on": "9999-99-99", "seen": "\x00"}),
        ("sent/{key}/", {"supplier": "", "sent_on": "0001-01-01"}),
        ("sent/{key}/came/", {"came_on": "2027-03-12", "came-{line}": "9" * 400, "what": "these"}),
        ("sent/{key}/came/", {"came_on": "2027-03-12", "came-{line}": "-1", "what": "\x00"}),
        ("sent/{key}/came/", {"came-{line}": "two"}),
    ],
)  # fmt: skip
def test_what_makes_no_sense_is_refused(
    path: str, typed: dict[str, Any], kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """In words, at the page, and nothing is kept."""
    approved(kitchen_job, office)
    sent_to(kitchen_job, "Ash", office)
    sent, before = sent_of(kitchen_job)[0], _counted()
    said = {name.format(line=sent.lines[0].row.pk): value for name, value in typed.items()}
    here = f"/jobs/{kitchen_job.pk}/order/" + path.format(key=sent.row.pk)

    answer = signed_in(office).post(here, {"seen": "", **said})

    assert answer.status_code in (409, 422)
    assert "There is a problem" in dom(answer).words
    assert _counted() == before
