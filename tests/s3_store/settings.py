"""The site's settings on an installation whose surroundings say where photos are kept."""

from shopjobs.settings import *  # noqa: F403

PASSWORD_HASHERS = ["django.contrib.auth.hashers.MD5PasswordHasher"]
