"""The recipe for a server: units of systemd, a site of nginx, an environment file."""

import configparser
import re
import shlex
import shutil
import subprocess
from pathlib import Path

import pytest
from django.core.management import get_commands

from fronts.pages.job_file.forms import MOST_BYTES
from fronts.pages.shared.pictures import MOST_BYTES as PHOTO_BYTES
from shopjobs.bootstrap import ROOT
from shopjobs.environment import read_environment
from tests.production.running import README, printed_lines, run

RECIPE = ROOT / "shopjobs" / "recipe"
UNITS = sorted(RECIPE.glob("*.service"))
INSTALLED = "systemctl enable --now shopjobs-web"
NGINX = (RECIPE / "nginx.conf").read_text(encoding="utf-8")
HOME = "/srv/shopjobs"


def unit(file: Path) -> configparser.ConfigParser:
    """A unit, read strictly: a key that stands twice is a fault."""
    read = configparser.ConfigParser(delimiters=("=",), interpolation=None)
    read.optionxform = str  # type: ignore[assignment, method-assign] # keys have capitals
    read.read_string(file.read_text(encoding="utf-8"))
    return read


def environment_file() -> dict[str, str]:
    """The settings of the environment file, those included that are only suggested."""
    text = (RECIPE / "environment").read_text(encoding="utf-8")
    return dict(re.findall(r"^#?([A-Z_]+)=(.*)$", text, re.MULTILINE))


@pytest.mark.parametrize("file", UNITS, ids=lambda file: file.stem)
def test_a_unit_runs_the_project_as_its_own_person(file: Path) -> None:
    """Each runs in the project's folder, as a person without rights, with the same settings."""
    service = unit(file)["Service"]
    program, *words = shlex.split(service["ExecStart"])

    assert (service["User"], service["WorkingDirectory"]) == ("shopjobs", HOME)
    assert service["EnvironmentFile"].removeprefix("-") == "/etc/shopjobs/environment"
    assert program in (f"{HOME}/.venv/bin/gunicorn", f"{HOME}/.venv/bin/python")
    if program.endswith("python"):
        assert words[0] == "manage.py"
        assert words[1] in get_commands()


def test_web_and_worker_are_there() -> None:
    """Both start with the machine, and again where they end."""
    for name in ("shopjobs-web", "shopjobs-worker"):
        read = unit(RECIPE / f"{name}.service")
        assert read["Install"]["WantedBy"] == "multi-user.target"
        assert read["Service"]["Restart"] == "always"
        assert read["Service"]["NoNewPrivileges"] == "yes"


def test_the_web_server_is_the_one_that_readme_prints() -> None:
    """The unit says the same words, and listens where the proxy asks."""
    start = unit(RECIPE / "shopjobs-web.service")["Service"]["ExecStart"]
    server = printed_lines("\ngunicorn ")[-1]
    socket = "/run/shopjobs/web.sock"

    assert start.startswith(f"{HOME}/.venv/bin/{server} --bind unix:{socket} ")
    assert set(re.findall(r"proxy_pass http://unix:(\S+);", NGINX)) == {socket}


def test_the_environment_file_is_read(tmp_path: Path) -> None:
    """Every line of it is a setting that README names, and one that the site takes."""
    given = environment_file()
    site = read_environment(given | {"XDG_DATA_HOME": str(tmp_path)}, root=tmp_path)

    named = set(re.findall(r"`([A-Z_]{8,})`", README))
    assert set(given) - named == {"XDG_DATA_HOME"}
    assert (site.https, site.hosts, site.log) == (True, ("fronts.example",), "json")


def test_the_proxy_sets_what_the_site_trusts() -> None:
    """Both headers are its own, never a client's; what is sent has a limit above the site's."""
    sets = dict(re.findall(r"proxy_set_header (\S+) (\S+);", NGINX))
    limit = re.findall(r"client_max_body_size (\d+)m;", NGINX)

    assert sets == {
        "Host": "$host",
        "X-Forwarded-Proto": "$scheme",
        "X-Forwarded-For": "$remote_addr",
        "X-Request-ID": "$request_id",
    }
    assert max(MOST_BYTES, PHOTO_BYTES) < int(limit[0]) * 1024 * 1024 < 2 * PHOTO_BYTES
    assert NGINX.count("{") == NGINX.count("}")


