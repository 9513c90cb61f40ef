"""A database that was restored, brought up to this version."""

from django.apps import apps
from django.conf import settings
from django.core.management import call_command

from shopjobs.services.installation import migrations_applied, refuse_unknown


def bring_up() -> int:
    """Migrate the database that the site is on; return how many migrations that took.

    What lets somebody in ends: one that somebody withdrew since would hold again.
    """
    before = migrations_applied()
    refuse_unknown(before)
    call_command("migrate", verbosity=0, interactive=False)
    for table in settings.WAYS_IN:
        apps.get_model(table)._default_manager.all().delete()
    return len(migrations_applied()) - len(before)
