"""What the environment decides."""

import stat
from pathlib import Path

import pytest
from django.core.exceptions import ImproperlyConfigured

from shopjobs.environment import (
    Environment,
    embedded_database,
    keep_private,
    read_environment,
    write_private,
)

KEY = "k" * 60


def _read(tmp_path: Path, **given: str) -> Environment:
    environ = {"XDG_DATA_HOME": str(tmp_path / "data"), **given}
    return read_environment(environ, root=tmp_path / "project")


def test_without_a_word_the_site_is_private_and_embedded(tmp_path: Path) -> None:
    """By default: no debugging, this machine alone, SQLite in the project, UTC."""
    site = _read(tmp_path)

    assert (site.debug, site.https, site.time_zone) == (False, False, "UTC")
    assert site.hosts == ("localhost", "127.0.0.1", "[::1]")
    assert site.database_url == f"sqlite:///{tmp_path}/project/var/db.sqlite3"
    assert (site.sqlite_synchronous, site.log, site.answers_web) == ("NORMAL", "text", False)
    assert (site.errors_mailed_to, site.errors_posted_to) == ((), "")
    assert (site.hsts_subdomains, site.hsts_preload) == (False, False)


def test_behind_https_the_log_is_for_machines(tmp_path: Path) -> None:
    """A site in production writes JSON unless told otherwise, and mails in its first name."""
    site = _read(tmp_path, SHOPJOBS_HTTPS="1", SHOPJOBS_HOSTS="shop.example,www.shop.example")

    assert (site.log, site.mail_from) == ("json", "kitchen-fronts@shop.example")
    assert _read(tmp_path, SHOPJOBS_HTTPS="1", SHOPJOBS_LOG="text").log == "text"


def test_the_key_is_made_once_and_kept_outside_the_project(tmp_path: Path) -> None:
    """The key outlives the process, is long, and only its user reads it."""
    first, second = _read(tmp_path), _read(tmp_path)

    file = tmp_path / "data" / "shopjobs" / "secret-key"
    assert first.secret_key == second.secret_key == file.read_text("utf-8")
    assert len(first.secret_key) >= 50
    assert stat.S_IMODE(file.stat().st_mode) == 0o600
    assert stat.S_IMODE(file.parent.stat().st_mode) == 0o700
    assert not (tmp_path / "project").exists()


def test_the_embedded_database_is_its_users_own(tmp_path: Path) -> None:
    """A new one is closed to others; so is one that was open, with the files that SQLite keeps."""
    file = embedded_database(tmp_path)

    keep_private(file)
    assert _modes(tmp_path / "var") == {"var": 0o700, "db.sqlite3": 0o600}

    file.write_bytes(b"kept")
    (tmp_path / "var" / "db.sqlite3-wal").touch()
    for each in (file.parent, *file.parent.iterdir()):
        each.chmod(0o755)
    keep_private(file)

    assert _modes(tmp_path / "var") == {
        "var": 0o700,
        "db.sqlite3": 0o600,
        "db.sqlite3-wal": 0o600,
    }
    assert file.read_bytes() == b"kept"


def _modes(folder: Path) -> dict[str, int]:
    return {each.name: stat.S_IMODE(each.stat().st_mode) for each in (folder, *folder.iterdir())}


def test_of_two_first_starts_one_key_holds(tmp_path: Path) -> None:
    """What another process wrote in the meantime is what counts."""
    file = tmp_path / "secret"

    assert write_private(file, "one") == "one"
    assert write_private(file, "two") == "one"
    assert [file] == list(tmp_path.iterdir())


def test_the_environment_decides(tmp_path: Path) -> None:
    """Each setting that is given is the one that counts."""
    site = _read(
        tmp_path,
        SHOPJOBS_SECRET_KEY=KEY,
        SHOPJOBS_DEBUG="1",
        SHOPJOBS_HTTPS="1",
        SHOPJOBS_HOSTS="shop.example, www.shop.example",
        SHOPJOBS_HSTS_SUBDOMAINS="1",
        SHOPJOBS_HSTS_PRELOAD="1",
        SHOPJOBS_TIME_ZONE="America/Chicago",
        DATABASE_URL="postgres:///shop",
        SHOPJOBS_SQLITE_SYNCHRONOUS="FULL",
        SHOPJOBS_UPLOADS="/srv/photos",
        AWS_ENDPOINT_URL_S3="https://store.example",
        SHOPJOBS_LOG="text",
        SHOPJOBS_MAIL_SERVER="smtps://mail.example",
        SHOPJOBS_MAIL_FROM="fronts@shop.example",
        SHOPJOBS_ERRORS_MAILED_TO="ada@shop.example, otto@shop.example",
        SHOPJOBS_ERRORS_POSTED_TO="https://errors.example/in",
        SHOPJOBS_ANSWERS_WEB="1",
    )

    assert site == Environment(
        secret_key=KEY,
        debug=True,
        https=True,
        hosts=("shop.example", "www.shop.example"),
        address="https://shop.example/",
        hsts_subdomains=True,
        hsts_preload=True,
        database_url="postgres:///shop",
        sqlite_synchronous="FULL",
        uploads="/srv/photos",
        s3_endpoint="https://store.example",
        time_zone="America/Chicago",
        log="text",
        mail_server="smtps://mail.example",
        mail_from="fronts@shop.example",
        errors_mailed_to=("ada@shop.example", "otto@shop.example"),
        errors_posted_to="https://errors.example/in",
        answers_web=True,
    )
    assert not (tmp_path / "data").exists()


@pytest.mark.parametrize(
    ("given", "address"),
    [
        ({}, ""),
        ({"SHOPJOBS_HOSTS": "shop.example"}, ""),  # At which port, nobody says.
        ({"SHOPJOBS_HOSTS": ".shop.example", "SHOPJOBS_HTTPS": "1"}, ""),
        ({"SHOPJOBS_HOSTS": "shop.example", "SHOPJOBS_HTTPS": "1"}, "https://shop.example/"),
        ({"SHOPJOBS_ADDRESS": "http://shop.example:8000/"}, "http://shop.example:8000/"),
    ],
)
def test_where_people_open_the_site(given: dict[str, str], address: str, tmp_path: Path) -> None:
    """What is printed leads there; where it can't be told, nowhere."""
    assert _read(tmp_path, **given).address == address


@pytest.mark.parametrize(
    ("name", "given", "words"),
    [
        ("SHOPJOBS_SECRET_KEY", "short", "has 5 characters"),
        ("SHOPJOBS_DEBUG", "yes", "give 1 for on, 0 for off"),
        ("SHOPJOBS_HTTPS", "true", "give 1 for on, 0 for off"),
        ("SHOPJOBS_TIME_ZONE", "Chicago", "give a zone like America/Chicago"),
        ("SHOPJOBS_SQLITE_SYNCHRONOUS", "OFF", "give NORMAL or FULL"),
        ("SHOPJOBS_LOG", "xml", "give json or text"),
        ("SHOPJOBS_HSTS_PRELOAD", "1", "give SHOPJOBS_HSTS_SUBDOMAINS=1 with it"),
        ("SHOPJOBS_ERRORS_POSTED_TO", "file:///etc/x", "give an address like https://"),
    ],
)
def test_what_makes_no_sense_is_refused(name: str, given: str, words: str, tmp_path: Path) -> None:
    """A wrong setting stops the start, and the message names it and what is wanted."""
    with pytest.raises(ImproperlyConfigured, match=name) as refused:
        _read(tmp_path, **{name: given})

    assert words in str(refused.value)
