"""The order on its page: checked several at once, approved, changed, sent, received."""

from collections.abc import Callable
from typing import Any

from django.test import Client

from fronts.models import (
    Opening,
    OrderApproval,
    OrderArrival,
    OrderCheck,
    OrderSending,
    SentLine,
    Supplier,
)
from fronts.rules.buying_names import group_of
from fronts.rules.practice import inches
from fronts.selectors.approved_items import buying_names_of
from fronts.selectors.order_progress import order_progress
from shopjobs.models import Job, Person, Shop
from tests.dom import Part, dom
from tests.factories import (
    HINGES,
    NOW,
    OpeningFactory,
)
from tests.ordering import approved, facts_of, line_checked, sent_to
from tests.pages.shared.sending import as_sent
from tests.saying import standard_set
from tests.stocked import counted, moved

SignIn = Callable[[Person], Client]
HTMX = {"HX-Request": "true"}


def page_of(client: Client, job: Job) -> Part:
    """The order page of the job."""
    return dom(client.get(f"/jobs/{job.pk}/order/"))


def sends(client: Client, form: Part, **typed: Any) -> Any:
    """Send a form of the page, as it is but for what is typed."""
    return client.post(form.attribute("action"), as_sent(form, **typed))


def ticks(form: Part) -> list[str]:
    """What the tick boxes of a form send, all of them ticked."""
    return [box.value for box in form.all('input[name="line"]')]


