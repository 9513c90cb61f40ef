"""The site as a web server runs it."""

import os

from django.core.wsgi import get_wsgi_application

from shopjobs.environment import WEB
from shopjobs.unread_bodies import reading_all

os.environ[WEB] = "1"
os.environ.setdefault("DJANGO_SETTINGS_MODULE", "shopjobs.settings")
application = reading_all(get_wsgi_application())
