"""The demo shop's kitchen."""

from fronts.jobfile import read
from fronts.models import JobStandard, Stock
from fronts.rules.kitchen import CHOOSE
from fronts.rules.practice import inches
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides
from fronts.services.demo import demo_kitchen, load_demo
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Shop
from tests.factories import NOW

DEMO = "fixtures/demo.job.json"


def test_it_is_a_whole_kitchen(db: None) -> None:
    """Every build, mount and way of closing that the shop does; one leaning opening."""
    job = load_demo()
    assert job is not None
    kitchen = kitchen_of(job)
    openings = [each for cabinet in kitchen.cabinets for each in cabinet.openings]
    fronts = schedule(kitchen).fronts

    assert len(kitchen.cabinets) >= 14
    assert len(fronts) >= 30
    assert len({cabinet.wall for cabinet in kitchen.cabinets}) >= 2
    assert {cabinet.build for cabinet in kitchen.cabinets} == {"face-frame", "frameless"}
    assert {front.plane for front in fronts} == {"overlay", "inset"}
    assert {each.closed_by for each in openings} == {
        "door", "pair", "drawer", "drawers", "pull-out", "fixed", "open", "lift-up",
    }  # fmt: skip
    assert [each.label for each in openings if each.measured.diagonal_1] == ["a"]
    doors = {front.door_on_hand for opening in openings for front in opening.fronts}
    assert CHOOSE in doors
    assert doors & {"D1", "D4"}


def test_its_only_stop_is_the_leaning_opening(db: None) -> None:
    """So that the pages show what a finding looks like, and mostly none."""
    job = load_demo()
    assert job is not None
    findings = schedule(kitchen_of(job)).findings

    assert [(each.code, each.where) for each in findings if each.level == "stop"] == [
        ("opening-out-of-square", ("P2.a",))
    ]
    assert len([each for each in findings if each.level == "check"]) <= 2


def test_it_follows_the_shops_standard(db: None) -> None:
    """The job says nothing itself: pages show what is inherited as inherited."""
    job = load_demo()
    assert job is not None

    half = inches(1, 2)
    assert kitchen_of(job).standard.overlay == Sides(half, half, half, half)
    assert not JobStandard.objects.exists()
    assert Stock.objects.get().job is None


def test_it_is_loaded_once(db: None) -> None:
    """What people did to it since then stays done."""
    job = load_demo()
    assert job is not None
    job.delete()

    assert load_demo() is None
    assert not Job.objects.exists()


def test_it_is_the_files_kitchen(shop: Shop, settings: object) -> None:
    """Which level says a thing makes no difference to the kitchen."""
    path = settings.BASE_DIR / DEMO  # type: ignore[attr-defined]
    kitchen = read(path.read_text(encoding="utf-8"))
    job = demo_kitchen(kitchen=kitchen, shop=shop, at=NOW)
    assert job is not None

    assert kitchen_of(job) == kitchen
