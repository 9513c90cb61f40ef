"""Amounts as people write them, and as they are shown."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.money import (
    MINOR_DIGITS,
    NoAmount,
    Price,
    amount_text,
    read_amount,
    read_price,
)


@pytest.mark.parametrize(
    ("text", "amount"),
    [
        ("12.50", "12.50"),
        ("12,50", "12.50"),
        (" 12 ", "12"),
        ("1,234.50", "1234.50"),
        ("1.234,50", "1234.50"),
        ("1 234,50", "1234.50"),
        ("1\N{NO-BREAK SPACE}234.50", "1234.50"),
        ("1’234.50", "1234.50"),
        ("1,234,567", "1234567"),
        ("1.234.567,8", "1234567.8"),
        ("0,125", "0.125"),
        ("1.234", "1.234"),
        ("12345", "12345"),
    ],
)
def test_marks_of_many_countries_are_read(text: str, amount: str) -> None:
    """With a comma or a point for decimals, and marks of thousands or none."""
    assert read_amount(text) == Decimal(amount)


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("1,234", "1234 or 1.234"),
        ("", "12.50"),
        ("-3", "12.50"),
        ("twelve", "12.50"),
        ("1e5", "12.50"),
        ("NaN", "12.50"),
        ("١٢", "12.50"),
        ("1,2,3", "thousands"),
        ("12,34.5", "thousands"),
        ("1..2", "thousands"),
        ("9" * 40, "too long"),
        ("1\0", "12.50"),
    ],
)
def test_what_is_no_amount_is_refused(text: str, told: str) -> None:
    """With what may stand there."""
    with pytest.raises(NoAmount, match=told):
        read_amount(text)


@pytest.mark.parametrize(
    ("text", "stated", "usual", "shown"),
    [
        ("12.5", "", "USD", "12.50 USD"),
        ("12.5", "eur", "USD", "12.50 EUR"),
        ("€ 12,50", "", "USD", "12.50 EUR"),
        ("12.50 GBP", "", "USD", "12.50 GBP"),
        ("CHF 1’250", "", "USD", "1250.00 CHF"),
        ("$5", "", "CAD", "5.00 CAD"),
        ("$5", "", "EUR", "5.00 USD"),
        ("¥1200", "", "JPY", "1200 JPY"),
        ("1.25", "KWD", "USD", "1.250 KWD"),
    ],
)
def test_a_price_has_its_currency(text: str, stated: str, usual: str, shown: str) -> None:
    """From its column, from the sign or code beside it, or as the shop usually pays."""
    assert str(read_price(text, stated=stated, usual=usual)) == shown


@pytest.mark.parametrize(
    ("text", "stated", "told"),
    [
        ("12.505", "EUR", "EUR has at most 2 decimals"),
        ("12.5", "JPY", "JPY has no decimals"),
        ("€ 12", "USD", "EUR stands beside the price, USD in its column"),
        ("12", "XXQ", "none of the currencies"),
        ("100000000", "", "too much"),
    ],
)
def test_a_price_that_cannot_be_is_refused(text: str, stated: str, told: str) -> None:
    """No coin is that small, no two currencies at once."""
    with pytest.raises(NoAmount, match=told):
        read_price(text, stated=stated, usual="USD")


@given(st.sampled_from(sorted(MINOR_DIGITS)), st.integers(min_value=0, max_value=99_999_999))
def test_what_is_shown_reads_back_to_the_coin(currency: str, coins: int) -> None:
    """Every price of every currency."""
    price = Price(Decimal(coins).scaleb(-MINOR_DIGITS[currency]), currency)

    assert read_price(amount_text(price.amount, currency), stated=currency, usual="USD") == price
    assert read_price(str(price), usual="USD") == price
