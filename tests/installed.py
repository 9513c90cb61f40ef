"""What is installed is what is pinned: `python -m tests.installed` says where it differs."""

import re
import sys
from collections.abc import Mapping
from importlib.metadata import distributions

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

from shopjobs.bootstrap import PINS

OF_ITS_OWN = frozenset({"pip", "setuptools"})
"""What Python itself puts into a new virtual environment, of the version that it brings."""


def pinned(text: str) -> list[Requirement]:
    """Return the packages of a file of pins, each with its version and marker."""
    lines = re.sub(r"\\\n\s*--hash=\S+", "", text).splitlines()
    return [Requirement(line) for line in lines if re.match(r"[A-Za-z0-9]", line)]


def wanted(*texts: str) -> dict[str, str]:
    """Return the version of each package that this Python on this system needs."""
    return {
        canonicalize_name(package.name): str(package.specifier).removeprefix("==")
        for text in texts
        for package in pinned(text)
        if package.marker is None or package.marker.evaluate()
    }


def differences(pins: Mapping[str, str], there: Mapping[str, str]) -> list[str]:
    """Return a line for each package that is missing, is another version, or is not wanted."""
    names = sorted({*pins, *there} - OF_ITS_OWN)
    return [
        f"{name}: pinned {pins.get(name, 'nothing')}, installed {there.get(name, 'nothing')}"
        for name in names
        if pins.get(name) != there.get(name)
    ]


def main() -> None:
    """Compare this environment with the pins of the site and of its tests."""
    pins = wanted(*(file.read_text("utf-8") for file in PINS.values()))
    there: dict[str, str] = {canonicalize_name(one.name): one.version for one in distributions()}
    told = differences(pins, there)
    print("\n".join(told) or f"{len(pins)} packages, each as it is pinned")
    sys.exit(bool(told))


if __name__ == "__main__":
    main()
