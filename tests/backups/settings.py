"""The site's settings on an installation that takes uploads."""

import os

from shopjobs.settings import *  # noqa: F403

PASSWORD_HASHERS = ["django.contrib.auth.hashers.MD5PasswordHasher"]
MEDIA_ROOT = os.environ.get("UPLOADS_OF_THE_TEST", "")
