"""Proposed uses of doors on hand: each fits its opening, and what is accepted comes out so."""

from dataclasses import replace

from hypothesis import given, settings

from fronts.rules.door_uses import ProposedUse, proposed_uses
from fronts.rules.kitchen import CHOOSE, Cabinet, FrontFacts, Kitchen, Opening
from fronts.rules.runs import stood
from fronts.rules.schedule import schedule
from tests.strategies import kitchens


def accepted(kitchen: Kitchen, uses: list[ProposedUse]) -> Kitchen:
    """The kitchen in which the doors are what is proposed, as the service has it."""
    by_opening = {(use.front.cabinet, use.front.opening, use.front.label): use for use in uses}

    def front(cabinet: Cabinet, opening: Opening, place: int, facts: FrontFacts) -> FrontFacts:
        label = f"{cabinet.label}.{opening.label}"
        label = label if len(opening.fronts) == 1 else f"{label}.{place + 1}"
        use = by_opening.get((cabinet.label, opening.label, label))
        if use is None:
            return facts
        named = use.door.label if opening.closing.single else CHOOSE
        return replace(facts, door_on_hand=named)

    return replace(
        kitchen,
        cabinets=tuple(
            replace(
                cabinet,
                openings=tuple(
                    replace(
                        opening,
                        fronts=tuple(
                            front(cabinet, opening, place, each)
                            for place, each in enumerate(opening.fronts)
                        ),
                    )
                    for opening in cabinet.openings
                ),
            )
            for cabinet in kitchen.cabinets
        ),
    )


@given(kitchens())
@settings(max_examples=60)
def test_what_is_proposed_fits_and_comes_out_so(kitchen: Kitchen) -> None:
    """A door less what is sawn off it is its front; each serves once; accepted it is that."""
    kitchen = stood(kitchen)
    uses = proposed_uses(kitchen)
    assert len({use.front.label for use in uses}) == len(uses)
    for use in uses:
        trim, front = use.front.trim, use.front
        assert use.door.width - trim.left - trim.right == front.width
        assert use.door.height - trim.top - trim.bottom == front.height
        cabinet = kitchen.cabinet(front.cabinet)
        assert (use.x, use.y) == (cabinet.left + use.opening.x, cabinet.y + use.opening.y)

    named = [use for use in uses if use.opening.closing.single and not use.decided]
    then = {use.door: use for use in schedule(accepted(kitchen, named)).doors_on_hand}
    for use in named:
        assert (then[use.door.label].front, then[use.door.label].trim) == (
            use.front.label, use.front.trim,
        )  # fmt: skip
