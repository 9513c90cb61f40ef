"""Somebody who saves one thing after another over HTTP, and sends again what got no answer."""

import time
from contextlib import closing
from http.client import HTTPConnection, HTTPException
from itertools import count
from threading import Event, Thread
from urllib.parse import urlencode

from django.conf import settings
from django.test import Client

from fronts.models import Cabinet
from shopjobs.management.commands.demo import HOST
from shopjobs.models import Person
from tests.dom import Answer
from tests.pages.shared.sending import as_sent

TOKEN = "a" * 32
BROKEN = (OSError, HTTPException)
"""What somebody meets whose server is gone."""


class Writer(Thread):
    """Somebody who makes a door on hand and changes a cabinet, in turns, until told to stop."""

    def __init__(self, name: str, port: int, cabinet: Cabinet, over: Event) -> None:
        super().__init__(name=name, daemon=True)
        browser = Client()
        browser.force_login(Person.objects.get(username=name))
        session = browser.cookies[settings.SESSION_COOKIE_NAME].value
        self.cookies = f"{settings.SESSION_COOKIE_NAME}={session}; csrftoken={TOKEN}"
        self.port, self.over = port, over
        self.job = f"/jobs/{cabinet.job_id}/"
        self.address = f"{self.job}cabinets/{cabinet.pk}/"
        self.cabinet = cabinet.pk
        self.made: list[str] = []
        self.depth = ""
        self.changes = 0
        self.again = 0
        self.faults: list[str] = []

    @property
    def saves(self) -> int:
        """How many savings were answered so far."""
        return len(self.made) + self.changes

    def run(self) -> None:
        """Save one thing after another; each is through before the next begins."""
        for turn in count():
            if self.over.is_set() or self.faults:
                return
            label = f"{self.name}-{turn}"
            sizes = {"width": "15", "height": "28", "thickness": "3/4", "build": "slab"}
            bores = {"bores-new-TOTAL_FORMS": "0", "bores-new-INITIAL_FORMS": "0"}
            self._save(
                f"{self.job}doors/new/", {"label": label, "form_key": label, **sizes, **bores}
            )
            self.made.append(label)
            self._change(f"23 {1 + turn % 8 * 2}/16")

    def _change(self, depth: str) -> None:
        form = Answer(self._until_answered("GET", self.address, "")).one(".editor")
        if self.depth not in ("", form.field("depth").value):
            self.faults.append(f"{self.depth} was saved, {form.field('depth').value} is held")
        self._save(self.address, as_sent(form, depth=depth))
        self.depth = depth
        self.changes += 1

    def _save(self, address: str, typed: dict[str, str]) -> None:
        self._until_answered("POST", address, urlencode(typed))

    def _until_answered(self, method: str, address: str, body: str) -> str:
        wanted = {"GET": 200, "POST": 302}[method]
        while True:
            try:
                status, text = self._ask(method, address, body)
            except BROKEN:
                self.again += method == "POST"
                time.sleep(0.05)
                continue
            if status != wanted:
                self.faults.append(f"{method} {address} answered {status}")
            return text

    def _ask(self, method: str, address: str, body: str) -> tuple[int, str]:
        headers = {"Cookie": self.cookies, "X-CSRFToken": TOKEN}
        headers["Content-Type"] = "application/x-www-form-urlencoded"
        with closing(HTTPConnection(HOST, self.port, timeout=60)) as asked:
            asked.request(method, address, body, headers)
            answer = asked.getresponse()
            return answer.status, answer.read().decode()