def test_all_lines_of_a_kind_are_checked_at_once(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """Or all of the list; each as it was shown, and a note that is there stays."""
    desk = signed_in(office)
    line_checked(kitchen_job, "hinge screw", office, note="from the shelf")
    OrderCheck.objects.update(open=True)
    shown = page_of(desk, kitchen_job)
    (kind,) = [form for form in shown.all("form[id^=group-]") if "Screws" in form.words]
    assert sends(desk, kind, line=ticks(kind)).status_code == 302
    screws = {item for item in facts_of(kitchen_job) if group_of(item) == "Screws"}
    assert {check.item for check in OrderCheck.objects.all()} == screws
    assert len(screws) > 1
    assert OrderCheck.objects.get(item="hinge screw").note == "from the shelf"

    rest = page_of(desk, kitchen_job).one("#all-open-form")
    sends(desk, rest, line=ticks(rest))

    page = page_of(desk, kitchen_job)
    assert "to approve" in page.one(".waits").words
    assert OrderCheck.objects.count() == len(facts_of(kitchen_job))


def test_no_line_is_checked_that_changed_meanwhile(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """Nor any of those beside it; the person looks again."""
    desk = signed_in(office)
    form = page_of(desk, kitchen_job).one("#all-open-form")
    OpeningFactory.create(cabinet__job=kitchen_job, cabinet__label="B2", cabinet__x=600)

    answer = sends(desk, form, line=ticks(form))

    assert answer.status_code == 422
    assert f"{HINGES} is for other fronts" in dom(answer).one(".summary").words
    assert not OrderCheck.objects.exists()


def test_the_focus_goes_on_to_the_next_open_line(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """After the last one to the button that approves."""
    desk = signed_in(office)
    address = f"/jobs/{kitchen_job.pk}/order/"
    for _ in facts_of(kitchen_job):
        form = next(
            each
            for each in page_of(desk, kitchen_job).all(".mark form")
            if each.has('[value="check"]')
        )
        answer = dom(desk.post(address, as_sent(form, mark="check"), headers=HTMX))
        (focused,) = answer.all("[autofocus]")
        assert focused.value in ("check", "approve")

    assert focused.value == "approve"


def test_a_note_is_kept_when_a_check_is_taken_back(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """And may be written without a check."""
    desk = signed_in(office)

    def form_of(item: str) -> Part:
        forms = page_of(desk, kitchen_job).all(".mark form")
        return next(form for form in forms if form.field("item").value == item)

    sends(desk, form_of(HINGES), mark="note", note="brass ones")
    assert "not checked; noted by otto" in page_of(desk, kitchen_job).words
    sends(desk, form_of(HINGES), mark="check")
    assert "2 checked by otto" in page_of(desk, kitchen_job).words
    sends(desk, form_of(HINGES), mark="uncheck")

    assert form_of(HINGES).field("note").value == "brass ones"
    assert "0 of" in page_of(desk, kitchen_job).one(".stages").words


def test_the_shops_suppliers_are_offered_beside_names_typed_before(
    kitchen_job: Job, office: Person, stranger: Person, signed_in: SignIn
) -> None:
    """Each once, however it was written; another shop's are not."""
    approved(kitchen_job, office)
    assert stranger.shop
    for shop, name in ((kitchen_job.shop, "Northfield"), (stranger.shop, "Southgate")):
        Supplier.objects.create(shop=shop, name=name)
    for name in ("northfield", "Corner store"):
        OrderSending.objects.create(
            job=kitchen_job, supplier=name, sent_on=NOW.date(), sent_by=office, sent_at=NOW
        )

    offered = page_of(signed_in(office), kitchen_job).all("datalist#suppliers option")

    assert [each.attribute("value") for each in offered] == ["Corner store", "Northfield"]


def test_the_whole_way_of_an_order(kitchen_job: Job, office: Person, signed_in: SignIn) -> None:
    """Approved, sent with its reference, come short by one, and then all there."""
    desk = signed_in(office)
    approved(kitchen_job, office)
    OrderApproval.objects.all().delete()
    sends(desk, page_of(desk, kitchen_job).one("#approve-form"), what="approve")
    send = page_of(desk, kitchen_job).one("#send-form")
    goes = {box.attribute("name"): "on" for box in send.all('input[type="checkbox"]')}
    sends(desk, send, supplier="Northfield", reference="R-7", **goes)

    page = page_of(desk, kitchen_job)
    assert "R-7, sent" in page.one(".sending").words
    assert "items from Northfield" in page.one(".waits").words
    form = page.one(".sending > form")
    first = form.all('input[name^="came-"]')[0].attribute("name")
    sends(desk, form, what="these", **{first: "2"})

    page = page_of(desk, kitchen_job)
    assert "1 item from Northfield" in page.one(".waits").words
    assert page.one(".is-short").words.endswith("1 still to come Came of hinge H-LAP, overlay")
    sends(desk, page.one(".sending > form"), what="all")

    page = page_of(desk, kitchen_job)
    assert page.one(".waits").words == "Received. Everything came: nothing is left to do."
    assert "all there" in page.one(".stages").words
    assert SentLine.objects.count() == len(facts_of(kitchen_job))


def test_changes_since_are_decided_on_the_page(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """In words, with what was approved; those that are ticked alone."""
    desk = signed_in(office)
    approved(kitchen_job, office)
    OpeningFactory.create(cabinet__job=kitchen_job, cabinet__label="B2", cabinet__x=600)
    form = page_of(desk, kitchen_job).one("#changes-form")
    assert f"{HINGES} order 2 more for B2.a" in form.words

    answer = sends(desk, form, kind="dismissed", line=ticks(form)[:1])
    assert (answer.status_code, "Say why" in dom(answer).words) == (422, True)
    sends(desk, form, kind="addition", line=ticks(form)[:1])

    page = page_of(desk, kitchen_job)
    assert HINGES not in page.one("#changes-form").words
    assert "5 approved" in page.words


def test_what_is_to_order_is_told_where_an_earlier_change_was_left(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """The change is from the last decision, the order from what was approved."""
    desk = signed_in(office)
    approved(kitchen_job, office)
    OpeningFactory.create(cabinet__job=kitchen_job, cabinet__label="B2", cabinet__x=600)
    form = page_of(desk, kitchen_job).one("#changes-form")
    assert f"{HINGES} order 2 more for B2.a 3 approved so far " in form.words
    sends(desk, form, kind="dismissed", note="on the shelf", line=ticks(form))
    OpeningFactory.create(cabinet__job=kitchen_job, cabinet__label="B3", cabinet__x=1200)

    form = page_of(desk, kitchen_job).one("#changes-form")
    told = f"{HINGES} order 2 more for B3.a 3 approved so far, 4 to order"
    assert told in form.words
    sends(desk, form, kind="addition", line=ticks(form))

    assert order_progress(kitchen_job).items[HINGES].to_send == 7


def test_more_than_was_ordered_is_asked_about(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """With what was typed still there; said again, it is kept."""
    desk = signed_in(office)
    approved(kitchen_job, office)
    sent_to(kitchen_job, "Ash", office)
    form = page_of(desk, kitchen_job).one(".sending > form")
    first = form.all('input[name^="came-"]')[0].attribute("name")

    asked = sends(desk, form, what="these", **{first: "9"})
    assert (asked.status_code, OrderArrival.objects.count()) == (422, 0)
    again = dom(asked).one(".sending > form")
    assert "9 of 3" in again.one(".question").words
    assert again.field(first).value == "9"
    assert sends(desk, again, confirmed="on").status_code == 302
    assert OrderArrival.objects.filter(amount=9).exists()


def test_nothing_is_left_never_stands_under_a_stop(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """A kitchen that stops after all came still waits for that."""
    desk = signed_in(office)
    approved(kitchen_job, office)
    sent_to(kitchen_job, "Ash", office)
    sends(desk, page_of(desk, kitchen_job).one(".sending > form"), what="all")
    assert "nothing is left" in page_of(desk, kitchen_job).words
    opening = door_opening(kitchen_job)
    opening.measured_diagonal_1, opening.measured_diagonal_2 = inches(32), inches(31)
    opening.save()
    standard_set(owner=kitchen_job, at=NOW, mount="inset", least_gap=inches(1, 2))

    page = page_of(desk, kitchen_job)

    assert page.has(".stops")
    assert "nothing is left" not in page.words


def door_opening(job: Job) -> Opening:
    """The opening that the door closes."""
    return Opening.objects.get(cabinet__job=job, label="a")


def test_what_is_laid_by_from_stock_is_not_sent_for(
    kitchen_job: Job, shop: Shop, office: Person, signed_in: SignIn
) -> None:
    """Each line says so, and what is left to send; the file has the same number."""
    desk = signed_in(office)
    approved(kitchen_job, office)
    need = facts_of(kitchen_job)["bumper"].amount
    before = page_of(desk, kitchen_job).one("#send-form")
    moved(counted(shop, office, 50), kitchen_job, office, need - 1)
    assert sends(desk, before, supplier="Ash").status_code == 409

    page = page_of(desk, kitchen_job)

    line = next(row for row in page.all("table.order tr") if "bumper" in row.words)
    assert f"{need} approved" in line.words
    assert f"{need - 1} laid by from stock" in line.words
    form = page.one("#send-form")
    item = next(each for each in form.all(".amounts li") if "bumper" in each.words)
    assert item.one(".so-many input").value == "1"
    rows = desk.get(f"/jobs/{kitchen_job.pk}/order.csv").text.splitlines()
    assert next(row for row in rows if row.startswith("bumper")).endswith(f"{need},0,0,{need - 1}")


def test_an_order_that_stock_covers_is_through(
    kitchen_job: Job, shop: Shop, office: Person, signed_in: SignIn
) -> None:
    """Nothing is left to send, and nothing to come."""
    approved(kitchen_job, office)
    for item in order_progress(kitchen_job).items.values():
        name = buying_names_of(kitchen_job)[item.item]
        goods = counted(shop, office, item.ordered, name)
        moved(goods, kitchen_job, office, item.ordered)

    page = page_of(signed_in(office), kitchen_job)

    assert "Everything is there" in page.one(".waits").words
    assert "nothing to send" in page.one(".stages").words
    assert not page.has("#send-form")
