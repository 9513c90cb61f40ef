"""Photos go along in a shop's file: what is in them, under their names, and nobody else's."""

from base64 import b64encode
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest

from fronts.models import WallPhoto
from fronts.services.photos import photo_add
from shopjobs.models import Job, Shop
from shopjobs.services.refused import Refused
from shopjobs.services.shop_files.exporting import shop_export
from shopjobs.services.shop_files.importing import shop_import
from shopjobs.services.shop_files.lines import read_lines, write_lines
from tests.factories import NOW
from tests.pictures import picture_put

TAKEN = b"as a camera makes it"


@pytest.fixture(autouse=True)
def _uploads(settings: Any, tmp_path: Path) -> None:
    settings.MEDIA_ROOT = str(tmp_path / "here")


@pytest.fixture
def file(shop: Shop, job: Job) -> bytes:
    """The file of a shop with one photo."""
    photo_add(job=job, wall="North", image=picture_put(job=job, picture=TAKEN), at=NOW)
    to = BytesIO()
    shop_export(shop=shop, to=to)
    return to.getvalue()


def with_photo(file: bytes, **said: Any) -> BytesIO:
    """The file, its photo saying this."""
    lines = list(read_lines(BytesIO(file)))
    for line in lines:
        for part in line if isinstance(line, list) else []:
            if isinstance(part, dict) and isinstance(part.get("image"), dict):
                part["image"] |= said
    to = BytesIO()
    write_lines(to, iter(lines))
    to.seek(0)
    return to


def test_a_photo_is_there_in_another_installation(
    file: bytes, settings: Any, tmp_path: Path
) -> None:
    """Under the name that its row and history say."""
    name = WallPhoto.objects.get().image.name
    settings.MEDIA_ROOT = str(tmp_path / "elsewhere")
    arrival = shop_import(file=BytesIO(file), name="Cedar Yard")
    photo = WallPhoto.objects.get(job__shop=arrival.shop)
    assert (photo.image.name, photo.image.read()) == (name, TAKEN)
    photo.image.close()


def test_a_photo_whose_file_is_gone_is_none(shop: Shop, job: Job) -> None:
    """The rest of the shop goes along all the same."""
    image = picture_put(job=job, picture=TAKEN)
    photo = photo_add(job=job, wall="North", image=image, at=NOW)
    Path(photo.image.path).unlink()
    to = BytesIO()
    shop_export(shop=shop, to=to)
    to.seek(0)
    arrival = shop_import(file=to, name="Cedar Yard")
    assert WallPhoto.objects.get(job__shop=arrival.shop).image.name == ""


NO_NAMES = ["../../db.sqlite3", "/etc/passwd", "photos/1/x.jpg", "photos/1/../0123456789abcdef.a"]


@pytest.mark.parametrize("name", NO_NAMES)
def test_no_name_leads_elsewhere(name: str, file: bytes) -> None:
    """A file that somebody made up writes nowhere and reads nothing."""
    with pytest.raises(Refused, match="no name of an uploaded file"):
        shop_import(file=with_photo(file, name=name), name="Cedar Yard")


def test_nobody_gets_anothers_photo(file: bytes) -> None:
    """Who names a file that is here must have what is in it."""
    other = b64encode(b"something else").decode()
    with pytest.raises(Refused, match="another file has this name"):
        shop_import(file=with_photo(file, content=other), name="Cedar Yard")
