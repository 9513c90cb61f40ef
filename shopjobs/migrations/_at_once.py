"""All tables of an app made in one step."""

from django.db.backends.base.schema import BaseDatabaseSchemaEditor
from django.db.migrations.operations import CreateModel
from django.db.migrations.operations.base import Operation
from django.db.migrations.state import ProjectState


class TablesAtOnce(Operation):
    """The tables, each after those it refers to.

    One by one, every table that refers to a shop or a job has all that do so worked out again,
    which takes longer the more there are: most of a new installation's first half minute.
    """

    reduces_to_sql = True
    reversible = True

    def __init__(self, *tables: CreateModel) -> None:
        self.tables = tables

    def state_forwards(self, app_label: str, state: ProjectState) -> None:
        state.__dict__.pop("apps", None)  # worked out anew when it is next asked for
        for table in self.tables:
            table.state_forwards(app_label, state)

    def database_forwards(
        self,
        app_label: str,
        schema_editor: BaseDatabaseSchemaEditor,
        from_state: ProjectState,
        to_state: ProjectState,
    ) -> None:
        for table in self.tables:
            table.database_forwards(app_label, schema_editor, from_state, to_state)

    def database_backwards(
        self,
        app_label: str,
        schema_editor: BaseDatabaseSchemaEditor,
        from_state: ProjectState,
        to_state: ProjectState,
    ) -> None:
        for table in reversed(self.tables):
            table.database_backwards(app_label, schema_editor, from_state, to_state)

    def describe(self) -> str:
        return f"Create {len(self.tables)} tables"
