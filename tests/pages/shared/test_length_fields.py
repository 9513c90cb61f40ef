"""Sizes as people type them into a form."""

from fractions import Fraction

import pytest
from django.core.exceptions import ValidationError

from fronts.facts.size_form_fields import Size, Sizes
from fronts.rules.practice import inches


def size(unit: str) -> Size:
    """A field that speaks the unit."""
    field = Size(label="Width")
    field.speak(unit)
    return field


def sizes(unit: str, *, blanks: bool = False) -> Sizes:
    """A field for a list, in the unit."""
    field = Sizes(blanks=blanks)
    field.speak(unit)
    return field


@pytest.mark.parametrize(
    ("typed", "unit", "length"),
    [
        ("23 5/8", "in", inches(189, 8)),
        ('23-5/8"', "in", inches(189, 8)),
        ("23⅝", "in", inches(189, 8)),
        ("600", "in", inches(600)),
        ("600 mm", "in", Fraction(600)),
        ("60cm", "mm", Fraction(600)),
        ("1' 11 5/8\"", "mm", inches(189, 8)),
    ],
)
def test_a_bare_number_is_in_the_forms_unit(typed: str, unit: str, length: Fraction) -> None:
    """A length is read in the unit that the form speaks, unless it names its own."""
    assert size(unit).clean(typed) == length


@pytest.mark.parametrize("typed", ["23 1/0", "1/2/3", "23,5", "two", "-4", "0", "1e400", "nan"])
def test_what_is_no_size_is_refused_in_a_sentence(typed: str) -> None:
    """The message quotes what was typed and ends as a sentence does."""
    with pytest.raises(ValidationError) as refused:
        size("in").clean(typed)

    assert typed in refused.value.messages[0]
    assert refused.value.messages[0].endswith(".")


def test_an_empty_size_is_asked_for_by_its_name() -> None:
    """The message names the size and shows how one is typed."""
    with pytest.raises(ValidationError) as refused:
        size("in").clean("")

    assert refused.value.messages == ["Enter the width, like 23 5/8."]


@pytest.mark.parametrize("typed", ["1, 1 1/4, 2", "1; 1 1/4; 2", "1\t1 1/4\t2", "1\n1 1/4\n2"])
def test_a_list_takes_commas_lines_and_cells(typed: str) -> None:
    """Lengths may stand between commas, one to a line, or in cells that were pasted."""
    assert sizes("in").clean(typed) == (inches(1), inches(5, 4), inches(2))


def test_a_list_with_blanks_keeps_their_places() -> None:
    """A place that is left empty stays empty, and is shown so again."""
    field = sizes("in", blanks=True)

    assert field.clean("6, ,") == (inches(6), None, None)
    assert field.prepare_value((inches(6), None, None)) == "6, , "


def test_a_list_without_blanks_refuses_them() -> None:
    """Two commas in a row are a slip of the finger."""
    with pytest.raises(ValidationError, match="Nothing stands at place 2"):
        sizes("in").clean("1,,2")


def test_a_list_shows_what_it_reads() -> None:
    """What is shown reads back to the same lengths."""
    field = sizes("mm")
    lengths = (Fraction(20), Fraction("25.5"), inches(1, 3))

    assert field.clean(field.prepare_value(lengths[:2])) == lengths[:2]
