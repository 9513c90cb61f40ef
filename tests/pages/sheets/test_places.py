"""How many sheets are made at a time while their pages wait."""

from collections.abc import Callable
from contextlib import ExitStack

import pytest
from django.test import Client

from fronts.sheets.pdf import PrintingBusyError
from fronts.sheets.places import PLACES, PLACES_A_SHOP, printing_place
from shopjobs.models import Job, Person
from tests.dom import dom

SignIn = Callable[[Person], Client]


def test_a_shop_that_opens_many_sheets_reads_that_they_come(
    job: Job, installer: Person, signed_in: SignIn, caplog: pytest.LogCaptureFixture
) -> None:
    """The page asks again by itself, and no thread waits; then the sheet is there.

    No failure is logged, since nothing failed.
    """
    client, path = signed_in(installer), f"/jobs/{job.pk}/sheets/hardware/"
    with ExitStack() as taken:
        for _ in range(PLACES_A_SHOP):
            taken.enter_context(printing_place(job.shop_id))
        answer = client.get(path)

    assert (answer.status_code, answer["Retry-After"]) == (503, "2")
    assert dom(answer).one("head meta[http-equiv]").attribute("content") == "2"
    assert "This page tries again by itself" in dom(answer).words
    assert not caplog.records
    assert client.get(path).status_code == 200


def test_another_shop_still_has_a_place() -> None:
    """Until all of the process's are taken; each comes back, whatever became of the sheet."""
    with ExitStack() as taken:
        for _ in range(PLACES_A_SHOP):
            taken.enter_context(printing_place(1))
        for shop in range(2, 2 + PLACES - PLACES_A_SHOP):
            taken.enter_context(printing_place(shop))
        with pytest.raises(PrintingBusyError), printing_place(99):
            raise AssertionError

    with pytest.raises(ZeroDivisionError), printing_place(1):
        _ = 1 / 0
    with printing_place(1), printing_place(1):
        pass
