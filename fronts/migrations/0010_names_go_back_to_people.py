"""The way back for records of people who are not in the shop, and of gaps at two ends."""

from typing import Any

from django.db import migrations

SIDES = {"left": ("top", "bottom"), "right": ("top", "bottom"),
         "top": ("left", "right"), "bottom": ("left", "right")}
LONGEST_NOTE = 400
PLACES = 8


def _go_back(apps: Any, schema_editor: Any) -> None:
    """Each record gets somebody of its shop, with the name in its note; the mean of two ends."""
    for fit in apps.get_model("fronts", "FitRecord").objects.select_related("job"):
        for side, (first, second) in SIDES.items():
            ends = [getattr(fit, f"gap_{side}_{end}") for end in (first, second)]
            if None not in ends:
                setattr(fit, f"gap_{side}", round(sum(ends) / 2, PLACES))
        _to_somebody(apps, fit, "fitted_by")
    for check in apps.get_model("fronts", "OrderCheck").objects.select_related("job"):
        _to_somebody(apps, check, "checked_by")


def _to_somebody(apps: Any, row: Any, column: str) -> None:
    if getattr(row, column) is None:
        people = apps.get_model("shopjobs", "Person").objects.filter(shop=row.job.shop_id)
        somebody = people.filter(role="owner").order_by("pk").first() or people.first()
        if somebody is None:
            row.delete()
            return
        setattr(row, column, somebody)
        name = getattr(row, f"{column}_name")
        row.note = ": ".join(filter(None, (name, row.note)))[:LONGEST_NOTE]
    row.save()


class Migration(migrations.Migration):
    dependencies = [("fronts", "0009_fits_and_checks_from_files")]
    # On the way here older records have a person, and one figure a side.
    operations = [migrations.RunPython(migrations.RunPython.noop, _go_back)]
