"""The site as a web server runs it."""

import os

from django.core.wsgi import get_wsgi_application

from shopjobs.environment import WEB

os.environ[WEB] = "1"
os.environ.setdefault("DJANGO_SETTINGS_MODULE", "shopjobs.settings")
application = get_wsgi_application()
