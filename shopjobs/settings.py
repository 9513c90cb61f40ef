"""The site's settings. What differs between machines comes from `environment`."""

import os
from pathlib import Path

from shopjobs.database import database_settings
from shopjobs.environment import read_environment
from shopjobs.log_settings import log_settings
from shopjobs.mail_server import mail_settings
from shopjobs.uploads import uploads_folder, uploads_storage

BASE_DIR = Path(__file__).resolve().parent.parent
ENVIRONMENT = read_environment(os.environ, root=BASE_DIR)

SECRET_KEY = ENVIRONMENT.secret_key
DEBUG = ENVIRONMENT.debug
ALLOWED_HOSTS = list(ENVIRONMENT.hosts)
# What is printed leads here; where nobody says, to the address by which the site was asked.
SITE_ADDRESS = ENVIRONMENT.address

INSTALLED_APPS = [
    "shopjobs",
    "fronts",
    "django.contrib.auth",
    "django.contrib.contenttypes",
    "django.contrib.sessions",
    "django.contrib.messages",
    "django.contrib.staticfiles",
    "django.forms",
    "django_htmx",
    "django_tasks",
    "django_tasks_db",
    "template_partials",
]
MIDDLEWARE = [
    "shopjobs.health.Health",
    "shopjobs.request_log.RequestLog",
    "django.middleware.security.SecurityMiddleware",
    "shopjobs.middleware.Compression",
    "whitenoise.middleware.WhiteNoiseMiddleware",
    "shopjobs.middleware.ContentPolicy",
    "shopjobs.sessions.Sessions",
    "django.middleware.common.CommonMiddleware",
    "django.middleware.csrf.CsrfViewMiddleware",
    "django.contrib.auth.middleware.AuthenticationMiddleware",
    "django_htmx.middleware.HtmxMiddleware",
    "shopjobs.middleware.Unsaved",
    "shopjobs.middleware.SignInRequired",
    "django.contrib.messages.middleware.MessageMiddleware",
    "django.middleware.clickjacking.XFrameOptionsMiddleware",
]
ROOT_URLCONF = "shopjobs.urls"
WSGI_APPLICATION = "shopjobs.wsgi.application"
TEMPLATES = [
    {
        "BACKEND": "django.template.backends.django.DjangoTemplates",
        "DIRS": [BASE_DIR / "templates"],
        "APP_DIRS": True,
        "OPTIONS": {
            "context_processors": [
                "django.template.context_processors.request",
                "django.contrib.auth.context_processors.auth",
                "django.contrib.messages.context_processors.messages",
                "shopjobs.access.abilities",
            ],
        },
    },
]
FORM_RENDERER = "shopjobs.forms.house.HouseRenderer"


DATABASES = {"default": database_settings(ENVIRONMENT, root=BASE_DIR)}

AUTH_USER_MODEL = "shopjobs.Person"
AUTHENTICATION_BACKENDS = ["shopjobs.backends.PersonBackend"]
AUTH_PASSWORD_VALIDATORS = [
    {"NAME": f"django.contrib.auth.password_validation.{name}"}
    for name in (
        "UserAttributeSimilarityValidator",
        "MinimumLengthValidator",
        "CommonPasswordValidator",
        "NumericPasswordValidator",
    )
]
LOGIN_URL = "shopjobs:sign-in"
LOGIN_REDIRECT_URL = "shopjobs:job-list"
LOGOUT_REDIRECT_URL = "shopjobs:sign-in"
SESSION_ENGINE = "shopjobs.sessions"
SESSION_COOKIE_AGE = 14 * 24 * 3600
CSRF_FAILURE_VIEW = "shopjobs.views.errors.form_expired"
UNSAVED_VIEW = "shopjobs.views.errors.unsaved"

# From so many failures on, a name is locked for one address for so many minutes; from so
# many with any names, the address is.
SIGN_IN_FAILURES = 5
SIGN_IN_FAILURES_OF_AN_ADDRESS = 10 * SIGN_IN_FAILURES
SIGN_IN_LOCK_MINUTES = 15

LANGUAGE_CODE = "en-us"
TIME_ZONE = ENVIRONMENT.time_zone
USE_TZ = True
USE_I18N = False
USE_THOUSAND_SEPARATOR = False

DATA_UPLOAD_MAX_MEMORY_SIZE = 4 * 1024 * 1024
FILE_UPLOAD_MAX_MEMORY_SIZE = 4 * 1024 * 1024
DATA_UPLOAD_MAX_NUMBER_FIELDS = 4000
DATA_UPLOAD_MAX_NUMBER_FILES = 10

