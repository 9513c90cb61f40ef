"""An order of work in two columns: as the typesetter balances it, where every step is one line."""

import pytest

from fronts.sheets.step_columns import step_columns

LONG = "Cabinet fixed to the wall or weighted before it is loaded with anything: it can tip."


@pytest.mark.parametrize(
    ("steps", "left", "right"),
    [
        ("", "", ""),
        ("a", "a", ""),
        ("ab", "a", "b"),
        ("abc", "ab", "c"),
        ("abcdefgh", "abcd", "efgh"),
    ],
)
def test_half_of_the_steps_stand_on_the_left(steps: str, left: str, right: str) -> None:
    """Rounded up; the right ones go on counting."""
    found = step_columns([*steps])
    assert (found.left, found.right) == (tuple(left), tuple(right))
    assert found.then == len(left) + 1


def test_a_step_that_may_take_two_lines_leaves_it_to_the_typesetter() -> None:
    """How many it takes depends on the paper."""
    assert step_columns(["a", LONG, "b"]).right == ()
