"""Findings lead to the short page of the shop's standard that they go by."""

from collections.abc import Callable
from pathlib import Path

import pytest
from django.test import Client

from fronts.pages.shared.standard_links import PAGE_OF, standard_address
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import OpeningFactory

SignIn = Callable[[Person], Client]
RULES = Path(__file__).resolve().parents[3] / "fronts" / "rules"


@pytest.mark.parametrize("code", PAGE_OF)
def test_each_code_is_a_findings_and_its_page_is_there(
    code: str, owner: Person, signed_in: SignIn
) -> None:
    """A finding that is called otherwise, or a page that moves, is told here."""
    files = RULES.glob("findings*.py")
    said = "".join(file.read_text(encoding="utf-8") for file in files)

    assert f'"{code}"' in said
    assert signed_in(owner).get(standard_address(code) or "").status_code == 200


def test_a_stop_leads_the_owner_to_the_standard(
    job: Job, owner: Person, office: Person, signed_in: SignIn
) -> None:
    """Nobody said how far fronts lap: the owner may for all jobs, the office for this one."""
    OpeningFactory.create(cabinet__job=job)
    address = f"/jobs/{job.pk}/order/"

    links = dom(signed_in(owner).get(address)).one(".stops").addresses
    assert any(link.startswith("/shop/standard/lap/") for link in links)
    links = dom(signed_in(office).get(address)).one(".stops").addresses
    assert not any(link.startswith("/shop/") for link in links)
    assert any(link.startswith(f"/jobs/{job.pk}/standard/") for link in links)
