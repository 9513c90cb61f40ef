"""What stands along a wall in another order: laws over random walls, and a wall as drawn."""

from hypothesis import given
from hypothesis import strategies as st

from fronts.notebook import read_notebook
from fronts.rules.kitchen import Kitchen
from fronts.rules.practice import inches
from fronts.rules.run_order import moved, put_before
from fronts.rules.runs import on_walls, runs_of, standing_in, stood

WALL = """wall North
base 30 1/2 high 24 deep 4 up
B1 18 door left
appliance 24 dishwasher
B2 36 pair
filler 3
wall cabinets 30 high 12 deep 54 up
W1 18 door left
gap 24
upper appliance 30 hood
W2 36 pair
"""
KITCHEN = read_notebook(WALL, "in", inches(1, 16))


@st.composite
def walls(draw: st.DrawFn) -> Kitchen:
    """A wall of cabinets and things in both runs, some of them pinned farther along."""
    lines = draw(st.permutations([
        "B1 18 pair", "B2 24 pair", "B3 30 pair", "W1 18 pair", "W2 24 pair", "filler 3",
        "gap 12", "upper filler 2", "appliance 24", "upper appliance 30 hood",
    ]))  # fmt: skip
    text = ["wall North", "base 30 high 24 deep 4 up", "wall cabinets 30 high 12 deep 54 up"]
    for line in lines[: draw(st.integers(2, len(lines)))]:
        kind = {"B": ["base"], "W": ["wall cabinets"]}.get(line[0], [])
        text += [*kind, line]
    kitchen = read_notebook("\n".join(text), "in", inches(1, 16))
    placed = on_walls(runs_of(kitchen))
    pinned = draw(st.booleans())
    if placed and pinned:
        chosen = draw(st.sampled_from(placed))
        at = chosen.x + inches(draw(st.integers(0, 6)))
        for line in [one for one in text if one.startswith(chosen.what.label)]:
            label, width, face = line.split()
            text[text.index(line)] = f"{label} {width} at {at / inches(1)} {face}"
            kitchen = read_notebook("\n".join(text), "in", inches(1, 16))
    return kitchen


def order(kitchen: Kitchen) -> dict[str, list[str]]:
    """The labels of each run."""
    runs = runs_of(kitchen)["North"]
    return {run: [one.what.label for one in placed] for run, placed in runs.items()}


@given(walls(), st.data())
def test_two_change_places_and_nothing_else(kitchen: Kitchen, data: st.DataObject) -> None:
    """In their run; back again, and all stands as before. Later than the last is where it is."""
    before = order(kitchen)
    run = data.draw(st.sampled_from([run for run, labels in before.items() if labels]))
    at = data.draw(st.integers(0, len(before[run]) - 1))
    label = before[run][at]
    later = moved(kitchen, label, 1)
    if at == len(before[run]) - 1:
        assert later == kitchen
        return

    expected = list(before[run])
    expected[at], expected[at + 1] = expected[at + 1], expected[at]
    assert order(later) == {**before, run: expected}
    assert order(moved(later, label, -1)) == before
    assert {one.what.label for one in on_walls(runs_of(later))} == {
        one.what.label for one in on_walls(runs_of(kitchen))
    }


@given(walls(), st.data())
def test_the_two_take_up_the_same_stretch(kitchen: Kitchen, data: st.DataObject) -> None:
    """What stood before and behind them on the floor stands where it stood."""
    floor = runs_of(kitchen)["North"]["floor"]
    if len(floor) < 2:
        return
    at = data.draw(st.integers(0, len(floor) - 2))
    pair = floor[at : at + 2]
    after = runs_of(moved(kitchen, pair[0].what.label, 1))["North"]["floor"]

    assert after[at].x == pair[0].x
    assert after[at + 1].right == pair[1].right
    rest = [one.x for i, one in enumerate(after) if i not in (at, at + 1)]
    assert rest == [one.x for i, one in enumerate(floor) if i not in (at, at + 1)]


@given(walls(), st.data())
def test_put_before_another(kitchen: Kitchen, data: st.DataObject) -> None:
    """In its run, right before it; the others keep their order."""
    labels = data.draw(st.sampled_from([one for one in order(kitchen).values() if one]))
    before = data.draw(st.sampled_from(labels))
    these = data.draw(st.lists(st.sampled_from(labels), unique=True))
    these = [label for label in these if label != before]

    after = order(put_before(kitchen, these, before))
    run = next(run for run, standing in order(kitchen).items() if before in standing)
    rest = [label for label in labels if label not in these]
    at = rest.index(before)
    assert after == {**order(kitchen), run: [*rest[:at], *these, *rest[at:]]}


def test_a_wall_as_it_is_drawn() -> None:
    """The dishwasher goes before B1, the hood before the gap."""
    kitchen = moved(moved(KITCHEN, "A1", -1), "A2", -1)
    assert order(kitchen) == {"floor": ["A1", "B1", "B2", "F1"], "upper": ["W1", "A2", "G1", "W2"]}
    places = {one.label: one.x for one in standing_in(stood(kitchen))}
    assert (places["B1"], places["G1"]) == (inches(24), inches(48))
