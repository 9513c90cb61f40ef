"""A job's standard tried on its page: what would change, kept by one button, or left."""

from collections.abc import Callable
from fractions import Fraction

import pytest
from django.test import Client

from fronts.models import Cabinet, JobStandard, ShopStandard
from fronts.rules.practice import inches
from fronts.rules.standard_keys import Sides
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Revision, Shop
from tests.dom import Part, dom
from tests.factories import NOW, BoxFactory, CabinetFactory, OpeningFactory
from tests.pages.kitchens import HTMX, furnish, posted_by
from tests.pages.shared.sending import as_sent
from tests.saying import standard_set

SignIn = Callable[[Person], Client]
LAPS = ("overlay_left", "overlay_right", "overlay_top", "overlay_bottom")


@pytest.fixture
def desk(job: Job, owner: Person, signed_in: SignIn) -> Client:
    """The owner's browser, beside a kitchen whose fronts lap 1/2 in all round."""
    furnish(job)
    return signed_in(owner)


def lap(owner: Shop | Job | Cabinet, by: Fraction) -> None:
    """Let fronts lap so far all round."""
    standard_set(
        owner=owner, at=NOW, overlay_left=by, overlay_right=by, overlay_top=by, overlay_bottom=by
    )


def lap_in(job: Job) -> Sides[Fraction] | None:
    return kitchen_of(job).standard.overlay


def address(job: Job) -> str:
    return f"/jobs/{job.pk}/what-if/"


def show(client: Client, job: Job, **typed: str) -> Part:
    """The page after the changes were typed and their button was pressed."""
    form = dom(client.get(address(job))).one("#what-if-form")
    return dom(client.post(address(job), as_sent(form, **typed)))


def keep(client: Client, job: Job, page: Part) -> None:
    """Press the button that keeps what is shown."""
    sent = {**posted_by(page.one("#what-if-keep")), "do": "keep"}
    assert client.post(address(job), sent).status_code == 302


def test_what_would_change_is_shown_and_nothing_is_kept(desk: Client, job: Job) -> None:
    """Front by front, material by material, with the wall as it is and as it would be."""
    before, told = kitchen_of(job), Revision.objects.count()

    page = show(desk, job, **dict.fromkeys(LAPS, "3/8"))

    (row, *_) = [each for each in page.all(".compared tr") if each.words.startswith("B1.a")]
    assert "now 16 × 28 1/2 then 15 3/4 × 28 1/4" in row.words
    assert "now 1/2 all round then 3/8 all round" in row.words
    assert len(page.all(".wall-pair svg")) == 2
    assert {each.id for each in page.all("g[id]")} >= {"front-B1.a", "then-B1.a"}
    assert kitchen_of(job) == before
    assert Revision.objects.count() == told


def test_inset_changes_the_plane(desk: Client, job: Job) -> None:
    """An opening 15 × 27 1/2 with gaps of 3/32, down to the step of 1/16."""
    page = show(desk, job, mount="inset")

    assert "now 1/2 all round then inset 3/32 all round" in page.all(".compared")[0].words
    assert "14 13/16 × 27 5/16" in page.all(".compared")[0].words


def test_keeping_it_is_one_step_that_is_undone(desk: Client, job: Job) -> None:
    """What was shown is what the job says then, and Undo takes it back."""
    page = show(desk, job, **dict.fromkeys(LAPS, "3/8"))
    told = Revision.objects.count()

    keep(desk, job, page)

    assert lap_in(job) == Sides(*[inches(3, 8)] * 4)
    assert Revision.objects.count() == told + 1
    after = dom(desk.get(f"/jobs/{job.pk}/"))
    assert "This job's standard is saved." in after.words
    undo = after.one("form[data-step='undo']")
    desk.post(undo.attribute("action"), posted_by(undo))
    assert lap_in(job) == Sides(*[inches(1, 2)] * 4)


def test_what_is_shown_is_what_comes(desk: Client, job: Job) -> None:
    """Kept, the same standard would change nothing any more."""
    page = show(desk, job, mount="inset", gap_between="3/32")
    keep(desk, job, page)

    assert "Nothing would change" in show(desk, job).words


def test_one_wall_at_a_time_is_drawn(desk: Client, job: Job) -> None:
    """The first that would differ; a button draws another, with the same changes typed."""
    OpeningFactory.create(cabinet=CabinetFactory.create(job=job, label="C1", wall="South"))
    first = show(desk, job, **dict.fromkeys(LAPS, "3/8"))
    sent = {**posted_by(first.one("#what-if-keep")), "wall": "South"}

    other = dom(desk.post(address(job), sent))

    assert [each.words for each in first.all(".walls button")] == ["North", "South"]
    assert first.has("g[id='then-B1.a']")
    assert not first.has("g[id='then-C1.a']")
    assert other.has("g[id='then-C1.a']")
    assert not other.has("g[id='then-B1.a']")
    assert other.one("#what-if-form").field("overlay_top").value == "3/8"
    assert lap_in(job) == Sides(*[inches(1, 2)] * 4)


def test_jigs_and_hardware(desk: Client, job: Job) -> None:
    """The drawer's box stands 1/2 in above its opening: 1/2 + 1/2, then 1/2 + 1/4 in of jig."""
    page = show(desk, job, **dict.fromkeys(LAPS, "1/4"))

    (bench,) = [each for each in page.all("table.compared") if "Jig or shims" in each.words]
    assert "jig 1 × 14 now B2.a then –" in bench.words
    assert "jig 3/4 × 14 now – then B2.a" in bench.words


