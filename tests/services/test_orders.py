"""The order's life: approved, changed, sent, received; exact, and never past what was approved."""

from collections.abc import Callable
from fractions import Fraction

import pytest
from django.core.exceptions import ValidationError

from fronts.models import ApprovedLine, Opening, OrderApproval, OrderArrival, OrderSending
from fronts.models.order_approvals import ACCEPTED, ADDITION, DISMISSED
from fronts.pages.order.rows.progress import item_words
from fronts.selectors.approved_items import ItemOrdered
from fronts.selectors.needed import wanted_by
from fronts.selectors.order_progress import order_progress
from fronts.selectors.order_states import what_it_waits_for
from fronts.selectors.schedules import schedule_of
from fronts.services.history import revision_undo
from fronts.services.openings import opening_delete
from fronts.services.order_approvals import (
    order_approval_take_back,
    order_approve,
)
from fronts.services.order_arrivals import last_arrival_take_back, lines_receive
from fronts.services.order_sendings import order_send, sending_take_back
from fronts.services.saving import AskFirst
from shopjobs.models import Job, Person, Revision
from shopjobs.services.refused import Refused
from tests.factories import HINGES, NOW, OpeningFactory, door_and_drawer, overlaid
from tests.ordering import approved, facts_of, line_checked, sent_of, sent_to, settled
from tests.saying import standard_set


@pytest.fixture
def kitchen_job(job: Job) -> Job:
    """A job with a door on two hinges, and a drawer."""
    overlaid(job)
    door_and_drawer(job)
    return job


def add_door(job: Job, label: str = "B2") -> None:
    """Another cabinet with a door: two hinges more."""
    place = 600 if label == "B2" else 1200
    OpeningFactory.create(cabinet__job=job, cabinet__label=label, cabinet__x=place)


def hinges(job: Job) -> ItemOrdered:
    """How far the hinges are."""
    return order_progress(job).items[HINGES]


def to_buy(job: Job) -> Fraction | int:
    """How many hinges are to be bought."""
    return sum(each.amount for each in wanted_by([Job.objects.get(pk=job.pk)])
               if each.item == HINGES)  # fmt: skip


def receive(job: Job, by: Person, *, confirmed: bool = False, **counts: int) -> None:
    """So many of the hinges came of the first order."""
    sent = sent_of(job)[0]
    keys = {line.row.item: line.row.pk for line in sent.lines}
    lines_receive(
        job=job, sent=sent, amounts={keys[HINGES]: counts["hinges"]}, came_on=NOW.date(), note="",
        confirmed=confirmed, by=by, at=NOW,
    )  # fmt: skip


def test_it_is_approved_once_all_is_checked(kitchen_job: Job, office: Person) -> None:
    """What is approved is frozen: how many, per front, by which facts."""
    line_checked(kitchen_job, HINGES, office)
    with pytest.raises(ValidationError, match="Check every line first"):
        order_approve(job=kitchen_job, schedule=schedule_of(kitchen_job), by=office, at=NOW)

    approved(kitchen_job, office)

    kept = ApprovedLine.objects.get(item=HINGES)
    assert kept.amount == 3  # Two, and one spare.
    assert kept.facts == facts_of(kitchen_job)[HINGES].as_json
    assert kept.facts["fronts"]["B1.a"]["overlay"] == "12.7"
    assert what_it_waits_for(kitchen_job) == (f"{len(facts_of(kitchen_job))} lines to send",)
    with pytest.raises(ValidationError, match="approved already"):
        order_approve(job=kitchen_job, schedule=schedule_of(kitchen_job), by=office, at=NOW)


def test_not_while_a_stop_stands(kitchen_job: Job, office: Person) -> None:
    """However many lines are checked."""
    OpeningFactory.create(
        cabinet__job=kitchen_job, cabinet__label="B2", cabinet__x=600,
        measured_diagonal_1=800, measured_diagonal_2=700,
    )  # fmt: skip
    standard_set(owner=kitchen_job, at=NOW, mount="inset", least_gap=12)

    with pytest.raises(ValidationError, match="A stop is in the way"):
        approved(kitchen_job, office)


@pytest.mark.parametrize(
    ("change", "kind", "note", "ordered", "needed"),
    [
        ("more", ADDITION, "", 5, 4), ("more", ACCEPTED, "", 3, 4),
        ("more", DISMISSED, "on the shelf", 3, 4),
        ("gone", ACCEPTED, "", 0, 0), ("gone", DISMISSED, "for the next job", 3, 0),
    ],
)  # fmt: skip
def test_a_change_is_a_difference_until_somebody_decides(
    change: str, kind: str, note: str, ordered: int, needed: int, kitchen_job: Job, office: Person
) -> None:
    """Ordered beside what was, accepted, or dismissed for a reason; then it is none any more."""
    approved(kitchen_job, office)
    _CHANGES[change](kitchen_job)
    assert hinges(kitchen_job).ordered == 3
    assert "to decide on" in what_it_waits_for(kitchen_job)[0]

    settled(kitchen_job, kind, office, note)

    assert order_progress(kitchen_job).differences(schedule_of(kitchen_job)) == []
    assert (hinges(kitchen_job).ordered, hinges(kitchen_job).facts.need) == (ordered, needed)
    assert to_buy(kitchen_job) == hinges(kitchen_job).to_send == ordered


def test_what_was_decided_holds_for_that_need(kitchen_job: Job, office: Person) -> None:
    """Once it is another one, that is what is bought."""
    approved(kitchen_job, office)
    add_door(kitchen_job)
    assert to_buy(kitchen_job) == 5
    settled(kitchen_job, DISMISSED, office, "on the shelf")
    assert to_buy(kitchen_job) == 3

    add_door(kitchen_job, "B3")

    assert to_buy(kitchen_job) == 7