# Photos lie beside the database, never below the site's own files, or in a bucket of an S3
# store: pages hand them out.
MEDIA_ROOT = uploads_folder(ENVIRONMENT)

STATIC_URL = "static/"
STATICFILES_DIRS = [BASE_DIR / "static"]
COLLECTED = BASE_DIR / "var" / "static"
# Behind HTTPS WhiteNoise serves what was collected, named by its content and cached for good;
# elsewhere it serves the files from where they lie.
STATIC_ROOT = COLLECTED if ENVIRONMENT.https else None
WHITENOISE_USE_FINDERS = not ENVIRONMENT.https
WHITENOISE_KEEP_ONLY_HASHED_FILES = True
STORAGES = {
    "default": uploads_storage(ENVIRONMENT),
    "staticfiles": {
        "BACKEND": "shopjobs.static_files.CollectedFiles",
        "OPTIONS": {"location": COLLECTED},
    },
}

# What /readyz asks: a name, and the function that raises where the site can't do its work.
READY_CHECKS = (
    ("database", "shopjobs.health.database"),
    ("disk", "shopjobs.health.disk"),
    ("photos", "shopjobs.health.photos"),
    ("printing", "shopjobs.health.printing"),
    ("queue", "shopjobs.queue_health.queue"),
)

# Long work: one queue in the database, and where each kind of task says what it does.
TASKS = {"default": {"BACKEND": "django_tasks_db.DatabaseBackend"}}
TASK_KINDS = {
    "cutting plan": "fronts.tasks.cutting_plan.KIND",
    "sheet set": "fronts.tasks.sheet_set.KIND",
}

# What a job consists of beside its own facts, in words, for whoever deletes it.
JOB_CONTENTS = "fronts.selectors.job_contents.job_contents"

# Why a job's unit stays as it is, in words; "" where it may change.
JOB_UNIT_HELD = "fronts.selectors.order_units.unit_held"

# What lets a person in without a password: it ends with the account, and never comes back from
# a backup.
WAYS_IN = ("shopjobs.Session", "fronts.CalendarFeed")

# What the list of jobs is told of their kitchens: the stages that there are, each with its words;
# how far the jobs of a page have come; how many jobs stand, late or not; and which have a cabinet
# of a name.
JOB_STAGES = "fronts.rules.job_stages.JOB_STAGES"
JOB_PROGRESS = "fronts.selectors.job_progress.progress_of"
JOB_STANDINGS = "fronts.selectors.job_progress.standings_of"
JOBS_WITH_CABINET = "fronts.selectors.job_progress.jobs_with_cabinet"

# What a new shop, or one without jobs whose unit changes, is given of numbers of its own.
SHOP_STARTER = "fronts.services.shop_start.shop_start"

DEMO_LOADER = "fronts.services.demo.load_demo"

X_FRAME_OPTIONS = "DENY"
SECURE_REFERRER_POLICY = "same-origin"
SESSION_COOKIE_SAMESITE = CSRF_COOKIE_SAMESITE = "Lax"
CSRF_COOKIE_HTTPONLY = True
BEHIND_PROXY = ENVIRONMENT.https
if ENVIRONMENT.https:
    # A proxy in front ends HTTPS and sets this header itself, whatever a client sent.
    SECURE_PROXY_SSL_HEADER = ("HTTP_X_FORWARDED_PROTO", "https")
    SECURE_SSL_REDIRECT = SESSION_COOKIE_SECURE = CSRF_COOKIE_SECURE = True
    SECURE_HSTS_SECONDS = 365 * 24 * 3600
    SECURE_HSTS_INCLUDE_SUBDOMAINS = ENVIRONMENT.hsts_subdomains
    SECURE_HSTS_PRELOAD = ENVIRONMENT.hsts_preload
# Whether other names of the same domain are bound by this site's word is for who runs it to say.
SILENCED_SYSTEM_CHECKS = ["security.W005", "security.W021"]

LOGGING = log_settings(ENVIRONMENT)
globals().update(mail_settings(ENVIRONMENT.mail_server))
SERVER_EMAIL = DEFAULT_FROM_EMAIL = ENVIRONMENT.mail_from
ADMINS = [("", address) for address in ENVIRONMENT.errors_mailed_to]
EMAIL_SUBJECT_PREFIX = f"[{ENVIRONMENT.hosts[0]}] "
