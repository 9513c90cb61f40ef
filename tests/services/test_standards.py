"""The house standard, the stock and the shop's own numbers, level by level."""

from fractions import Fraction
from typing import Any

import pytest
from django.core.exceptions import ValidationError

from fronts.models import JobStandard, ShopNumber, ShopStandard, Stock
from fronts.rules.limits import LEAST_KG, MOST_HINGES, MOST_KG, MOST_TABLE_ROWS
from fronts.rules.practice import inches
from fronts.rules.standard_keys import Reveal, Sides, Standard
from fronts.services import standards as service
from fronts.services.standards import Owner, kind_level, tables_set
from fronts.services.stock import practice_set, stock_clear
from fronts.snapshot import kitchen_of
from fronts.snapshot.standards import standard_of
from shopjobs.models import Job, Shop
from tests.factories import NOW, CabinetFactory, JobFactory, OpeningFactory
from tests.saying import standard_set, stock_set

HALF = inches(1, 2)


def test_each_level_keeps_what_it_says(shop: Shop, job: Job) -> None:
    """Shop, job, cabinet kind, cabinet and opening."""
    cabinet = CabinetFactory.create(job=job)
    opening = OpeningFactory.create(cabinet=cabinet)
    owners: tuple[Owner, ...] = (shop, job, kind_level(job, cabinet.kind), cabinet, opening)
    for thickness, owner in enumerate(owners, start=16):
        standard_set(owner=owner, front_thickness=Fraction(thickness), at=NOW)
    kitchen = kitchen_of(job)
    found = kitchen.cabinets[0]

    assert standard_of(ShopStandard.objects.get()).front_thickness == 16
    assert (
        kitchen.standard.front_thickness,
        found.standard.front_thickness,
        found.openings[0].standard.front_thickness,
    ) == (Fraction(17), Fraction(19), Fraction(20))
    assert kitchen.standard_of(found.kind).front_thickness == Fraction(18)


def test_a_level_is_entered_bit_by_bit(job: Job) -> None:
    """Setting one key leaves the others; None takes one back."""
    standard_set(owner=job, skin=HALF, bite=HALF, at=NOW)
    standard_set(owner=job, skin=None, at=NOW)

    assert standard_of(JobStandard.objects.get()) == Standard(bite=HALF)


def test_an_overlay_takes_the_place_of_the_same_levels_reveal(job: Job) -> None:
    """And the other way round; both at once are refused."""
    standard_set(
        owner=job, at=NOW, reveal_between=HALF, reveal_left=HALF, reveal_right=HALF,
        reveal_top=HALF, reveal_bottom=HALF,
    )  # fmt: skip
    standard_set(
        owner=job, at=NOW, overlay_left=HALF, overlay_right=HALF, overlay_top=HALF,
        overlay_bottom=HALF,
    )  # fmt: skip

    lapping = Sides(HALF, HALF, HALF, HALF)
    assert standard_of(JobStandard.objects.get()) == Standard(overlay=lapping)
    both = Standard(overlay=lapping, reveal=Reveal(HALF, lapping))
    with pytest.raises(ValidationError) as refused:
        service.standard_set(owner=job, standard=both, at=NOW)
    assert set(refused.value.message_dict) == {"reveal_between"}
    assert standard_of(JobStandard.objects.get()) == Standard(overlay=lapping)


def test_the_shops_change_counts_for_each_of_its_jobs(shop: Shop, job: Job) -> None:
    """A page that shows an older revision can tell."""
    other = JobFactory.create()
    standard_set(owner=shop, skin=HALF, at=NOW)

    assert Job.objects.get(pk=job.pk).revision == job.revision + 1
    assert Job.objects.get(pk=other.pk).revision == other.revision


@pytest.mark.parametrize(
    "rows",
    [
        [],
        [(inches(40), 2), (inches(40), 3)],
        [(inches(60), 3), (inches(40), 2)],
        [(inches(40), 3), (inches(60), 2)],
        [(inches(0), 2)],
        [(inches(40), 0)],
    ],
)
def test_a_table_of_hinges_only_ever_rises(shop: Shop, rows: list[tuple[Fraction, int]]) -> None:
    """A higher door never gets fewer hinges."""
    with pytest.raises(ValidationError) as refused:
        tables_set(
            owner=shop, hinges_by_height=rows, hinges_by_weight=None, slide_classes=None,
            material="", frame_material="", at=NOW,
        )  # fmt: skip

    assert set(refused.value.message_dict) == {"hinges_by_height"}


MOST = [Fraction(number, 2) for number in range(1, MOST_TABLE_ROWS + 1)]


def test_tables_reach_their_limits(shop: Shop, job: Job) -> None:
    """As many rows as there may be, two that take as many hinges, up to the heaviest."""
    tables_set(
        owner=shop, hinges_by_height=[(size, 2) for size in MOST], slide_classes=MOST,
        hinges_by_weight=[(LEAST_KG, 1), (MOST_KG, MOST_HINGES)],
        material="", frame_material="", at=NOW,
    )  # fmt: skip
    practice = kitchen_of(job).practice

    assert practice.hinges_by_height == tuple((size, 2) for size in MOST)
    assert practice.hinges_by_weight == ((LEAST_KG, 1), (MOST_KG, MOST_HINGES))
    assert practice.slide_classes == tuple(MOST)


