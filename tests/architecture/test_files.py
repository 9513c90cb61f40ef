"""What no file of the repository may hold, and how long one may be."""

import ast
import re
from statistics import median

from tests.architecture.files import ROOT, files, sources, texts

BANNED_NAMES = {"utils", "helpers", "common", "core", "misc", "base", "manager"}
TOP = {"README.md", "DEVELOPERS.md", "manage.py", "pyproject.toml"}
TOP |= {"shopjobs", "fronts", "templates", "static", "tests", "fixtures"}
LONGEST_FILE, LONG_FILE, USUAL_FILE = 300, 200, 70
LONGEST_LINE = 100
WRITTEN_IN_LINES = {".css", ".html", ".js"}
LONGEST_FUNCTION = 50
# Put together here, so that this file holds none of them either.
HOSTS = [f"{name}.{end}" for name, end in (("pypi", "org"), ("pythonhosted", "org"))]
HOSTS += [f"{name}.org" for name in ("npmjs", "yarnpkg")] + ["npmjs" + ".com"]
HOSTS += ["proxy.golang" + ".org", "crates" + ".io", "rubygems" + ".org"]
MACHINE_PATH = re.compile(r"(?<![\w.])/(?:root|home/\w+|work|Users/\w+)/[\w.]")


def test_no_file_names_a_package_registry() -> None:
    """No text or lock file names the host of a package registry."""
    found = [f"{path}: {host}" for path, text in texts() for host in HOSTS if host in text]

    assert found == []


def test_no_file_holds_a_path_of_one_machine() -> None:
    """No file holds a path that is only there on somebody's machine."""
    found = [f"{path}: {hit[0]}" for path, text in texts() if (hit := MACHINE_PATH.search(text))]

    assert found == []


def test_the_top_level_holds_what_it_is_for() -> None:
    """Whatever is none of the site's own folders stands in one of them, or in a dot folder."""
    names = {file.relative_to(ROOT).parts[0] for file in files()}

    assert {name for name in names if not name.startswith(".")} == TOP


def test_no_module_has_a_name_that_says_nothing() -> None:
    """Modules are named by what they hold."""
    assert [path for path, _ in sources() if path.stem in BANNED_NAMES] == []


def test_files_are_short() -> None:
    """No file of source or tests is longer than a few screens."""
    found = [path for path, text in sources() if text.count("\n") > LONGEST_FILE]

    assert found == []


def test_most_files_of_source_are_shorter_still() -> None:
    """One idea each: half of them at most 70 lines, nine of ten at most 200."""
    lines = [text.count("\n") for _, text in sources("fronts", "shopjobs")]
    long = [count for count in lines if count > LONG_FILE]

    assert median(lines) <= USUAL_FILE
    assert len(long) * 10 <= len(lines)


def test_lines_wrap() -> None:
    """In templates, styles and scripts, as the linter holds it for the code."""
    found = [
        f"{path}:{number}"
        for path, text in texts()
        if path.suffix in WRITTEN_IN_LINES and "migrations" not in path.parts
        for number, line in enumerate(text.splitlines(), 1)
        if len(line) > LONGEST_LINE
    ]

    assert found == []


def test_functions_are_short() -> None:
    """No function is longer than a screen."""
    found = [
        f"{path}: {node.name}"
        for path, text in sources()
        for node in ast.walk(ast.parse(text))
        if isinstance(node, ast.FunctionDef)
        and (node.end_lineno or 0) - node.lineno >= LONGEST_FUNCTION
    ]

    assert found == []
