"""The site as a web server runs it."""

import os

from django.core.wsgi import get_wsgi_application

os.environ.setdefault("DJANGO_SETTINGS_MODULE", "shopjobs.settings")
application = get_wsgi_application()
