"""Where the log goes and how its lines look, as `logging.config` takes it."""

from typing import Any

from shopjobs.environment import Environment

LINE = "%(asctime)s %(levelname)s %(name)s: %(message)s"


def log_settings(environment: Environment) -> dict[str, Any]:
    """Return the log's settings: to the console, and failures to whom the environment says.

    In JSON each request has its line; in plain text, for people, only what went wrong has.
    """
    as_json = environment.log == "json"
    reports = _reports(environment)
    return {
        "version": 1,
        "disable_existing_loggers": False,
        "formatters": {
            "text": {"format": LINE},
            "json": {"()": "shopjobs.log_lines.JsonLine"},
        },
        "filters": {
            "private": {"()": "shopjobs.log_lines.WithoutSecrets"},
            "short": {"()": "shopjobs.log_lines.ShortOfRefusals"},
        },
        "handlers": {
            "console": {
                "class": "logging.StreamHandler",
                "formatter": environment.log,
                "filters": ["private", "short"],
            },
            **reports,
        },
        "loggers": {
            # Django's own mail of a failure holds the form that was sent; ours doesn't.
            "django": {"handlers": [], "level": "WARNING"},
            "shopjobs": {"level": "INFO" if as_json else "WARNING"},
        },
        "root": {"handlers": ["console", *reports], "level": "WARNING"},
    }


def _reports(environment: Environment) -> dict[str, dict[str, Any]]:
    reports: dict[str, dict[str, Any]] = {}
    if environment.errors_mailed_to:
        reports["mail"] = {
            "class": "shopjobs.error_reports.MailedErrors",
            "filters": ["private"],
        }
    if environment.errors_posted_to:
        reports["post"] = {
            "class": "shopjobs.error_reports.PostedErrors",
            "address": environment.errors_posted_to,
            "filters": ["private"],
        }
    return reports
