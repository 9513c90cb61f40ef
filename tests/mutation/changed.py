"""Runs tests with one file's text replaced, as it is imported: FILE TEXT TESTS…"""

import sys
from collections.abc import Sequence
from importlib.machinery import ModuleSpec, PathFinder, SourceFileLoader
from pathlib import Path
from types import CodeType, ModuleType

import pytest

QUICK = ["-x", "-q", "-p", "no:cacheprovider", "--no-migrations", "--hypothesis-profile=unshrunk"]


class Replaced:
    """Finds one module, and gives it another text."""

    def __init__(self, path: Path, text: str) -> None:
        self.name = ".".join(path.with_suffix("").parts)
        self.text = text

    def find_spec(
        self, name: str, path: Sequence[str] | None, target: ModuleType | None = None
    ) -> ModuleSpec | None:
        """Return the module's usual place, with a loader that compiles the other text."""
        spec = PathFinder.find_spec(name, path, target) if name == self.name else None
        if spec is not None and spec.origin is not None:
            spec.loader = _Loader(name, spec.origin, self.text)
        return spec


class _Loader(SourceFileLoader):
    def __init__(self, name: str, path: str, text: str) -> None:
        super().__init__(name, path)
        self.text = text

    def get_code(self, fullname: str) -> CodeType:
        """Compile the other text; what was compiled of the file before is not asked."""
        code: CodeType = compile(self.text, self.path, "exec", dont_inherit=True)
        return code


def main(path: str, changed: str, *tests: str) -> int:
    """Run the tests and return pytest's exit code."""
    text = Path(changed).read_text(encoding="utf-8")
    sys.meta_path.insert(0, Replaced(Path(path), text))
    return int(pytest.main([*QUICK, *tests]))


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
