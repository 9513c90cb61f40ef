"""Which level of the house standard says what is in force."""

from fractions import Fraction

from fronts.facts.rows import column_names, columns_of
from fronts.models import ShopStandard
from fronts.rules.practice import inches
from fronts.rules.standard_keys import Standard
from fronts.rules.standards import DEFAULTS
from fronts.selectors.standards import standard_levels
from fronts.snapshot.standards import standard_of
from shopjobs.models import Job, Shop
from tests.factories import NOW, CabinetFactory, OpeningFactory
from tests.own_ways import own_ways
from tests.saying import standard_set

HALF, EIGHTH = inches(1, 2), inches(1, 8)


def test_nobody_says_anything_at_first(shop: Shop) -> None:
    """The defaults hold; overlay and reveal have none."""
    levels = standard_levels(shop)

    assert set(levels) == set(column_names(Standard).values())
    assert (levels["bite"].value, levels["bite"].level) == (DEFAULTS.bite, "default")
    assert (levels["overlay_left"].value, levels["overlay_left"].level) == (None, "")
    assert not levels["overlay_left"].inherited


def test_each_key_comes_from_the_nearest_level_that_says_it(shop: Shop, job: Job) -> None:
    """Opening, cabinet, job, shop."""
    cabinet = CabinetFactory.create(job=job, bite=inches(3))
    opening = OpeningFactory.create(cabinet=cabinet, hinge_end=inches(4))
    standard_set(owner=shop, skin=inches(1), trim_limit=inches(1), bite=inches(1), at=NOW)
    standard_set(owner=job, trim_limit=inches(2), at=NOW)
    levels = standard_levels(opening)

    assert [
        (levels[name].value, levels[name].level) for name in ("skin", "trim_limit", "bite")
    ] == [
        (inches(1), "shop"),
        (inches(2), "job"),
        (inches(3), "cabinet B1"),
    ]
    assert (levels["hinge_end"].level, levels["hinge_end"].own) == ("opening B1.a", True)
    assert levels["bite"].inherited
    assert not levels["hinge_end"].inherited


def test_what_lies_beneath_an_own_value_is_told(shop: Shop, job: Job) -> None:
    """So that a page can say what clearing the field brings back."""
    standard_set(owner=shop, skin=inches(1), at=NOW)
    standard_set(owner=job, skin=inches(2), at=NOW)
    skin = standard_levels(job)["skin"]

    assert (skin.value, skin.own) == (inches(2), True)
    assert (skin.beneath, skin.beneath_level) == (inches(1), "shop")


def test_a_nearer_reveal_hides_a_farther_overlay(shop: Shop, job: Job) -> None:
    """A level that gives one of the two replaces both."""
    standard_set(
        owner=shop, at=NOW, overlay_left=HALF, overlay_right=HALF, overlay_top=HALF,
        overlay_bottom=HALF,
    )  # fmt: skip
    cabinet = CabinetFactory.create(
        job=job, reveal_between=EIGHTH, reveal_left=EIGHTH, reveal_right=EIGHTH, reveal_top=EIGHTH,
        reveal_bottom=EIGHTH,
    )  # fmt: skip
    levels = standard_levels(OpeningFactory.create(cabinet=cabinet))

    assert (levels["reveal_left"].value, levels["reveal_left"].level) == (EIGHTH, "cabinet B1")
    assert (levels["overlay_left"].value, levels["overlay_left"].level) == (None, "")
    assert standard_levels(job)["overlay_left"].value == HALF


def test_every_column_of_the_standard_is_told(shop: Shop) -> None:
    """As the nearest level says it, sides and words too; a new key would be among them."""
    own_ways(shop, Fraction(9, 10))
    said = standard_of(ShopStandard.objects.get())

    assert {
        name: said_here.value for name, said_here in standard_levels(shop).items()
    } == columns_of(said)
    assert None not in {
        value for name, value in columns_of(said).items() if not name.startswith("reveal_")
    }
