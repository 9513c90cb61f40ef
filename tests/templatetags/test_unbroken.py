"""Sizes that no line breaks in two."""

import pytest
from django.utils.html import escape
from django.utils.safestring import SafeString

from fronts.templatetags.unbroken import NO_BREAK, unbroken


@pytest.mark.parametrize(
    ("said", "kept"),
    [
        ("1 1/8 in", "1_1/8_in"),
        ("18 × 30 1/2 × 24", "18 × 30_1/2 × 24"),
        ("B1 1/2 up", "B1_1/2 up"),
        ("2 of 96 in, 5 °C, 5 in all", "2 of 96_in, 5_°C, 5_in all"),
        ("3 inner doors", "3 inner doors"),
    ],
)
def test_a_number_holds_its_fraction_and_its_unit(said: str, kept: str) -> None:
    """Only the spaces inside a size hold; a line may break at all others."""
    assert unbroken(said) == kept.replace("_", NO_BREAK)


def test_what_was_escaped_stays_so() -> None:
    """A label from people is escaped once, whether it comes through the filter or not."""
    assert unbroken(SafeString(escape("<b> 1 1/2"))) == f"&lt;b&gt; 1{NO_BREAK}1/2"