@pytest.mark.parametrize(
    ("name", "rows"),
    [
        ("hinges_by_height", [(size, 2) for size in [*MOST, Fraction(999)]]),
        ("hinges_by_weight", [(LEAST_KG / 2, 2)]),
        ("hinges_by_weight", [(MOST_KG + 1, 2)]),
        ("hinges_by_weight", [(Fraction(9), 2), (MOST_KG + 1, 3)]),
        ("hinges_by_weight", [(Fraction(9), 2), (Fraction(10), MOST_HINGES + 1)]),
        ("hinges_by_weight", [(Fraction(9), MOST_HINGES + 1)]),
        ("slide_classes", [*MOST, Fraction(999)]),
        ("slide_classes", [LEAST_KG / 2]),
        ("slide_classes", [MOST_KG + 1]),
        ("slide_classes", [Fraction(9), Fraction(9)]),
    ],
)
def test_tables_past_their_limits_are_refused(shop: Shop, name: str, rows: Any) -> None:
    """Under the table's name, and nothing is kept."""
    none: dict[str, Any] = dict.fromkeys(("hinges_by_height", "hinges_by_weight", "slide_classes"))
    with pytest.raises(ValidationError) as refused:
        tables_set(owner=shop, material="", frame_material="", at=NOW, **{**none, name: rows})

    assert set(refused.value.message_dict) == {name}
    assert not ShopStandard.objects.exists()


@pytest.mark.parametrize("classes", [[], [Fraction(0)], [Fraction(45), Fraction(34)]])
def test_load_classes_rise(shop: Shop, classes: list[Fraction]) -> None:
    """From the lightest up."""
    with pytest.raises(ValidationError) as refused:
        tables_set(
            owner=shop, hinges_by_height=None, hinges_by_weight=None, slide_classes=classes,
            material="", frame_material="", at=NOW,
        )  # fmt: skip

    assert set(refused.value.message_dict) == {"slide_classes"}


class TestStock:
    """What is on the shelf."""

    def test_a_jobs_stock_begins_as_a_copy_of_the_shops(self, shop: Shop, job: Job) -> None:
        """It replaces the shop's whole, so it has to hold all of it."""
        stock_set(owner=shop, slide_lengths=[inches(20)], at=NOW)
        stock_set(owner=job, knob_thread="M4", at=NOW)
        stock = kitchen_of(job).stock

        assert (stock.knob_thread, stock.slide_lengths) == ("M4", (inches(20),))

    def test_the_shops_stock_can_hold_again(self, shop: Shop, job: Job) -> None:
        """Clearing twice does nothing."""
        stock_set(owner=job, knob_thread="M4", at=NOW)
        stock_clear(job=job, at=NOW)
        stock_clear(job=job, at=NOW)

        assert kitchen_of(job).stock.knob_thread == "8-32"
        assert not Stock.objects.exists()

    def test_what_is_no_length_is_refused(self, shop: Shop) -> None:
        """A screw of no length, and a shelf without end."""
        for wrong in ([inches(0)], [inches(1)] * 201):
            with pytest.raises(ValidationError) as refused:
                stock_set(owner=shop, screw_lengths=wrong, at=NOW)
            assert set(refused.value.message_dict) == {"screw_lengths"}

    @pytest.mark.parametrize("thread", ["", "coarse", "8-32\n", "M"])
    def test_what_is_no_thread_is_refused(self, shop: Shop, thread: str) -> None:
        """A knob's screw is chosen by it."""
        with pytest.raises(ValidationError) as refused:
            stock_set(owner=shop, knob_thread=thread, at=NOW)

        assert set(refused.value.message_dict) == {"knob_thread"}


class TestNumbers:
    """The shop's own numbers."""

    def test_a_number_is_set_and_taken_back(self, shop: Shop, job: Job) -> None:
        """None lets common practice hold again."""
        practice_set(owner=shop, values={"spares": Fraction(10)}, at=NOW)
        assert kitchen_of(job).practice.spares == 10

        practice_set(owner=shop, values={"spares": None}, at=NOW)
        assert kitchen_of(job).practice.spares == 5
        assert not ShopNumber.objects.exists()

    @pytest.mark.parametrize(
        ("name", "value", "words"),
        [
            ("spares", Fraction(101), "0 to 100"),
            ("spares", Fraction(-1), "0 to 100"),
            ("stile", Fraction(20_001), "0 to 20000"),
            ("hole_move", Fraction(0), "above zero"),
            ("stile", Fraction(1, 3), "exactly"),
            ("stile", Fraction("12345.12345678912"), "exactly"),
            ("shoe_size", Fraction(9), "none of the shop's numbers"),
        ],
    )
    def test_what_makes_no_sense_is_refused(
        self, shop: Shop, name: str, value: Fraction, words: str
    ) -> None:
        """With the number's name as the field."""
        with pytest.raises(ValidationError) as refused:
            practice_set(owner=shop, values={name: value}, at=NOW)

        assert words in refused.value.message_dict[name][0]
        assert not ShopNumber.objects.exists()

    def test_the_driest_month_is_not_damper_than_the_dampest(self, shop: Shop) -> None:
        """Both numbers are looked at together."""
        with pytest.raises(ValidationError) as refused:
            practice_set(owner=shop, values={"humidity_low": Fraction(60)}, at=NOW)

        assert set(refused.value.message_dict) == {"humidity_high"}
        assert not ShopNumber.objects.exists()

    def test_small_numbers_are_kept_exactly(self, shop: Shop, job: Job) -> None:
        """The load of a drawer's floor, in kg a mm²."""
        load = Fraction(73_000_001, 10**10)
        practice_set(owner=shop, values={"drawer_load": load}, at=NOW)

        assert kitchen_of(job).practice.drawer_load == load
