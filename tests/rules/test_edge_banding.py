"""Which edges are banded, how large that leaves a slab to cut, and how much band it takes.

Cut size = finished size - band on each banded edge + what is milled off it first: common
practice, no source. So is what is banded where nobody says.
"""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.banded_edges import PLAIN, banding_of
from fronts.rules.edge_banding import lengths_of_bands, plain_banding
from fronts.rules.items import NO_BAND, PLAIN_BAND, BandItem, Hardware
from fronts.rules.kinds import SIDES, ClosedBy
from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.lengths import INCH, Mm
from fronts.rules.results import Need, Part
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides, Standard
from fronts.rules.standards import DEFAULTS, settled
from tests.rules.finding_cases import one
from tests.rules.laws import LAW
from tests.rules.small_kitchens import HALF_LAP, inch, opening

THIN, THICK = BandItem("E-1", Mm(1), "white", Mm(22)), BandItem("E-2", Mm(2))
BANDS = Hardware(bands=(THIN, THICK))
ROUND = Sides("E-1", "E-1", "E-1", "E-1")
SOME = Sides("E-2", NO_BAND, "E-1", NO_BAND)

LEFT_TO_THE_MATERIAL = [
    ("birch plywood", True),
    ("white melamine", True),
    ("chipboard", True),
    ("MDF", False),
    ("hard maple", False),
    ("glass", False),
    ("moonstone", False),
]


@pytest.mark.parametrize(("material", "banded"), LEFT_TO_THE_MATERIAL)
def test_what_is_banded_where_nobody_says(material: str, banded: bool) -> None:
    """Slabs whose core would show, with a band that takes nothing off."""
    banding = banding_of(inch("16"), inch("28 1/2"), material, DEFAULTS, (), upright=True)

    assert (banding is not None) is banded
    if banding is not None:
        assert [band for _, band, _ in banding.edges()] == [PLAIN] * 4
        assert (banding.cut_width, banding.cut_height) == (inch("16"), inch("28 1/2"))


@pytest.mark.parametrize(
    ("material", "bare"), [("MDF", False), ("moonstone", False), ("hard maple", True)]
)
def test_a_band_that_is_named_goes_on_all_but_solid_wood(material: str, bare: bool) -> None:
    """Painted board too: who names a band wants it."""
    standard = settled(Standard(band=ROUND))
    banding = banding_of(Mm(400), Mm(700), material, standard, BANDS.bands, upright=True)

    assert (banding is None) is bare


def kitchen(kind: ClosedBy = "door", material: str = "MDF", **said: object) -> Kitchen:
    """An opening that laps 1/2 in, closed so, in a shop with two bands."""
    standard = replace(HALF_LAP, **said)  # type: ignore[arg-type]
    front = FrontFacts(material=material)
    return one(opening(kind, front=front), standard, hardware=BANDS)


def slab(of: Kitchen) -> Part:
    """Its one slab."""
    (part,) = (part for part in schedule(of).parts if part.part == "slab")
    return part


def test_a_door_is_cut_smaller_by_its_bands() -> None:
    """A door 16 × 28 1/2 in with 1 mm all round is cut 404.4 × 721.9 mm."""
    part = slab(kitchen(band=ROUND))

    assert (part.finished_width, part.finished_length) == (inch("16"), inch("28 1/2"))
    assert (part.width, part.length) == (Mm("404.4"), Mm("721.9"))


@pytest.mark.parametrize(("kind", "along"), [("door", "height"), ("drawer", "width")])
def test_each_edge_is_reckoned_by_itself(kind: ClosedBy, along: str) -> None:
    """2 mm at the left, 1 mm at the top, half a millimetre milled off banded edges alone."""
    premill = Sides(*[Mm("0.5")] * 4)
    of = kitchen(kind, band=SOME, premill=premill)
    part, (front,) = slab(of), schedule(of).fronts
    cut = {"width": front.width - 2 + Mm("0.5"), "height": front.height - 1 + Mm("0.5")}

    across = "width" if along == "height" else "height"
    assert (part.length, part.width) == (cut[along], cut[across])
    assert (part.finished_length, part.finished_width) == (
        getattr(front, along), getattr(front, across),
    )  # fmt: skip


