"""The site's settings with what only tests want: a key of their own, a quick password hash."""

import os
import tempfile
from pathlib import Path

os.environ.setdefault("SHOPJOBS_SECRET_KEY", "only-for-tests-" * 5)

from shopjobs.settings import *  # noqa: F403
from shopjobs.settings import DATABASES

PASSWORD_HASHERS = ["django.contrib.auth.hashers.MD5PasswordHasher"]

if DATABASES["default"]["ENGINE"] == "django.db.backends.sqlite3":
    # A file, as the site has one: in memory, threads would share a single connection.
    _name = Path(tempfile.gettempdir()) / f"shopjobs-test-{os.getpid()}.sqlite3"
    DATABASES["default"]["TEST"] = {"NAME": str(_name)}

MEDIA_ROOT = str(Path(tempfile.gettempdir()) / f"shopjobs-test-{os.getpid()}-uploads")

# Where a test isn't about the queue, long work is done at once.
TASKS = {"default": {"BACKEND": "django_tasks.backends.immediate.ImmediateBackend"}}
