"""A database that was restored, brought up to this version."""

from django.core.management import call_command

from shopjobs.models import Session
from shopjobs.services.installation import migrations_applied, refuse_unknown


def bring_up() -> int:
    """Migrate the database that the site is on; return how many migrations that took.

    Sessions end: one that somebody closed since would be open again.
    """
    before = migrations_applied()
    refuse_unknown(before)
    call_command("migrate", verbosity=0, interactive=False)
    Session.objects.all().delete()
    return len(migrations_applied()) - len(before)