def _without_door(job: Job) -> None:
    opening_delete(opening=Opening.objects.get(cabinet__job=job, label="a"), at=NOW)


_CHANGES: dict[str, Callable[[Job], None]] = {"more": add_door, "gone": _without_door}


def test_it_is_dismissed_for_a_reason(kitchen_job: Job, office: Person) -> None:
    """Not without one."""
    approved(kitchen_job, office)
    add_door(kitchen_job)

    with pytest.raises(ValidationError, match="Say why"):
        settled(kitchen_job, DISMISSED, office)


def test_what_is_sent_is_not_taken_off(kitchen_job: Job, office: Person) -> None:
    """Of what is over, only what nobody sent for yet."""
    approved(kitchen_job, office)
    order_send(
        job=kitchen_job, supplier="Ash", reference="", sent_on=NOW.date(), amounts={HINGES: 2},
        by=office, at=NOW,
    )  # fmt: skip
    _without_door(kitchen_job)
    settled(kitchen_job, ACCEPTED, office)

    assert (hinges(kitchen_job).ordered, hinges(kitchen_job).to_send) == (2, 0)


def test_an_addition_is_sent_as_the_rest(kitchen_job: Job, office: Person) -> None:
    """The first order stays as it was sent."""
    approved(kitchen_job, office)
    sent_to(kitchen_job, "Ash", office)
    add_door(kitchen_job)
    settled(kitchen_job, ADDITION, office)
    assert hinges(kitchen_job).to_send == 2

    sent_to(kitchen_job, "Birch", office)

    assert [
        line.row.amount
        for sent in sent_of(kitchen_job)
        for line in sent.lines
        if line.row.item == HINGES
    ] == [3, 2]
    with pytest.raises(ValidationError, match="Tick the lines"):
        sent_to(kitchen_job, "Ash", office)


def test_no_more_is_sent_than_approved(kitchen_job: Job, office: Person) -> None:
    """Nor anything that is not on the list."""
    approved(kitchen_job, office)
    for amounts in ({HINGES: 4}, {"gold leaf": 1}):
        with pytest.raises(ValidationError, match="are left to send"):
            order_send(
                job=kitchen_job, supplier="Ash", reference="", sent_on=NOW.date(),
                amounts=amounts, by=office, at=NOW,
            )  # fmt: skip
    assert not OrderSending.objects.exists()


def test_what_came_short_stays_to_come(kitchen_job: Job, office: Person) -> None:
    """Until the rest comes; too many is asked about."""
    approved(kitchen_job, office)
    sent_to(kitchen_job, "Ash", office)
    receive(kitchen_job, office, hinges=1)
    assert (hinges(kitchen_job).came, sent_of(kitchen_job)[0].lines[0].missing) == (1, 2)

    with pytest.raises(AskFirst, match=f"4 of 3 × {HINGES}"):
        receive(kitchen_job, office, hinges=3)
    receive(kitchen_job, office, hinges=3, confirmed=True)

    assert (hinges(kitchen_job).came, sent_of(kitchen_job)[0].lines[0].missing) == (4, 0)


def test_mistakes_are_taken_back_in_their_order(kitchen_job: Job, office: Person) -> None:
    """What came, then what was sent, then the approval."""
    approved(kitchen_job, office)
    sent_to(kitchen_job, "Ash", office)
    receive(kitchen_job, office, hinges=1)
    with pytest.raises(ValidationError, match="Some of it came"):
        sending_take_back(job=kitchen_job, sent=sent_of(kitchen_job)[0], by=office, at=NOW)
    with pytest.raises(ValidationError, match="Some of it is sent"):
        order_approval_take_back(job=kitchen_job, by=office, at=NOW)

    last_arrival_take_back(job=kitchen_job, sent=sent_of(kitchen_job)[0], by=office, at=NOW)
    sending_take_back(job=kitchen_job, sent=sent_of(kitchen_job)[0], by=office, at=NOW)
    order_approval_take_back(job=kitchen_job, by=office, at=NOW)

    assert not OrderArrival.objects.exists()
    assert what_it_waits_for(kitchen_job) == ("to approve",)


def test_undo_leaves_nothing_sent_that_is_not_approved(kitchen_job: Job, office: Person) -> None:
    """The approval comes back out only once what was sent is taken back; that, Undo does too."""
    approved(kitchen_job, office)
    by_approval = Revision.objects.latest("pk")
    sent_to(kitchen_job, "Ash", office)
    by_sending = Revision.objects.latest("pk")
    with pytest.raises(Refused, match="is sent already"):
        revision_undo(revision=by_approval, at=NOW, by=office)

    revision_undo(revision=by_sending, at=NOW, by=office)
    revision_undo(revision=by_approval, at=NOW, by=office)

    assert not OrderApproval.objects.exists()


def test_too_many_of_one_order_are_not_taken_for_another(kitchen_job: Job, office: Person) -> None:
    """What the second supplier owes is still to come, on the line as in what is waited for."""
    approved(kitchen_job, office)
    sent_to(kitchen_job, "Ash", office, {HINGES: 2})
    sent_to(kitchen_job, "Birch", office, {HINGES: 1})

    receive(kitchen_job, office, hinges=3, confirmed=True)

    assert "1 item from Birch" in what_it_waits_for(kitchen_job)
    assert (hinges(kitchen_job).came, hinges(kitchen_job).to_come) == (3, 1)
    assert "3 came, 1 to come" in item_words(hinges(kitchen_job))
