"""What the bootstrap decides before it does anything."""

import json
import subprocess
import sys
from pathlib import Path

import pytest

from shopjobs import bootstrap

ROOT = Path(__file__).resolve().parents[2]


@pytest.mark.parametrize(
    ("prefix", "environ", "activated"),
    [
        ("/usr", {}, False),
        ("/somewhere/.venv", {}, True),
        ("/usr", {"VIRTUAL_ENV": "/somewhere/.venv"}, True),
        ("/usr", {"VIRTUAL_ENV": ""}, False),
    ],
)
def test_an_environment_that_someone_chose_is_left_alone(
    prefix: str, environ: dict[str, str], *, activated: bool
) -> None:
    """Inside an environment, or with one activated, nothing is prepared."""
    assert bootstrap.is_activated(prefix, "/usr", environ) is activated


def test_only_tests_and_benchmarks_need_what_tests_need() -> None:
    """The demo installs what the site runs on; the tests and the benchmarks add their own."""
    assert bootstrap.wanted_groups("demo") == ("runtime",)
    for command in ("test", "coverage", "mutate", "bench"):
        assert bootstrap.wanted_groups(command) == ("runtime", "dev")


def test_packages_are_read_from_the_project_file() -> None:
    """Both groups come from pyproject.toml, each package with its version."""
    groups = bootstrap.requirements(
        '[project]\ndependencies = ["Django==5.2"]\n[dependency-groups]\ndev = ["pytest==9"]'
    )

    assert groups == {"runtime": ["Django==5.2"], "dev": ["pytest==9"]}


def test_a_stamp_changes_with_what_is_wanted_and_not_with_its_order() -> None:
    """Another version, or another constraint, is another stamp."""
    stamp = bootstrap.stamp_of(["a==1", "b==1"], "c==1")

    assert stamp == bootstrap.stamp_of(["b==1", "a==1"], "c==1")
    assert stamp != bootstrap.stamp_of(["a==1", "b==2"], "c==1")
    assert stamp != bootstrap.stamp_of(["a==1", "b==1"], "c==2")


def test_only_what_changed_is_installed_again() -> None:
    """A group whose stamp is there is left alone."""
    wanted = {"runtime": "1", "dev": "2"}

    assert bootstrap.missing_groups(wanted, {}) == ["runtime", "dev"]
    assert bootstrap.missing_groups(wanted, {"runtime": "1"}) == ["dev"]
    assert bootstrap.missing_groups(wanted, {"runtime": "0", "dev": "2"}) == ["runtime"]
    assert bootstrap.missing_groups(wanted, wanted) == []


def test_a_library_that_is_not_there_is_missed() -> None:
    """A library counts as there when it loads."""
    assert bootstrap.missing_libraries(["libc.so.6"]) == []
    assert bootstrap.missing_libraries(["libnowhere.so.9"]) == ["libnowhere.so.9"]


def test_fonts_are_looked_for_in_their_folders(tmp_path: Path) -> None:
    """One font anywhere below a folder is enough; a folder that isn't there has none."""
    assert not bootstrap.has_font([str(tmp_path), str(tmp_path / "nowhere")])

    (tmp_path / "a" / "b").mkdir(parents=True)
    (tmp_path / "a" / "b" / "Plain.ttf").touch()

    assert bootstrap.has_font([str(tmp_path)])


def test_it_needs_nothing_but_the_standard_library() -> None:
    """A Python without any package can import it."""
    done = subprocess.run(
        [
            sys.executable,
            "-S",
            "-I",
            "-c",
            f"import sys; sys.path.insert(0, {str(ROOT)!r});import shopjobs.bootstrap",
        ],
        capture_output=True,
        text=True,
        check=False,
    )

    assert done.returncode == 0, done.stderr


def test_what_may_not_be_installed_is_named_in_one_line(tmp_path: Path) -> None:
    """Without a package manager and without rights, one line says what is missing."""
    code = (
        f"import sys; sys.path.insert(0, {str(ROOT)!r})\n"
        "from shopjobs import bootstrap\n"
        "bootstrap._ensure(('libpango-1.0-0',), 'printing sheets')\n"
    )

    done = subprocess.run(
        [sys.executable, "-c", code],
        env={"PATH": str(tmp_path)},
        capture_output=True,
        text=True,
        check=True,
    )

    assert done.stderr.splitlines() == [
        "Missing for printing sheets: libpango-1.0-0. On Debian, install with: "
        "apt install libpango-1.0-0"
    ]
    assert done.stdout == ""


def test_a_machine_without_an_environment_gets_one(tmp_path: Path) -> None:
    """Outside an environment a command makes .venv, leaves its stamp and runs in there."""
    (tmp_path / "shopjobs").mkdir()
    for name in ("__init__.py", "bootstrap.py"):
        (tmp_path / "shopjobs" / name).write_bytes((ROOT / "shopjobs" / name).read_bytes())
    (tmp_path / "pyproject.toml").write_text(
        '[project]\ndependencies = ["pip"]\n[dependency-groups]\ndev = []\n', encoding="utf-8"
    )
    (tmp_path / ".ci").mkdir()
    (tmp_path / ".ci" / "constraints.txt").touch()
    (tmp_path / "manage.py").write_text(
        "import sys\nfrom shopjobs import bootstrap\nbootstrap.enter(sys.argv[1:])\n"
        "print(sys.prefix, *sys.argv[1:])\n",
        encoding="utf-8",
    )
    outside = getattr(sys, "_base_executable", sys.executable)

    def run() -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            [outside, "manage.py", "check", "--tag"],
            cwd=tmp_path,
            env={"PATH": "/usr/bin:/bin"},
            capture_output=True,
            text=True,
            check=False,
        )

    first, second = run(), run()

    assert first.returncode == 0, first.stderr
    assert first.stdout.split() == [str(tmp_path / ".venv"), "check", "--tag"]
    assert "Making a virtual environment" in first.stderr
    assert json.loads((tmp_path / ".venv" / "installed.json").read_text("utf-8")).keys() == {
        "runtime"
    }
    assert (second.stdout, second.stderr) == (first.stdout, "")
