"""Every table is a shop's, or is said to be the installation's; nothing is left to be forgotten."""

from django.db.models import JSONField

from shopjobs.services.installation import own_apps, own_tables
from shopjobs.services.shop_files.tables import (
    NAMES_ROWS,
    OF_THE_INSTALLATION,
    label_of,
    plain_fields,
    references,
    shop_tables,
    target_of,
)

WITHOUT_KEYS = {
    "fronts.approvedline.facts", "fronts.cutplan.asked", "fronts.cutplan.found",
    "fronts.ordercheck.against", "fronts.orderlist.items",
    "fronts.printedsheet.figures",
    "shopjobs.revision.went",
    *(f"fronts.{level}standard.{name}" for level in ("shop", "job")
      for name in ("hinges_by_height", "hinges_by_weight", "slide_classes")),
}  # fmt: skip


def test_the_apps_are_the_projects_own() -> None:
    """What others wrote keeps no shop's rows."""
    assert own_apps() == ["shopjobs", "fronts"]


def test_every_table_has_its_place() -> None:
    """A new table leads to a shop by its foreign keys, or somebody says why it stays behind."""
    labels = [label_of(table) for table in own_tables()]

    assert sorted([*shop_tables(), *OF_THE_INSTALLATION]) == sorted(labels)
    assert all(OF_THE_INSTALLATION.values())


def test_tables_come_after_those_that_they_point_at() -> None:
    """So that a file can be read from its first line to its last."""
    order = list(shop_tables())

    assert order[0] == "shopjobs.shop"
    assert [
        f"{label}.{reference.name}"
        for label, table in shop_tables().items()
        for reference in references(table)
        if target_of(reference) in order[order.index(label) + 1 :]
    ] == []


def test_somebody_looked_into_every_column_of_json() -> None:
    """Keys get new values on the way: a column that names rows inside is read with them."""
    holding = {
        f"{label}.{field.name}"
        for label, table in shop_tables().items()
        for field in plain_fields(table)
        if isinstance(field, JSONField)
    }

    assert holding == WITHOUT_KEYS | {"shopjobs.revision.changes"}
    assert {"shopjobs.revision"} == NAMES_ROWS.keys() == {list(shop_tables())[-1]}


def test_no_column_says_what_a_file_of_lines_does_not_carry() -> None:
    """Rows in two tables, and references by anything but a key."""
    found = [label for label, table in shop_tables().items() if table._meta.parents]
    found += [label for label, table in shop_tables().items() if table._meta.private_fields]
    found += [
        f"{label}.{reference.name}"
        for label, table in shop_tables().items()
        for reference in references(table)
        if not reference.target_field.primary_key
    ]

    assert found == []
