"""What is learned: of the shop's own fronts that are done, for its owner, by value."""

from collections.abc import Callable
from datetime import timedelta

import pytest
from django.test import Client

from fronts.facts.rows import columns_of
from fronts.models import FitRecord, Front, Opening, ShopNumber
from fronts.rules.fits import FitFacts, Gaps, hung_as
from fronts.rules.practice import inches
from fronts.selectors.kitchens import front_keys_of
from fronts.selectors.learned import fitted_fronts
from fronts.selectors.schedules import schedule_of
from fronts.services.stock import practice_set
from shopjobs.models import Job, Person, Shop
from tests.dom import dom
from tests.factories import NOW, JobFactory, door_and_drawer
from tests.saying import standard_set

SignIn = Callable[[Person], Client]
PAGE = "/shop/learned/"
MARK = inches(1, 64)
PLANNED = Gaps(*[inches(1, 8)] * 4)


def fits(
    job: Job,
    by: Person,
    *rights: int,
    front: Front | None = None,
    days: int = 0,
    state: str = "done",
) -> None:
    """Records of fronts that hang so many 64ths to the right; of fronts that are gone by now."""
    for number, right in enumerate(rights):
        gaps = Gaps(
            inches(1, 8) + right * MARK, inches(1, 8) - right * MARK, inches(1, 8), inches(1, 8)
        )
        label = "B1.a" if front else f"X{days}.{number}"
        facts = FitFacts(label, gaps, planned=PLANNED, state=state)
        FitRecord.objects.create(
            job=job, front=front, fitted_by=by, fitted_at=NOW + timedelta(days=days, hours=number),
            **columns_of(facts),
        )  # fmt: skip


def front_of(job: Job) -> Front:
    """The door of a job's only cabinet."""
    return Front.objects.get(opening=Opening.objects.get(cabinet__job=job, closed_by="door"))


def shifts(shop: Shop) -> list[int]:
    """How many 64ths each front that counts has more at its left."""
    found = [each.gaps.left for each in fitted_fronts(shop)]
    return [int((left - inches(1, 8)) / MARK) for left in found if left is not None]


def test_before_anything_fitted_it_says_what_it_waits_for(owner: Person, signed_in: SignIn) -> None:
    """It is found from the shop's page; nothing is shown but the way to the numbers."""
    client = signed_in(owner)
    assert PAGE in dom(client.get("/shop/")).addresses

    page = dom(client.get(PAGE))

    assert "No front says anything yet" in page.one(".empty").words
    assert "from 20 fronts" in page.one(".empty").words
    assert page.one(".empty").addresses == ["/shop/standard/errors/"]
    assert not page.has("table")


def test_with_a_few_it_is_too_early(job: Job, owner: Person, signed_in: SignIn) -> None:
    """The figures are there, and no suggestion."""
    fits(job, owner, *[4, 2] * 9, 4)

    page = dom(signed_in(owner).get(PAGE))

    assert "Too early to say: 19 fronts of 20" in page.one(".early").words
    assert not page.has(".suggested")
    assert page.all("table.learned")[0].all("tr")[1].words.startswith("Place, sideways")


def test_it_suggests_and_changes_nothing(job: Job, owner: Person, signed_in: SignIn) -> None:
    """Twenty of ±1/64: nearly all within 1/16 in; the link leads to the number's field."""
    fits(job, owner, *[1, -1] * 10)
    client = signed_in(owner)

    (said,) = dom(client.get(PAGE)).one(".suggested").all("li")

    assert "Setting is assumed to be off by 1/64 in at most" in said.words
    assert "Use 1/16 in?" in said.words
    (address,) = said.addresses
    path, _, field = address.partition("#")
    assert dom(client.get(path)).one(f"#{field}").attribute("name") == "setting_error"
    assert client.post(PAGE).status_code == 405
    assert not ShopNumber.objects.exists()

    practice_set(owner=job.shop, at=NOW, values={"setting_error": inches(1, 16)})
    page = dom(client.get(PAGE))
    assert "Nothing: your numbers are as 20 fronts say" in page.words


@pytest.mark.parametrize("who", ["office", "installer"])
def test_it_is_the_owner_s(who: str, request: pytest.FixtureRequest, signed_in: SignIn) -> None:
    """As the shop's numbers are."""
    assert signed_in(request.getfixturevalue(who)).get(PAGE).status_code == 403


def test_only_this_shop_s_records(
    job: Job, owner: Person, stranger: Person, signed_in: SignIn
) -> None:
    """What another shop records changes not a letter of our page, and ours none of theirs."""
    fits(job, owner, *[1, -1] * 10)
    before = dom(signed_in(owner).get(PAGE)).one("main").words
    assert stranger.shop is not None

    fits(JobFactory.create(shop=stranger.shop), stranger, *[7, 9] * 15)

    assert dom(signed_in(owner).get(PAGE)).one("main").words == before
    theirs = dom(signed_in(stranger).get(PAGE)).one("main").words
    assert "Over 30 fronts they hang 1/8 in to the right" in theirs
    assert owner.shown_name not in theirs


def test_the_latest_word_on_a_front_counts(job: Job, owner: Person) -> None:
    """Not hung, then done, then done otherwise; one that is a problem by now does not count."""
    door_and_drawer(job)
    front = front_of(job)
    fits(job, owner, 1, front=front, state="to adjust")
    assert shifts(job.shop) == []

    fits(job, owner, 2, front=front, days=1)
    fits(job, owner, 3, front=front, days=2)
    assert shifts(job.shop) == [3]

    fits(job, owner, 4, front=front, days=3, state="problem")
    assert shifts(job.shop) == []


def test_a_job_that_was_deleted_says_nothing(job: Job, owner: Person) -> None:
    """Until it is brought back."""
    fits(job, owner, 1, 2)
    assert shifts(job.shop) == [1, 2]

    Job.objects.filter(pk=job.pk).update(deleted_at=NOW)
    assert shifts(job.shop) == []


def test_how_it_was_hung_is_known_while_it_hangs_so(job: Job, owner: Person) -> None:
    """A door on hinges; once it is another front, nobody knows how the old one hung."""
    standard_set(owner=job, at=NOW, mount="inset")
    door_and_drawer(job)
    front = front_of(job)
    fits(job, owner, 1, front=front)
    (label,) = [name for name, key in front_keys_of(job).items() if key == front.pk]
    FitRecord.objects.update(hung=hung_as(schedule_of(job).front(label)))
    assert [each.method for each in fitted_fronts(job.shop)] == ["hinges"]

    FitRecord.objects.update(hung="another")
    assert [each.method for each in fitted_fronts(job.shop)] == [None]


def test_people_are_told_apart(job: Job, owner: Person, office: Person) -> None:
    """By their names; whom a file named and nobody knows stays as the file has it."""
    fits(job, owner, 1)
    fits(job, office, 2, days=1)
    FitRecord.objects.filter(fitted_by=office).update(fitted_by=None, fitted_by_name="Kim Ford")

    names = [each.by for each in fitted_fronts(job.shop)]

    assert len(set(names)) == 2
    assert names[1] == "Kim Ford"
