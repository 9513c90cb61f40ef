"""What the bootstrap decides before it does anything."""

import hashlib
import json
import subprocess
import sys
import zipfile
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
    in_a_bucket = {"SHOPJOBS_UPLOADS": "s3://photos"}
    assert bootstrap.wanted_groups("demo", {}) == ("runtime",)
    assert bootstrap.wanted_groups("work", {"SHOPJOBS_UPLOADS": "/srv/photos"}) == ("runtime",)
    assert bootstrap.wanted_groups("work", in_a_bucket) == ("runtime", "s3")
    for command in ("test", "coverage", "mutate", "bench"):
        assert bootstrap.wanted_groups(command, {}) == ("runtime", "s3", "dev")


def test_a_stamp_changes_with_what_is_wanted() -> None:
    """Another version, or another hash, of any group is another stamp."""
    stamp = bootstrap.stamp_of("a==1 --hash=sha256:00", "b==1")

    assert stamp == bootstrap.stamp_of("a==1 --hash=sha256:00", "b==1")
    assert stamp != bootstrap.stamp_of("a==2 --hash=sha256:00", "b==1")
    assert stamp != bootstrap.stamp_of("a==1 --hash=sha256:01", "b==1")
    assert stamp != bootstrap.stamp_of("a==1 --hash=sha256:00")


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


@pytest.fixture
def machine(tmp_path: Path) -> Path:
    """A project that wants one package, which lies beside it, and no environment yet."""
    (tmp_path / "shopjobs").mkdir()
    for name in ("__init__.py", "bootstrap.py"):
        (tmp_path / "shopjobs" / name).write_bytes((ROOT / "shopjobs" / name).read_bytes())
    (tmp_path / "manage.py").write_text(
        "import sys\nfrom shopjobs import bootstrap\nbootstrap.enter(sys.argv[1:])\n"
        "import oak\nprint(sys.prefix, oak.__doc__, *sys.argv[1:])\n",
        encoding="utf-8",
    )
    about = "oak-1.dist-info"
    with zipfile.ZipFile(tmp_path / "oak-1-py3-none-any.whl", "w") as wheel:
        wheel.writestr("oak.py", "'quartersawn'\n")
        wheel.writestr(f"{about}/METADATA", "Metadata-Version: 2.1\nName: oak\nVersion: 1\n")
        wheel.writestr(f"{about}/WHEEL", "Wheel-Version: 1.0\nTag: py3-none-any\n")
        wheel.writestr(f"{about}/RECORD", f"oak.py,,\n{about}/METADATA,,\n{about}/WHEEL,,\n")
    (tmp_path / ".ci").mkdir()
    pin(tmp_path, hashlib.sha256((tmp_path / "oak-1-py3-none-any.whl").read_bytes()).hexdigest())
    return tmp_path


def pin(machine: Path, sha256: str) -> None:
    """Say which file the package must be."""
    text = f"--no-index\n--find-links {machine}\noak==1 --hash=sha256:{sha256}\n"
    (machine / ".ci" / "runtime.txt").write_text(text, encoding="utf-8")


def run(machine: Path) -> subprocess.CompletedProcess[str]:
    """Run a command there with a Python outside any environment."""
    return subprocess.run(
        [getattr(sys, "_base_executable", sys.executable), "manage.py", "check", "--tag"],
        cwd=machine,
        env={"PATH": "/usr/bin:/bin"},
        capture_output=True,
        text=True,
        check=False,
    )


@pytest.mark.thorough
def test_a_machine_without_an_environment_gets_one(machine: Path) -> None:
    """Outside an environment a command makes .venv, leaves its stamp and runs in there."""
    first, second = run(machine), run(machine)

    assert first.returncode == 0, first.stderr
    assert first.stdout.split() == [str(machine / ".venv"), "quartersawn", "check", "--tag"]
    assert "Making a virtual environment" in first.stderr
    assert json.loads((machine / ".venv" / "installed.json").read_text("utf-8")).keys() == {
        "runtime"
    }
    assert (second.stdout, second.stderr) == (first.stdout, "")


@pytest.mark.thorough
def test_a_package_that_is_another_file_is_not_installed(machine: Path) -> None:
    """A file whose hash is not the one that is pinned stops the start, and pip says why."""
    pin(machine, "0" * 64)

    refused = run(machine)

    assert refused.returncode == 1
    assert "DO NOT MATCH THE HASHES" in refused.stderr
    assert "Not all packages could be installed" in refused.stderr
    assert not (machine / ".venv" / "installed.json").exists()
