"""Numbers that are no lengths: what a person may type survives form, database and file exactly."""

from fractions import Fraction

import pytest
from django.core.exceptions import ValidationError
from django.db import transaction
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from fronts.facts.form_fields import form_field
from fronts.jobfile import read, write
from fronts.models import LiftItem
from fronts.rules.facts import single_fact
from fronts.rules.items import Hardware, SlideItem
from fronts.rules.items import LiftItem as LiftFacts
from fronts.rules.lengths import Mm
from fronts.services.hardware import items_set
from fronts.snapshot.hardware import hardware_in_force
from shopjobs.models import Shop
from tests.factories import NOW
from tests.rules.small_kitchens import kitchen

IN_A_TRANSACTION = settings(
    max_examples=60, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)


@IN_A_TRANSACTION
@given(st.integers(1, 99_999), st.sampled_from(("in", "mm")))
@example(7050, "in")
def test_a_weight_is_kept_as_it_is_typed(shop: Shop, hundredths: int, unit: str) -> None:
    """To a hundredth of a pound (0.45359237 kg exactly, 1959 agreement) or of a kilogram."""
    field = form_field(single_fact(SlideItem, "load_kg"), required=True)
    field.speak(unit)  # type: ignore[attr-defined]
    typed = f"{hundredths // 100}.{hundredths % 100:02d}"
    pound = Fraction("0.45359237") if unit == "in" else 1
    weight = field.clean(typed)
    assert weight == Fraction(hundredths, 100) * pound

    slide = SlideItem("S-1", "side", (Mm(300),), weight)
    with transaction.atomic():
        items_set(owner=shop, kind=SlideItem, items=[slide], at=NOW)
        held = hardware_in_force(shop)
        transaction.set_rollback(True)

    assert held.slides == (slide,)
    assert read(write(kitchen(hardware=Hardware(slides=(slide,))))).hardware.slides == (slide,)
    assert field.clean(field.prepare_value(weight)) == weight


@pytest.mark.parametrize("typed", ["1/3", "0.12345678901"])
def test_what_cannot_be_kept_is_refused_where_it_is_typed(typed: str) -> None:
    """And by the column, whoever writes it."""
    field = form_field(single_fact(LiftFacts, "least"), required=True)
    with pytest.raises(ValidationError, match="can't be kept exactly"):
        field.clean(typed)
    with pytest.raises(ValidationError, match="can't be kept exactly"):
        LiftItem._meta.get_field("least").clean(Fraction(typed), None)
