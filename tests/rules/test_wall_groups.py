"""Which walls are worked out together; any other comes out by itself as in the whole kitchen."""

from dataclasses import replace

import pytest
from hypothesis import given

from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.picked_doors import picked_doors
from fronts.rules.runs import standing_in
from fronts.rules.schedule import schedule
from fronts.rules.wall_facts import Thing, Wall, WallEnd
from fronts.rules.wall_groups import wall_groups
from tests.rules.laws import KITCHEN_LAW
from tests.rules.small_kitchens import beside, cabinet, inch, kitchen, opening
from tests.strategies import kitchens
from tests.strategies_of_hardware import equipped_kitchens

FIRST = cabinet(opening())
IN_SET = cabinet(opening(front=FrontFacts(material="oak plywood", grain_set="Run")))
APART = kitchen(FIRST, beside(FIRST, wall="East", x=inch("0")))
CORNER = WallEnd("inside", wall="East")
HOOD = Thing("H", "appliance", "East", inch("24"), after="B1")


@pytest.mark.parametrize(
    ("of", "together"),
    [
        (APART, [{"North"}, {"East"}]),
        (replace(APART, walls=(Wall("North", inch("90"), right=CORNER),)), [{"North", "East"}]),
        (replace(APART, others=(HOOD,)), [{"North", "East"}]),
        (kitchen(IN_SET, beside(IN_SET, wall="East", x=inch("0"))), [{"North", "East"}]),
        (
            replace(APART, others=(Thing("F", "filler", "South", inch("3")),)),
            [{"North"}, {"East"}, {"South"}],
        ),
    ],
    ids=["apart", "a corner", "a thing after one there", "a grain set", "a thing alone"],
)
def test_what_ties_walls(of: Kitchen, together: list[set[str]]) -> None:
    """A corner, a set of fronts, what follows something on the other wall."""
    found = [{what.wall for what in standing_in(group.kitchen)} for group in wall_groups(of, {})]
    assert found == together


@KITCHEN_LAW
@given(kitchens() | equipped_kitchens())
def test_walls_come_out_alone_as_in_the_whole_kitchen(of: Kitchen) -> None:
    """Each group's fronts and fittings, but where doors are picked, which all walls share."""
    whole = schedule(of)
    for group in wall_groups(of, picked_doors(of)):
        if group.picked:
            continue
        alone = schedule(group.kitchen)
        walls = {one.wall for one in group.kitchen.cabinets}
        assert alone.fronts == tuple(one for one in whole.fronts if one.wall in walls)
        own = {front.label for front in alone.fronts}
        assert alone.fittings == tuple(one for one in whole.fittings if one.front in own)