@pytest.fixture
def machine(tmp_path: Path, site: Path) -> Path:
    """A machine's own folders, with the programs that the units start."""
    root = tmp_path / "machine"
    programs = ("srv/shopjobs/.venv/bin/gunicorn", "srv/shopjobs/.venv/bin/python")
    for name in (*programs, "bin/kill", "usr/bin/find"):
        (root / name).parent.mkdir(parents=True, exist_ok=True)
        (root / name).write_text("#!/bin/sh\n", encoding="utf-8")
        (root / name).chmod(0o755)
    (root / "etc" / "systemd" / "system").mkdir(parents=True)
    (root / "etc" / "nginx" / "conf.d").mkdir(parents=True)
    systems = Path("/usr/lib/systemd/system")
    if systems.exists():
        shutil.copytree(systems, root / "usr" / "lib" / "systemd" / "system", symlinks=True)
    return root


@pytest.mark.thorough
@pytest.mark.skipif(
    shutil.which("systemctl") is None, reason="systemctl is not on this machine: no units to enable"
)
def test_the_lines_for_services_put_all_in_its_place(site: Path, machine: Path) -> None:
    """Run as printed, but in folders of a machine of their own and as whoever runs the tests.

    Only what makes a person of the system or reaches a running service is left out.
    """
    lines = printed_lines(INSTALLED)
    left_out = [line for line in lines if re.match(r"sudo (useradd|chown|systemctl reload) ", line)]
    ran = [line for line in lines if line not in left_out]
    assert [line.split()[1] for line in left_out] == ["useradd", "chown", "systemctl"]
    for plain, here in (
        ("sudo -u shopjobs ", ""),
        ("sudo ", ""),
        (" -g shopjobs", ""),
        ("/etc/", f"{machine}/etc/"),
        ("systemctl enable --now", f"systemctl --root={machine} enable"),
    ):
        ran = [line.replace(plain, here) for line in ran]
    script = site / "shopjobs" / "recipe" / "manage"
    script.write_text(script.read_text("utf-8").replace("/etc/", f"{machine}/etc/"), "utf-8")
    settings = site / "shopjobs" / "recipe" / "environment"
    settings.write_text(settings.read_text("utf-8").replace("/var/lib/", f"{machine}/"), "utf-8")

    said = run(ran, site)

    assert "Applying fronts.0001_squashed_0033_stock_entries... OK" in said
    assert (site / "var" / "static" / "staticfiles.json").exists()
    assert (machine / "shopjobs" / "shopjobs" / "secret-key").exists()
    wanted = machine / "etc" / "systemd" / "system" / "multi-user.target.wants"
    assert sorted(each.name for each in wanted.iterdir()) == [
        "shopjobs-web.service",
        "shopjobs-worker.service",
    ]
    assert (machine / "etc" / "nginx" / "conf.d" / "shopjobs.conf").exists()


@pytest.mark.skipif(
    shutil.which("systemd-analyze") is None,
    reason="systemd-analyze is not on this machine: units are only read by the tests above",
)
@pytest.mark.parametrize("file", [*UNITS, *RECIPE.glob("*.timer")], ids=lambda file: file.name)
def test_systemd_finds_no_fault_in_a_unit(file: Path, machine: Path) -> None:
    """`systemd-analyze verify` has nothing to say of it."""
    for each in RECIPE.iterdir():
        shutil.copy(each, machine / "etc" / "systemd" / "system")
    verify = ["systemd-analyze", "verify", "--man=no", "--recursive-errors=no"]
    done = subprocess.run([*verify, f"--root={machine}", file.name], capture_output=True, text=True)

    assert (done.returncode, done.stdout + done.stderr) == (0, "")
