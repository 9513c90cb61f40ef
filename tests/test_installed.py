"""Pins, and what is installed."""

import re
import tomllib

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

from shopjobs.bootstrap import PINS, ROOT
from tests.installed import differences, pinned, wanted

TEXTS = {group: file.read_text(encoding="utf-8") for group, file in PINS.items()}


def asked_for() -> dict[str, list[str]]:
    """The packages of pyproject.toml, by group."""
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    return {
        "runtime": project["project"]["dependencies"],
        "s3": project["project"]["optional-dependencies"]["s3"],
        "dev": project["dependency-groups"]["dev"],
    }


def test_every_package_asked_for_is_pinned() -> None:
    """Each has one version in pyproject.toml, and the pins of its group hold the same."""
    for group, packages in asked_for().items():
        pins = wanted(TEXTS["runtime"], TEXTS[group])
        for package in map(Requirement, packages):
            assert f"=={pins[canonicalize_name(package.name)]}" == str(package.specifier), package


def test_every_pin_has_hashes() -> None:
    """No package is installed unless its file is one of those that were there at pinning."""
    for text in TEXTS.values():
        blocks = re.split(r"\n(?=\w)", re.sub(r"^-r \S+\n", "", text))
        assert len(blocks) == len(pinned(text)) > 5
        assert [each for each in blocks if "--hash=sha256:" not in each] == []


def test_the_tests_pins_stand_on_the_sites() -> None:
    """What the tests run against is what the site runs on: each package is pinned once."""
    runtime, s3, dev = ({each.name for each in pinned(text)} for text in TEXTS.values())

    assert TEXTS["s3"].startswith("-r runtime.txt\n")
    assert TEXTS["dev"].startswith("-r s3.txt\n")
    assert runtime & s3 == runtime & dev == s3 & dev == set()


def test_a_difference_is_told() -> None:
    """A package that is missing, is another version, or came along unasked has its line."""
    text = 'oak==1.2 \\\n    --hash=sha256:00\nelm==3 ; sys_platform == "nowhere"\nash==2\nfir==1\n'

    assert differences(wanted(text), {"oak": "1.2", "ash": "2.1", "yew": "4", "pip": "23"}) == [
        "ash: pinned 2, installed 2.1",
        "fir: pinned 1, installed nothing",
        "yew: pinned nothing, installed 4",
    ]
