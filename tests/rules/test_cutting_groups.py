"""Parts sorted as they are cut: common practice, no source."""

from fronts.rules.cutting_groups import cutting_groups
from tests.rules.parts_to_cut import part
from tests.rules.small_kitchens import inch

PARTS = [
    part("stile", "hard maple", "28 1/2", "3", front="B2.a"),
    part("rail", "hard maple", "12 1/4", "2 1/4", count=2),
    part("stile", "hard maple", "28 1/2", "2 1/4", count=2),
    part("panel", "MDF", "24", "12"),
    part("slab", "MDF", "28 1/2", "16", front="B3.a"),
    part("slab", "birch plywood", "28 1/2", "16", front="B4.a"),
]


SLABS = [("B6.a", "16"), ("B4.b", "12"), ("B5.a", "18")]


def test_sheets_come_before_sticks_and_each_width_of_stick_by_itself() -> None:
    """By material and thickness; a wider stile is ripped from another width of stick."""
    groups = cutting_groups(PARTS)

    assert [(group.material, group.sticks, group.width, group.count) for group in groups] == [
        ("MDF", False, None, 2),
        ("birch plywood", False, None, 1),
        ("hard maple", True, inch("2 1/4"), 4),
        ("hard maple", True, inch("3"), 1),
    ]


def test_the_largest_parts_come_first() -> None:
    """A sheet is broken down from its largest parts: by length, then by width, then by name."""
    lower = [part("slab", "MDF", "28 1/2", width, front=name) for name, width in SLABS]
    groups = cutting_groups([*PARTS, *lower])

    assert [each.label for each in groups[0].parts] == [
        "B5.a", "B3.a", "B6.a", "B4.b", "B1.a panel",
    ]  # fmt: skip
    assert [each.label for each in groups[2].parts] == ["B1.a stile", "B1.a rail"]


def test_a_groups_key_stays_while_its_parts_change() -> None:
    """What was entered for a material's stock is found again, and no two groups share a key."""
    groups = cutting_groups(PARTS)
    (fewer,) = cutting_groups(PARTS[1:2])

    assert fewer.key == groups[2].key
    assert len({group.key for group in groups}) == len(groups)
