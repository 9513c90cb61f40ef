"""Lengths in the database and in forms: exact, or refused where they are typed."""

from decimal import Decimal
from fractions import Fraction

import pytest
from django.core.exceptions import ValidationError
from django.db import transaction
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from fronts.facts import LabelField, LengthField, MmField, MmListField, WordsField
from fronts.models import Cabinet, Stock
from fronts.rules.lengths import INCH
from fronts.services.saving import checked
from shopjobs.models import Job
from tests.factories import NOW, CabinetFactory
from tests.saying import stock_set

IN_A_TRANSACTION = settings(
    deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
SIZES = (
    st.integers(1, 128 * 700).map(lambda parts: Fraction(parts, 128) * INCH)
    | st.integers(1, 20_000 * 10**8).map(lambda parts: Fraction(parts, 10**8))
)  # fmt: skip


@IN_A_TRANSACTION
@given(SIZES)
def test_every_length_that_is_kept_comes_back_exactly(job: Job, size: Fraction) -> None:
    """Every 128th of an inch, and every decimal of 8 places, survives the database."""
    with transaction.atomic():
        cabinet = CabinetFactory.create(job=job, width=size)
        found = Cabinet.objects.get(pk=cabinet.pk).width
        transaction.set_rollback(True)

    assert size == found
    assert isinstance(found, Fraction)


def test_a_length_that_cannot_be_kept_is_refused_at_its_field(job: Job) -> None:
    """A third of a millimetre has no decimal; nothing is rounded in silence."""
    with pytest.raises(ValidationError) as refused:
        CabinetFactory.create(job=job, width=Fraction(1000, 3))

    assert list(refused.value.message_dict) == ["width"]
    assert "can't be kept exactly" in refused.value.message_dict["width"][0]
    assert not Cabinet.objects.exists()


@pytest.mark.parametrize(
    ("value", "field", "words"),
    [
        (Fraction(0), MmField(zero=False), "above zero"),
        (Fraction(-1), MmField(), "negative"),
        (Fraction(20_001), MmField(), "20 m"),
        (Fraction(-20_001), MmField(signed=True), "20 m"),
        (25.4, MmField(), "not an exact number"),
        ("wide", MmField(), "not a number"),
        ("NaN", MmField(), "not a number"),
        ("Infinity", MmField(), "not a number"),
    ],
)
def test_what_is_no_such_length_is_refused(
    value: object, field: MmField[Fraction, Fraction], words: str
) -> None:
    """Sizes are above zero, within 20 m, and never binary floats."""
    with pytest.raises(ValidationError) as refused:
        field.clean(value, None)

    assert words in refused.value.messages[0]


def test_a_place_may_be_negative() -> None:
    """A signed length takes both directions."""
    assert Fraction(-1) == MmField(signed=True).clean(-1, None)


def test_a_field_is_rebuilt_as_it_was() -> None:
    """What a migration writes down makes the same field again, its default included."""
    field = MmField(signed=True, zero=False, default=Fraction(35))
    _, _, arguments, options = field.deconstruct()
    again = MmField(*arguments, **options)

    assert (True, False, Fraction(35)) == (again.signed, again.zero, again.get_default())
    assert Decimal(35) == options["default"]


def test_a_list_keeps_its_order(job: Job) -> None:
    """As somebody wrote it down, not from the shortest up."""
    lengths = (Fraction(127), INCH / 128, Fraction(19))
    stock_set(owner=job, slide_lengths=lengths, at=NOW)

    assert lengths == Stock.objects.get().slide_lengths


def test_every_place_of_a_stock_has_a_length(job: Job) -> None:
    """A blank, which older heights had, is none."""
    with pytest.raises(ValidationError) as refused:
        checked(Stock(shop=job.shop, slide_lengths=[Fraction(127), None]))

    assert set(refused.value.message_dict) == {"slide_lengths"}


@pytest.mark.parametrize("lengths", [(), (None,), (Fraction(1), Fraction(1, 2))])
def test_a_list_goes_out_as_text_and_back(lengths: tuple[Fraction | None, ...]) -> None:
    """No list is taken for another: an empty one is not one blank."""
    field = MmListField()

    assert lengths == field.to_python(field.get_prep_value(lengths))


def test_a_list_refuses_what_is_no_size() -> None:
    """Nothing and a length that can't be kept are refused in a list too."""
    for wrong in (Fraction(0), Fraction(1, 3)):
        with pytest.raises(ValidationError):
            MmListField().clean((wrong,), None)


@pytest.mark.parametrize("text", ["two\nlines", "nul\0", "bell\a", "separator\u2028"])
def test_words_stay_on_one_line(text: str) -> None:
    """What no line of print shows is refused before a database has to."""
    with pytest.raises(ValidationError):
        WordsField(max_length=40).clean(text, None)


def test_labels_have_no_space_around_them() -> None:
    """Two labels differ in what is seen."""
    with pytest.raises(ValidationError):
        LabelField().clean(" B1", None)

    assert LabelField().clean("B 1", None) == "B 1"


class TestLengthField:
    """The input in which a person types a length."""

    @pytest.mark.parametrize(
        ("typed", "unit", "length"),
        [
            ("23 5/8", "in", Fraction(189, 8) * INCH),
            ("600", "mm", Fraction(600)),
            ("600 mm", "in", Fraction(600)),
            ("1' 11 5/8\"", "mm", Fraction(189, 8) * INCH),
        ],
    )
    def test_reads_what_people_say(self, typed: str, unit: str, length: Fraction) -> None:
        """A bare number is in the job's unit, another unit is said."""
        assert length == LengthField(unit=unit).clean(typed)

    @pytest.mark.parametrize("typed", ["wide", "1/0", "-3", "0", "nan", "1e400", "90 ft", "1/3 mm"])
    def test_refuses_with_words_about_what_was_typed(self, typed: str) -> None:
        """The message is for the field, and the error is never the program's."""
        with pytest.raises(ValidationError) as refused:
            LengthField(unit="in").clean(typed)

        assert len(refused.value.messages) == 1

    def test_a_place_may_be_nothing_or_negative(self) -> None:
        """Where the field says so."""
        field = LengthField(unit="in", signed=True, zero=True)

        assert [-INCH, Fraction(0)] == [field.clean("-1"), field.clean("0")]

    def test_shows_a_kept_length_in_the_unit_and_typed_text_as_typed(self) -> None:
        """What was refused is shown again unchanged."""
        field = LengthField(unit="in")

        assert field.prepare_value(Fraction(189, 8) * INCH) == "23 5/8"
        assert field.prepare_value("23 5//8") == "23 5//8"

    def test_may_be_left_empty_only_where_it_is_not_required(self) -> None:
        """An empty input is None, not nothing."""
        assert LengthField(unit="in", required=False).clean("  ") is None
        with pytest.raises(ValidationError):
            LengthField(unit="in").clean(" ")

    @pytest.mark.parametrize(("unit", "mode"), [("in", "text"), ("mm", "decimal")])
    def test_asks_for_the_keyboard_that_the_unit_needs(self, unit: str, mode: str) -> None:
        """Fractions need a slash and a space; decimals don't."""
        attrs = LengthField(unit=unit).widget.attrs

        assert mode == attrs["inputmode"]
        assert attrs["autocomplete"] == "off"

    def test_the_same_length_in_other_words_is_no_change(self) -> None:
        """`1 in` is 25.4 mm."""
        field = LengthField(unit="in")

        assert not field.has_changed(INCH, "25.4 mm")
        assert field.has_changed(INCH, "1 1/16")
        assert field.has_changed(INCH, "wide")
