"""What differs between two sheets, figure by figure; short names as people type them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.fingerprint import read_short_name, sheet_code
from fronts.rules.shown_figures import (
    FigureChanged,
    ShownFigure,
    changed_figures,
    under_label,
)

FIGURES = st.lists(
    st.builds(
        ShownFigure,
        st.sampled_from(["B1", "B1.a"]),
        st.sampled_from(["width", "stop", "order of work"]),
        st.sampled_from(["15", "15 1/2", "16"]),
    ),
    max_size=8,
)


def shown(*figures: str) -> tuple[ShownFigure, ...]:
    """`B1.a width=15 1/2`, each."""
    return tuple(
        ShownFigure(of, name, says)
        for of, _, rest in (each.partition(" ") for each in figures)
        for name, _, says in (rest.partition("="),)
    )


def told(changed: tuple[FigureChanged, ...]) -> list[str]:
    """`B1.a width: 15 1/2 → 15 3/8`."""
    return [f"{each.of} {each.name}: {each.was} → {each.now}" for each in changed]


CASES = [
    ("nothing", ["B1.a width=15"], ["B1.a width=15"], []),
    ("a size", ["B1.a width=15 1/2"], ["B1.a width=15 3/8"], ["B1.a width: 15 1/2 → 15 3/8"]),
    ("another front's", ["B1.a width=15"], ["B1.b width=15"],
     ["B1.a width: 15 → ", "B1.b width:  → 15"]),
    ("a stop that came", ["B1 label=B1"], ["B1 label=B1", "B1 stop=too wide"],
     ["B1 stop:  → too wide"]),
    ("one of two stops", ["B1 stop=low", "B1 stop=wide"], ["B1 stop=wide"], ["B1 stop: low → "]),
    ("a step among steps", ["B1 work=saw", "B1 work=bore", "B1 work=screw"],
     ["B1 work=saw", "B1 work=clamp", "B1 work=screw"], ["B1 work: bore → clamp"]),
    ("one said twice", ["B1.a hole=3", "B1.a hole=3"], ["B1.a hole=3"], ["B1.a hole: 3 → "]),
    ("in the later order", ["B1 a=1", "B1 b=1", "B1 c=1"], ["B1 c=2", "B1 a=2"],
     ["B1 c: 1 → 2", "B1 a: 1 → 2", "B1 b: 1 → "]),
]  # fmt: skip


@pytest.mark.parametrize(
    ("was", "now", "expected"), [case[1:] for case in CASES], ids=[case[0] for case in CASES]
)
def test_what_changed_is_told(was: list[str], now: list[str], expected: list[str]) -> None:
    """Each figure once, before and after."""
    assert told(changed_figures(shown(*was), shown(*now))) == expected


@given(FIGURES, FIGURES)
def test_one_code_is_one_sheet(was: list[ShownFigure], now: list[ShownFigure]) -> None:
    """Nothing has changed under one code; there and back the same figures are told."""
    there, back = changed_figures(was, now), changed_figures(now, was)
    if sheet_code(was) == sheet_code(now):
        assert there == ()
    assert sorted(told(there)) == sorted(
        told(tuple(FigureChanged(each.of, each.name, each.now, each.was) for each in back))
    )
    if not there:
        assert sorted(map(repr, was)) == sorted(map(repr, now))


@pytest.mark.parametrize(
    ("typed", "code"),
    [
        ("3f9a-07c2", "3f9a-07c2"),
        (" 3F9A 07C2 ", "3f9a-07c2"),
        ("3f9a07c2", "3f9a-07c2"),
        ("3f9a–o7c2", "3f9a-07c2"),
        ("3f9al7c2", "3f9a-17c2"),
        ("", None),
        ("3f9a-07c", None),
        ("3f9a-07c22", None),
        ("3g9a-07c2", None),
        ("३f9a-07c2", None),  # no figure of ours, though Python counts it as one
    ],
)
def test_a_code_is_read_as_people_type_it(typed: str, code: str | None) -> None:
    """Any hyphen or none, either case, a letter for the figure that looks like it."""
    assert read_short_name(typed) == code


def test_a_cabinet_called_otherwise_keeps_its_figures() -> None:
    """Its own, its openings' and its fronts'; B12 is no front of B1."""
    was = shown("B1 label=B1", "B1.a.1 width=15", "B12 stop=wide")
    assert under_label(was, "B1", "B7") == shown("B7 label=B1", "B7.a.1 width=15", "B12 stop=wide")