def test_a_frame_has_no_bands() -> None:
    """Solid stiles and rails are cut as large as they are; the panel lies in its groove."""
    framed = FrontFacts(build="five-piece")
    of = one(opening(front=framed), replace(HALF_LAP, band=ROUND), hardware=BANDS)

    assert all(part.banding is None for part in schedule(of).parts)
    assert schedule(of).parts == schedule(one(opening(front=framed), hardware=BANDS)).parts


def test_a_nearer_level_takes_the_band_away() -> None:
    """All four edges say that they stay bare."""
    bare = Standard(band=Sides(*[NO_BAND] * 4))
    of = one(replace(opening(front=FrontFacts(material="birch plywood")), standard=bare),
             replace(HALF_LAP, band=ROUND), hardware=BANDS)  # fmt: skip

    assert slab(of).banding is None


def test_a_shop_without_bands_has_plain_ones() -> None:
    """As it has plain hinges."""
    usual = Sides(*["BAND-2"] * 4)
    of = replace(kitchen(band=usual), hardware=Hardware())

    assert slab(of).width == inch("16") - 4


def test_an_edge_may_be_plain_beside_one_that_is_named() -> None:
    """Of plywood the other three are banded as they would be; of painted board they are bare."""
    said = Sides("E-2", PLAIN_BAND, PLAIN_BAND, PLAIN_BAND)
    ply, painted = (slab(kitchen(band=said, material=each)) for each in ("birch plywood", "MDF"))

    assert ply.width == painted.width == inch("16") - 2
    assert ply.banding is not None
    assert painted.banding is not None
    assert [band.code for _, band, _ in ply.banding.edges()] == ["E-2", "", "", ""]
    assert [band.code for _, band, _ in painted.banding.edges()] == ["E-2"]


def band_lines(of: Kitchen) -> list[Need]:
    """The lines of its hardware list that are bands."""
    return [need for need in schedule(of).hardware if need.kind == "edge band"]


def test_bands_are_ordered_by_their_length() -> None:
    """Left 28 1/2 in of one and top 16 in of the other; spares are 5 % of whole feet."""
    thick, thin = band_lines(kitchen(band=SOME))

    assert (thick.code, thick.item, thick.need, thick.unit) == ("E-2", "edge band E-2", 3, "ft")
    assert thick.per_front == {"B1.a": inch("28 1/2") / (12 * INCH)}
    assert (thin.item, thin.need, thin.fronts) == ("edge band E-1, white", 2, ("B1.a",))
    assert thin.spares == 1


def test_who_names_no_band_orders_none() -> None:
    """The plain one is told beside the cut list, as ever."""
    of = kitchen(material="birch plywood")

    assert band_lines(of) == []
    assert plain_banding([slab(of)]) == {("birch plywood", inch("3/4")): inch("89")}
    assert lengths_of_bands([slab(of)]) == {}


LENGTHS = st.integers(50_000, 2_500_000).map(lambda number: Mm(number, 1000))
SMALL = st.integers(0, 4_000).map(lambda number: Mm(number, 1000))


@LAW
@given(
    LENGTHS, LENGTHS, st.tuples(*[SMALL] * 4), st.tuples(*[SMALL] * 4),
    st.tuples(*[st.booleans()] * 4),
)  # fmt: skip
def test_a_finished_slab_is_what_was_cut_and_its_bands_less_what_is_milled(
    width: Mm, height: Mm, thick: tuple[Mm, ...], milled: tuple[Mm, ...], banded: tuple[bool, ...]
) -> None:
    """Whatever bands there are, a different one on each edge, or none."""
    bands = [BandItem(side, thickness) for side, thickness in zip(SIDES, thick, strict=True)]
    codes = [side if on else NO_BAND for side, on in zip(SIDES, banded, strict=True)]
    standard = settled(Standard(band=Sides(*codes), premill=Sides(*milled)))
    banding = banding_of(width, height, "MDF", standard, bands, upright=True)

    if banding is None:
        assert not any(banded)
        return
    adds = {
        side: (thickness - off) * on
        for side, thickness, off, on in zip(SIDES, thick, milled, banded, strict=True)
    }
    assert banding.cut_width + adds["left"] + adds["right"] == width
    assert banding.cut_height + adds["top"] + adds["bottom"] == height
    assert sum(length for _, _, length in banding.edges()) == sum(
        (height if side in ("left", "right") else width) * on
        for side, on in zip(SIDES, banded, strict=True)
    )
