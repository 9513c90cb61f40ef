"""`manage.py demo`: the site with a demo shop in it, on this machine."""

import os
import socket
import subprocess
import sys
from argparse import ArgumentParser
from typing import Any

from django.conf import settings
from django.core.management import call_command
from django.core.management.base import BaseCommand, CommandError
from django.utils import timezone
from django.utils.module_loading import import_string

from shopjobs.models import Person
from shopjobs.services.demo import PEOPLE, demo_passwords, demo_shop

HOST = "127.0.0.1"
FIRST_PORT = 8000
PORTS_TRIED = 100


class Command(BaseCommand):
    """Brings the database up to date, loads the demo shop once, serves the site, and works."""

    help = "Makes the database, loads the demo shop where it isn't there, and serves the site."

    def add_arguments(self, parser: ArgumentParser) -> None:
        """Take a port, and whether to serve at all."""
        parser.add_argument("--port", type=int, help="serve here, or say that it is taken")
        parser.add_argument("--no-serve", action="store_true", help="stop once all is ready")

    def handle(self, *args: Any, **options: Any) -> None:
        """Prepare the demo, say how to get in, and serve it."""
        call_command("migrate", verbosity=0, interactive=False)
        demo_shop(at=timezone.now())
        import_string(settings.DEMO_LOADER)()
        port = None if options["no_serve"] else free_port(options["port"])
        if port is not None:
            self.stdout.write(f"\nThe demo shop is at http://{HOST}:{port}/ (Ctrl+C ends it)\n\n")
        self._say_who()
        if port is not None:
            self.stdout.flush()
            serve(port)

    def _say_who(self) -> None:
        passwords = demo_passwords(os.environ)
        self.stdout.write(f"  {'sign-in name':<14}password")
        for username, *_ in PEOPLE:
            person = Person.objects.get(username=username)
            fits = person.check_password(passwords[username])
            shown = passwords[username] if fits else "changed since, by the person or the owner"
            self.stdout.write(f"  {username:<14}{shown}")
        self.stdout.write("")


def free_port(asked: int | None) -> int:
    """Return the port asked for, or the first free one from 8000 on."""
    ports = [asked] if asked is not None else range(FIRST_PORT, FIRST_PORT + PORTS_TRIED)
    for port in ports:
        if is_free(port):
            return port
    raise CommandError(f"Port {ports[0]} is taken. Give another one with --port.")


def is_free(port: int) -> bool:
    """Return whether nothing on this machine serves at the port."""
    with socket.socket() as door:
        door.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            door.bind((HOST, port))
        except (OSError, OverflowError):
            return False
    return True


def serve(port: int) -> None:
    """Start a worker, and replace this process by the web server that also serves in production.

    The worker ends with this process, however that ends.
    """
    parent = ["--parent", str(os.getpid())]
    subprocess.Popen([sys.executable, str(settings.BASE_DIR / "manage.py"), "work", *parent])
    gunicorn = [sys.executable, "-m", "gunicorn", "shopjobs.wsgi", "--bind", f"{HOST}:{port}"]
    workers = ["--worker-class", "gthread", "--workers", "2", "--threads", "4"]
    os.chdir(settings.BASE_DIR)
    # A worker that is still starting hears no signal; it is not waited for long.
    ends = ["--log-level", "warning", "--timeout", "120", "--graceful-timeout", "5"]
    os.execv(sys.executable, [*gunicorn, *workers, *ends])
