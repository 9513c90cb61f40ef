"""A database in the steps it once took, though a new one takes them all at once."""

from typing import Any

from django.db import connection
from django.db.migrations.executor import MigrationExecutor
from django.db.migrations.loader import MigrationLoader


def in_steps() -> MigrationExecutor:
    """What goes from any step to any other, and knows of none that stands for several."""
    executor = MigrationExecutor(connection)
    loader = executor.loader = MigrationLoader(connection, replace_migrations=False)
    for key, migration in loader.replacements.items():
        loader.graph.remove_replacement_node(key, migration.replaces)
    return executor


def migrated(*targets: tuple[str, str]) -> Any:
    """The tables as they are once the database has come to these migrations."""
    in_steps().migrate(list(targets))
    return in_steps().loader.project_state(list(targets)).apps.get_model


def newest() -> Any:
    """The tables as they are now."""
    return migrated(*in_steps().loader.graph.leaf_nodes())
