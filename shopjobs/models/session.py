"""Where people are signed in."""

from django.conf import settings
from django.contrib.sessions.backends.base import SessionBase
from django.contrib.sessions.base_session import AbstractBaseSession
from django.db import models
from django.utils.crypto import salted_hmac
from django.utils.module_loading import import_string

from shopjobs.client_address import LONGEST

LONGEST_BROWSER = 60


class Session(AbstractBaseSession):
    """One browser's session, beside its person, so that a person can see and end their own."""

    person = models.ForeignKey(
        settings.AUTH_USER_MODEL, on_delete=models.CASCADE, null=True, related_name="sessions"
    )
    began_at = models.DateTimeField(null=True)
    seen_at = models.DateTimeField()
    address = models.CharField(max_length=LONGEST, blank=True)
    browser = models.CharField(max_length=LONGEST_BROWSER, blank=True)

    class Meta(AbstractBaseSession.Meta):
        verbose_name = "session"

    @classmethod
    def get_session_store_class(cls) -> type[SessionBase]:
        """Return what reads and writes these rows."""
        store: type[SessionBase] = import_string(f"{settings.SESSION_ENGINE}.SessionStore")
        return store

    @property
    def handle(self) -> str:
        """What pages call it: the key itself would let in whoever reads it."""
        return salted_hmac("shopjobs.session", self.session_key).hexdigest()[:32]
