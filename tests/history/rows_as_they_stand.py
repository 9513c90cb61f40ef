"""Every row of every shop as it stands."""

from typing import Any

from django.db import connection

from shopjobs.models import Revision
from shopjobs.services.recording import UNRECORDED
from shopjobs.services.shop_files.tables import shop_tables


def state_of_shops() -> dict[tuple[str, Any], dict[str, Any]]:
    """Every row that is a shop's with all its values, but for history itself and counters.

    Read as the database has it: it is asked for hundreds of times, of all tables.
    """
    state = {}
    with connection.cursor() as cursor:
        for label, table in shop_tables().items():
            if table is Revision:
                continue
            cursor.execute(f'SELECT * FROM "{table._meta.db_table}"')
            columns = [column[0] for column in cursor.description]
            unrecorded = UNRECORDED.get(label, ())
            left_out = {
                field.column for field in table._meta.concrete_fields if field.name in unrecorded
            }
            for row in cursor.fetchall():
                values = dict(zip(columns, row, strict=True))
                key = label, values[table._meta.pk.column]
                state[key] = {name: values[name] for name in columns if name not in left_out}
    return state
