"""The migrations make exactly the tables that the models describe."""

import pytest
from django.core.management import call_command


@pytest.mark.django_db
def test_no_migration_is_missing() -> None:
    """Django exits with a failure where it would write one."""
    call_command("makemigrations", "--check", "--dry-run", "--skip-checks", verbosity=0)
