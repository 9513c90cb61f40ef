"""What is sent compressed."""

import gzip
from collections.abc import Callable
from contextlib import closing

import pytest
from django.core.management import call_command
from django.http import HttpResponse
from django.test import Client, RequestFactory
from django.urls import reverse

from shopjobs.bootstrap import ROOT
from shopjobs.middleware import Compression
from shopjobs.models import Job, Person, Shop

DEMO = ROOT / "fixtures" / "demo.job.json"
PACKED = {"Accept-Encoding": "gzip, deflate, br"}


@pytest.fixture
def kitchen(shop: Shop) -> Job:
    """A job with cabinets, from a file."""
    call_command("import_job", str(DEMO), shop=shop.name)
    return Job.objects.get(shop=shop)


def test_a_page_is_sent_compressed(
    kitchen: Job, owner: Person, signed_in: Callable[[Person], Client]
) -> None:
    """A browser gets a page in a quarter of its bytes at most, and it is the same page."""
    client = signed_in(owner)
    address = reverse("fronts:job-measure", args=[kitchen.pk])
    plain, packed = client.get(address), client.get(address, headers=PACKED)

    assert not plain.has_header("Content-Encoding")
    assert packed["Content-Encoding"] == "gzip"
    assert "Accept-Encoding" in packed["Vary"]
    assert len(packed.content) * 4 < len(plain.content)
    assert "<h1>" in gzip.decompress(packed.content).decode()
    assert len(gzip.decompress(packed.content)) == len(plain.content)


def test_a_page_has_another_length_each_time(
    kitchen: Job, owner: Person, signed_in: Callable[[Person], Client]
) -> None:
    """How well a page packs tells nothing: chance is added to it, and tokens are masked."""
    client = signed_in(owner)
    address = reverse("fronts:job-measure", args=[kitchen.pk])

    lengths = {len(client.get(address, headers=PACKED).content) for _ in range(6)}

    assert len(lengths) > 1


@pytest.mark.parametrize(
    ("content_type", "packed"),
    [
        ("text/html; charset=utf-8", True),
        ("application/json", True),
        ("image/svg+xml", True),
        ("text/csv", True),
        ("application/pdf", False),
        ("image/png", False),
    ],
)
def test_only_text_is_compressed(content_type: str, packed: bool) -> None:
    """Pages, files and drawings are text; sheets and photographs are compressed already."""
    answer = HttpResponse(b"oak " * 1000, content_type=content_type)
    request = RequestFactory().get("/", headers=PACKED)

    sent = Compression(lambda request: answer).process_response(request, answer)

    assert sent.has_header("Content-Encoding") is packed


def test_files_are_compressed_but_no_part_of_one(db: None) -> None:
    """Scripts too, where they are not yet; a part that is asked for is what the file has there."""
    client = Client()
    file = (ROOT / "static/js/drafts.js").read_bytes()
    with closing(client.get("/static/js/drafts.js", headers=PACKED)) as packed:
        assert packed["Content-Encoding"] == "gzip"
        assert gzip.decompress(packed.getvalue()) == file
    with closing(
        client.get("/static/js/drafts.js", headers={**PACKED, "Range": "bytes=10-309"})
    ) as part:
        assert (part.status_code, part.getvalue()) == (206, file[10:310])
