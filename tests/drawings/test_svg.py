"""Numbers, words and names in a drawing."""

from xml.etree import ElementTree

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.drawings.svg import element, number, safe_id, words


@pytest.mark.parametrize(
    ("px", "written"),
    [(0, "0"), (1200, "12"), (1250, "12.5"), (1205, "12.05"), (-5, "-0.05"), (123456, "1234.56")],
)
def test_numbers_are_short_exact_decimals(px: int, written: str) -> None:
    """Hundredths come out as decimals with a point, no separators, no trailing zeros."""
    assert number(px) == written


@given(st.text())
def test_any_text_stays_text(text: str) -> None:
    """Whatever a person typed comes back as text, never as an element."""
    root = ElementTree.fromstring(element("text", {"aria-label": text}, words(text)))
    assert len(root) == 0
    for sign in text:
        kept = sign >= " " and not "\ud800" <= sign <= "\udfff" and sign not in "\ufffe\uffff"
        if kept and sign not in "\x7f\x85\u2028":
            assert sign in (root.text or "")


@given(st.lists(st.text(min_size=1), unique=True, max_size=5))
def test_ids_are_safe_and_stay_apart(labels: list[str]) -> None:
    """Different labels get different ids, of letters that need no escaping."""
    ids = [safe_id("front", each) for each in labels]
    assert len(set(ids)) == len(labels)
    assert all(each.replace("_", "").replace(".", "").replace("-", "").isalnum() for each in ids)
    assert all(each.isascii() for each in ids)


def test_a_plain_label_can_be_read_in_its_id() -> None:
    """Pages may link to a front by its label."""
    assert safe_id("front", "B1.a.2") == "front-B1.a.2"
