"""Out and in again is the same kitchen; whatever comes in is read or refused."""

import json
from dataclasses import replace
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from fronts.jobfile import Fault, Refused, read, read_bytes, write
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import INCH
from tests.kitchen_files import OLDER, SAMPLES, small
from tests.strategies import kitchens
from tests.strategies_of_hardware import equipped_kitchens

SLOW = settings(deadline=None, suppress_health_check=[HealthCheck.too_slow], max_examples=120)
FUZZ = settings(deadline=None, max_examples=400)
LEAVES = (
    st.none()
    | st.booleans()
    | st.integers(-(10**40), 10**40)
    | st.floats()
    | st.text(max_size=60)
    | st.sampled_from(("1/0", "1e400", "23 5/8", "-1", "0", "choose", "drawers", "pair", "open"))
)
JSONISH = st.recursive(
    LEAVES,
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=9), inner),
    max_leaves=6,
)


@SLOW
@given(kitchens() | equipped_kitchens())
def test_what_is_written_reads_back_exactly(kitchen: Kitchen) -> None:
    """Nothing is lost on the way, nothing rounded, nothing filled in."""
    assert read(write(kitchen)) == kitchen


@given(st.fractions(min_value=-3000, max_value=3000, max_denominator=10**6), st.booleans())
def test_no_length_is_too_odd_to_write(place: Fraction, metric: bool) -> None:
    """A third of an inch and a 128th survive, in either unit."""
    kitchen = read(json.dumps(small()))
    cabinet = replace(kitchen.cabinets[0], x=place * INCH / 128, y=place)
    job = replace(kitchen.job, unit="mm" if metric else "in")
    odd = replace(kitchen, job=job, cabinets=(cabinet,))
    assert read(write(odd)) == odd


@pytest.mark.parametrize("sample", SAMPLES, ids=lambda path: path.name)
def test_a_tidy_file_is_written_as_it_was(sample: Path) -> None:
    """The same keys in the same order with the same words: a difference shows what changed."""
    text = sample.read_text(encoding="utf-8")
    assert write(read(text)) == text


@pytest.mark.parametrize("older", OLDER, ids=lambda path: path.name)
def test_an_older_file_holds_the_same_kitchen(older: Path) -> None:
    """Version 1 decides about an opening's fronts together; it is written as version 2."""
    newer = next(sample for sample in SAMPLES if sample.name == older.name)
    kitchen = read(older.read_text(encoding="utf-8"))

    assert json.loads(older.read_text(encoding="utf-8"))["version"] == 1
    assert kitchen == read(newer.read_text(encoding="utf-8"))
    assert json.loads(write(kitchen))["version"] == 2


def test_names_stay_readable() -> None:
    """Letters beyond ASCII are written as letters."""
    text = json.dumps(small() | {"job": {"number": "1", "client": "Åsa Löf", "unit": "mm"}})
    assert "Åsa Löf" in write(read(text))


def places_in(tree: Any, way: tuple[Any, ...] = ()) -> list[tuple[Any, ...]]:
    """The way to every value in a tree."""
    keys: list[Any] = []
    if isinstance(tree, dict):
        keys = list(tree)
    elif isinstance(tree, list):
        keys = list(range(len(tree)))
    found = [(*way, key) for key in keys]
    return [*found, *(place for key in keys for place in places_in(tree[key], (*way, key)))]


@FUZZ
@given(st.sampled_from([*SAMPLES, *OLDER]), st.data())
def test_a_file_with_anything_in_it_is_read_or_refused(sample: Path, data: st.DataObject) -> None:
    """Whatever stands in a key's place: a kitchen that can be written, or faults with paths."""
    tree = json.loads(sample.read_text(encoding="utf-8"))
    places = places_in(tree)
    for _ in range(data.draw(st.integers(1, 3))):
        at = tree
        *way, last = data.draw(st.sampled_from(places))
        try:
            for step in way:
                at = at[step]
            at[last] = data.draw(JSONISH)
        except (TypeError, KeyError, IndexError):
            continue  # an earlier change took this place away
    _is_read_or_refused(json.dumps(tree))


@FUZZ
@given(
    st.sampled_from([*SAMPLES, *OLDER]),
    st.integers(0, 5000),
    st.integers(0, 60),
    st.text(max_size=5),
)
def test_a_torn_file_is_read_or_refused(sample: Path, at: int, cut: int, put: str) -> None:
    """A file with a hole in it, or with something else in the hole."""
    text = sample.read_text(encoding="utf-8")
    _is_read_or_refused(text[:at] + put + text[at + cut :])


@FUZZ
@given(st.binary(max_size=200) | st.text(max_size=200).map(lambda text: text.encode("utf-16")))
def test_any_bytes_are_read_or_refused(data: bytes) -> None:
    """A picture, an archive, a file of another program."""
    with pytest.raises(Refused) as refused:
        read_bytes(data)
    assert refused.value.faults


def _is_read_or_refused(text: str) -> None:
    kitchen, faults = _tried(text)
    if kitchen is not None:
        assert read(write(kitchen)) == kitchen
    else:
        assert faults
        assert all(each.path and each.found and each.wanted for each in faults)
        assert all(str(each).isprintable() for each in faults)


def _tried(text: str) -> tuple[Kitchen | None, tuple[Fault, ...]]:
    try:
        return read(text), ()
    except Refused as refused:
        return None, refused.faults
