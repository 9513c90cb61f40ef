"""Two people do the same at the same moment: check a line of the order, import a job's number."""

from collections.abc import Callable
from io import BytesIO
from typing import Any

import pytest
from django.test import Client

from fronts.models import OrderCheck
from shopjobs.models import Job, Person
from tests.dom import Part, dom
from tests.kitchen_files import SAMPLES
from tests.pages.kitchens import furnish
from tests.pages.shared.sending import as_sent, together
from tests.tried import Tally

pytestmark = [pytest.mark.django_db(transaction=True), pytest.mark.thorough]
SignIn = Callable[[Person], Client]
ROUNDS = (3, pytest.param(15, marks=pytest.mark.reliability))


@pytest.fixture
def desks(owner: Person, office: Person, job: Job, signed_in: SignIn) -> list[Client]:
    """Two browsers of two people of the shop, beside a small kitchen."""
    furnish(job)
    return [signed_in(owner), signed_in(office)]


@pytest.mark.parametrize("rounds", ROUNDS)
def test_an_order_line_is_checked_by_one_and_the_other_reads_so(
    desks: list[Client], job: Job, rounds: int, tally: Tally
) -> None:
    """The first one's name and note stand; the second is shown both notes."""
    address = f"/jobs/{job.pk}/order/"

    def checking(form: Part, note: str) -> Callable[[Client], Any]:
        return lambda browser: browser.post(address, as_sent(form, mark="check", note=note))

    for _ in range(rounds):
        form = dom(desks[0].get(address)).all(".mark form")[0]
        notes = ["from the shelf", "ordered on Monday"]
        answers = together(
            *[(desk, checking(form, note)) for desk, note in zip(desks, notes, strict=True)]
        )
        statuses = [answer.status_code for answer in answers]
        if sorted(statuses) != [302, 409]:
            tally.of(f"answered {statuses}")
        else:
            (check,) = OrderCheck.objects.all()
            first, second = statuses.index(302), statuses.index(409)
            said = dom(answers[second]).one(".summary").words
            told = all(f"“{note}”" in said for note in notes)
            stands = (check.note, check.by in said) == (notes[first], True)
            tally.of(*[] if told and stands else [f"{check.note} stands, told: {said}"])
        uncheck = as_sent(dom(desks[0].get(address)).all(".mark form")[0], mark="uncheck")
        assert desks[0].post(address, uncheck).status_code == 302
    tally.check()


@pytest.mark.parametrize("rounds", ROUNDS)
def test_a_number_is_imported_once(desks: list[Client], rounds: int, tally: Tally) -> None:
    """The second reads that the number is there, at its field."""
    for turn in range(rounds):
        number = f"I-{turn}"

        def importing(browser: Client, number: str = number) -> Any:
            file = BytesIO(SAMPLES[0].read_bytes())
            file.name = "kitchen.job.json"
            return browser.post("/jobs/import/", {"file": file, "number": number})

        answers = together(*[(desk, importing) for desk in desks])
        by_status = {answer.status_code: answer for answer in answers}
        made = Job.objects.filter(number=number).count()
        if set(by_status) != {302, 422} or made != 1:
            tally.of(f"answered {[*by_status]}, made {made}")
        else:
            told = "There is already a job of this number" in dom(by_status[422]).words
            tally.of(*[] if told else ["the second was not told"])
    tally.check()
