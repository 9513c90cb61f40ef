"""The README's lines for production, run as they are printed, in a copy of the project."""

import re
from pathlib import Path

import pytest

from tests.production.running import answer_of, printed_lines, run, served

pytestmark = pytest.mark.thorough

SERVED = "\ngunicorn "


@pytest.mark.parametrize("exported", [True, False], ids=["as printed", "nothing exported"])
def test_the_lines_for_production_bring_up_a_site(exported: bool, site: Path) -> None:
    """Checked, migrated, collected and served: pages, and styles that are kept for good.

    What was collected before anybody said that the site is behind HTTPS serves it too.
    """
    export, *lines, server = printed_lines(SERVED)
    said = run([export, *lines] if exported else lines, site)

    assert export.startswith("export SHOPJOBS_HTTPS=1")
    assert "System check identified no issues" in said or not exported
    assert "Applying fronts.0001_squashed_0033_stock_entries... OK" in said
    assert re.search(r"\d+ static files copied .*post-processed", said)
    with served([export, server], site) as port:
        status, headers, page = answer_of(port, "/sign-in/")
        files = re.findall(r'(?:href|src)="(/(?:static|styles)/[^"]+)"', page)
        assert (status, "Strict-Transport-Security" in headers) == (200, True)
        assert {address.rpartition(".")[2] for address in files} == {"css", "js", "svg"}
        for address in files:
            status, headers, _ = answer_of(port, address)
            assert status == 200
            assert re.search(r"\.[0-9a-f]{12}\.(css|js|svg)$", address)
            assert "immutable" in headers["Cache-Control"]


@pytest.mark.parametrize(
    ("given", "header"),
    [
        ([], "max-age=31536000"),
        (["SUBDOMAINS"], "max-age=31536000; includeSubDomains"),
        (["SUBDOMAINS", "PRELOAD"], "max-age=31536000; includeSubDomains; preload"),
    ],
    ids=["by itself", "subdomains", "preload"],
)
def test_whoever_runs_the_site_says_how_far_https_binds(
    given: list[str], header: str, site: Path
) -> None:
    """Other names of the same domain are bound only where the settings say so (RFC 6797)."""
    export, *_ = printed_lines(SERVED)
    asks = (
        "import django; django.setup(); from django.test import Client;"
        "print(Client().get('/jobs/', secure=True, headers={'host': 'fronts.example'})"
        "['Strict-Transport-Security'])"
    )
    more = [f"export SHOPJOBS_HSTS_{name}=1" for name in given]

    said = run(
        [
            export,
            *more,
            "python manage.py check --deploy --fail-level WARNING",
            "export DJANGO_SETTINGS_MODULE=shopjobs.settings",
            f'python -c "{asks}" 2>/dev/null',
        ],
        site,
    )

    checked, sent = said.splitlines()[-2:]
    assert checked.startswith("System check identified no issues")
    assert sent == header