def test_findings_come_and_go(desk: Client, job: Job) -> None:
    """Laps of 1 1/2 in leave no gap between two cabinets whose stiles are as wide."""
    page = show(desk, job, **dict.fromkeys(LAPS, "1 1/2"))

    assert "Would have to be settled:" in page.words
    assert "stop" in page.one(".would").words
    assert page.has(".comes-and-goes .finding-stop")


def test_bad_input_stays_and_is_told_at_its_field(desk: Client, job: Job) -> None:
    """422, with what was typed still there; nothing is compared."""
    form = dom(desk.get(address(job))).one("#what-if-form")
    answer = desk.post(address(job), as_sent(form, gap_between="1/x", overlay_left=""))
    page = dom(answer)

    assert answer.status_code == 422
    assert page.field("gap_between").value == "1/x"
    assert "1/x" in page.one(".summary").words
    assert not page.has("#what-if-keep")


def test_an_address_may_name_changes(desk: Client, job: Job) -> None:
    """As the page of doors on hand links to; what it doesn't name is as the job has it."""
    page = dom(desk.get(f"{address(job)}?overlay_left=3/8&overlay_right=3/8&unheard=of"))

    assert page.one("#what-if-form").field("overlay_left").value == "3/8"
    assert page.one("#what-if-form").field("overlay_top").value == "1/2"
    assert "then 3/8 left and right, 1/2 top and bottom" in page.all(".compared")[0].words
    bad = desk.get(f"{address(job)}?overlay_left=soon")
    assert bad.status_code == 422


def test_htmx_swaps_the_part_alone(desk: Client, job: Job) -> None:
    """The same answer, without the page around it."""
    form = dom(desk.get(address(job))).one("#what-if-form")
    answer = desk.post(address(job), as_sent(form, mount="inset"), headers=HTMX)

    assert dom(answer).first.id == "what-if"
    assert not dom(answer).is_whole


def test_what_another_saved_meanwhile_is_told(desk: Client, job: Job, office: Person) -> None:
    """The same field, changed by two: both are shown, and nothing is kept."""
    page = show(desk, job, gap_between="3/32")
    standard_set(owner=job, gap_between=inches(1, 4), at=NOW, by=office)

    sent = {**posted_by(page.one("#what-if-keep")), "do": "keep"}
    answer = desk.post(address(job), sent)

    assert answer.status_code == 409
    assert office.shown_name in dom(answer).one(".summary").words
    assert kitchen_of(job).standard.gap_between == inches(1, 4)


def test_a_cabinet_with_a_standard_of_its_own_stays(desk: Client, job: Job) -> None:
    """Only what follows the job's standard would change."""
    for own in Cabinet.objects.filter(job=job):
        lap(own, inches(1, 2))

    page = show(desk, job, **dict.fromkeys(LAPS, "3/8"))

    assert "Nothing would change" in page.words


@pytest.mark.parametrize(
    ("username", "status"), [("ada", 200), ("otto", 200), ("ines", 403), ("boris", 404)]
)
@pytest.mark.parametrize("end", ["", "doors/"])
def test_who_may(
    desk: Client, job: Job, office: Person, installer: Person, stranger: Person,
    signed_in: SignIn, username: str, status: int, end: str,
) -> None:  # fmt: skip
    """The owner and the office; for another shop there is no such job."""
    client = signed_in(Person.objects.get(username=username))

    assert client.get(f"{address(job)}{end}").status_code == status


def test_the_installer_sees_no_link(desk: Client, job: Job, installer: Person,
                                    signed_in: SignIn) -> None:  # fmt: skip
    """What one may not do is not offered."""
    ours, theirs = (dom(c.get(f"/jobs/{job.pk}/")) for c in (desk, signed_in(installer)))

    assert address(job) in ours.one(".undo-bar").addresses
    assert address(job) not in theirs.one(".undo-bar").addresses


def test_another_shops_ways_count_for_nothing(
    desk: Client, job: Job, stranger: Person, signed_in: SignIn
) -> None:
    """What the job leaves open, its own shop says."""
    JobStandard.objects.filter(job=job).delete()
    lap(job.shop, inches(1, 4))
    lap(Shop.objects.get(name="Birch Lane Joiners"), inches(3, 4))
    assert ShopStandard.objects.count() == 2

    page = show(desk, job, gap_between="1/4")
    widened = show(desk, job, **dict.fromkeys(LAPS, "3/8"))

    assert "Nothing would change" in page.words
    assert "now 1/4 all round then 3/8 all round" in widened.all(".compared")[0].words


def test_jigs_of_the_bench_are_those_that_are_made(desk: Client, job: Job) -> None:
    """Two that differ by 1/64 in are one, before and after."""
    hole = OpeningFactory.create(
        cabinet=CabinetFactory.create(job=job, label="C1", wall="South"), closed_by="drawer"
    )
    BoxFactory.create(opening=hole, rise=inches(33, 64))

    page = show(desk, job, **dict.fromkeys(LAPS, "1/4"))

    (bench,) = [each for each in page.all("table.compared") if "Jig or shims" in each.words]
    assert "jig 1 × 14 now B2.a, C1.a (sits 1/64 higher) then –" in bench.words
    assert "jig 3/4 × 14 now – then B2.a, C1.a (sits 1/64 higher)" in bench.words
    assert "49/64" not in bench.words
