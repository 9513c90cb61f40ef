"""The site behind the recipe's proxy: a real nginx in front of the server that README prints."""

import gzip
import http.client
import json
import re
import shutil
import socket
import ssl
import subprocess
import time
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from pathlib import Path

import pytest

from tests.production.running import SECONDS_TO_START, copy_site, printed_lines, run, surroundings

PLACES = "/usr/sbin:/usr/bin"
MISSING = [name for name in ("nginx", "openssl") if shutil.which(name, path=PLACES) is None]
pytestmark = [
    pytest.mark.thorough,
    pytest.mark.slow,
    pytest.mark.skipif(
        bool(MISSING), reason=f"{' and '.join(MISSING)} not on this machine: the proxy is only read"
    ),
]
NGINX = """
daemon off; master_process off; pid {folder}/nginx.pid; error_log {folder}/error.log;
events {{}}
http {{
  access_log off;
  client_body_temp_path {folder}/body; proxy_temp_path {folder}/proxy;
  fastcgi_temp_path {folder}/f; uwsgi_temp_path {folder}/u; scgi_temp_path {folder}/s;
  include {folder}/site.conf;
}}
"""


@dataclass(frozen=True)
class Proxy:
    """Where the proxy listens, and where the site writes its log."""

    plain: int
    encrypted: int
    log: Path

    def answer(
        self, method: str, address: str, *, body: bytes = b"", port: int = 0, **headers: str
    ) -> tuple[int, dict[str, str], bytes]:
        """What a client gets."""
        trusting = ssl.create_default_context()
        trusting.check_hostname, trusting.verify_mode = False, ssl.CERT_NONE
        connection = (
            http.client.HTTPConnection("127.0.0.1", port, timeout=30)
            if port
            else http.client.HTTPSConnection(
                "127.0.0.1", self.encrypted, timeout=30, context=trusting
            )
        )
        given = {"Host": "fronts.example"} | {
            name.replace("_", "-"): value for name, value in headers.items()
        }
        with closing(connection):
            connection.request(method, address, body=body, headers=given)
            answer = connection.getresponse()
            return answer.status, dict(answer.getheaders()), answer.read()

    def line_of(self, request_id: str) -> dict[str, object]:
        """The line of the log about a request."""
        (found,) = (line for line in self.lines if line.get("request") == request_id)
        return found

    @property
    def lines(self) -> list[dict[str, object]]:
        """Every line that the site's processes wrote."""
        return [json.loads(line) for line in self.log.read_text("utf-8").splitlines()]


@contextmanager
def going(command: list[str], log: Path, **given: object) -> Iterator[None]:
    """A program that runs as long as this goes on."""
    with (
        log.open("w") as said,
        subprocess.Popen(
            command,
            stdout=said,
            stderr=said,
            **given,  # type: ignore[call-overload]
        ) as process,
    ):
        try:
            yield
        finally:
            process.terminate()


def free_ports(count: int) -> list[int]:
    """Ports at which nothing listens."""
    doors = [socket.socket() for _ in range(count)]
    for door in doors:
        door.bind(("127.0.0.1", 0))
    ports = [int(door.getsockname()[1]) for door in doors]
    for door in doors:
        door.close()
    return ports


@pytest.fixture(scope="module")
def proxy(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Proxy]:
    """The site, collected and served at a socket, its worker, and nginx in front of it."""
    folder = tmp_path_factory.mktemp("p")
    site = copy_site(folder / "site")
    export, _, *lines, _ = printed_lines("\ngunicorn ")
    run([export, *lines], site)
    plain, encrypted = free_ports(2)
    _certify(folder)
    text = (site / "shopjobs" / "recipe" / "nginx.conf").read_text(encoding="utf-8")
    for there, here in (
        ("listen 80;", f"listen 127.0.0.1:{plain};"),
        ("listen 443 ssl;", f"listen 127.0.0.1:{encrypted} ssl;"),
        ("/etc/shopjobs/", f"{folder}/"),
        ("/run/shopjobs/", f"{folder}/"),
    ):
        assert there in text
        text = text.replace(there, here)
    (folder / "site.conf").write_text(text, encoding="utf-8")
    (folder / "nginx.conf").write_text(NGINX.format(folder=folder), encoding="utf-8")
    nginx = [shutil.which("nginx", path=PLACES) or "", "-c", f"{folder}/nginx.conf"]
    tried = subprocess.run([*nginx, "-t"], capture_output=True, text=True)
    assert tried.returncode == 0, tried.stderr

    unit = (site / "shopjobs" / "recipe" / "shopjobs-web.service").read_text(encoding="utf-8")
    (server,) = re.findall(r"^ExecStart=\S+/(gunicorn .*)$", unit, re.MULTILINE)
    server = server.replace("/run/shopjobs/", f"{folder}/")
    serve = ["bash", "-ec", f"{export}\nexec {server}"]
    work = ["bash", "-ec", f"{export}\nexec {printed_lines('manage.py work')[0]}"]
    log = folder / "site.log"
    with (
        going(serve, log, cwd=site, env=surroundings(site)),
        going(work, folder / "work.log", cwd=site, env=surroundings(site)),
        going(nginx, folder / "nginx.log"),
    ):
        _wait_for(Proxy(plain, encrypted, log))
        yield Proxy(plain, encrypted, log)


def _certify(folder: Path) -> None:
    """Make a certificate that nobody trusts."""
    subprocess.run(
        [
            *("openssl", "req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "1"),
            *("-subj", "/CN=fronts.example", "-out", f"{folder}/certificate.pem"),
            *("-keyout", f"{folder}/certificate.key"),
        ],
        check=True,
        capture_output=True,
    )


def _wait_for(proxy: Proxy) -> None:
    until = time.monotonic() + SECONDS_TO_START
    while time.monotonic() < until:
        try:
            if proxy.answer("GET", "/healthz")[0] == 200:
                return
        except OSError:
            pass
        time.sleep(0.2)
    pytest.fail(f"the site did not come up: {proxy.log.read_text('utf-8')}")


def test_a_page_comes_through_encrypted_and_compressed(proxy: Proxy) -> None:
    """The site knows that it is behind HTTPS; the request has one name from proxy to log."""
    status, headers, page = proxy.answer("GET", "/sign-in/", Accept_Encoding="gzip")

    assert (status, headers["Content-Encoding"]) == (200, "gzip")
    assert "Strict-Transport-Security" in headers
    assert "Secure" in headers["Set-Cookie"]
    assert b"Sign-in name" in gzip.decompress(page)
    assert re.fullmatch(r"[0-9a-f]{32}", headers["X-Request-ID"])
    assert proxy.line_of(headers["X-Request-ID"])["path"] == "/sign-in/"


def test_every_line_of_the_log_is_json(proxy: Proxy) -> None:
    """The server's own lines too: whatever reads the log need not tell them apart."""
    proxy.answer("GET", "/nowhere/")

    assert {"gunicorn.error", "shopjobs.requests"} <= {line["logger"] for line in proxy.lines}


def test_without_https_one_is_sent_to_it(proxy: Proxy) -> None:
    """The proxy answers by itself."""
    status, headers, _ = proxy.answer("GET", "/jobs/", port=proxy.plain)

    assert (status, headers["Location"]) == (301, "https://fronts.example/jobs/")


def test_a_client_can_not_say_where_it_is(proxy: Proxy) -> None:
    """What it claims of its address, or of encryption, counts for nothing."""
    _, headers, _ = proxy.answer(
        "GET", "/sign-in/", X_Forwarded_For="203.0.113.9", X_Forwarded_Proto="http"
    )

    assert proxy.line_of(headers["X-Request-ID"])["address"] == "127.0.0.1"


def test_styles_are_compressed_beforehand_and_kept_for_good(proxy: Proxy) -> None:
    """A file's name is its content's; brotli for whoever takes it."""
    _, _, page = proxy.answer("GET", "/sign-in/")
    addresses = re.findall(
        r'(?:href|src)="(/(?:static|styles)/[^"]+\.(?:css|js|svg))"', page.decode()
    )

    assert len(addresses) > 4
    for address in addresses:
        status, headers, _ = proxy.answer("GET", address, Accept_Encoding="gzip, br")
        assert status == 200
        assert "immutable" in headers["Cache-Control"]
        assert re.search(r"max-age=3\d{8}", headers["Cache-Control"])
        assert headers.get("Content-Encoding") == "br" or address.endswith(".svg")


def test_what_is_too_much_is_refused_before_the_site_reads_it(proxy: Proxy) -> None:
    """A photo as large as the site takes goes through; more than the limit is refused."""
    megabyte = b"x" * 1024 * 1024

    through, _, _ = proxy.answer("POST", "/sign-in/", body=20 * megabyte)
    refused, _, _ = proxy.answer("POST", "/sign-in/", body=22 * megabyte)

    assert (through, refused) == (403, 413)  # the first lacks a form's token


def test_whether_it_is_ready_is_answered_from_here(proxy: Proxy) -> None:
    """Both addresses of health go through the proxy; with its worker the site is ready."""
    until = time.monotonic() + SECONDS_TO_START
    while proxy.answer("GET", "/readyz")[0] != 200 and time.monotonic() < until:
        time.sleep(0.5)
    alive, ready = proxy.answer("GET", "/healthz"), proxy.answer("GET", "/readyz")

    assert json.loads(alive[2]) == {"status": "ok"}
    assert (ready[0], set(json.loads(ready[2]).values())) == (200, {"ok"})
