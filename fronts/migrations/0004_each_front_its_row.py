from typing import Any

from django.db import migrations
from django.db.migrations.state import StateApps
from django.db.backends.base.schema import BaseDatabaseSchemaEditor

SEVERAL = {"pair": 2, "open": 0}


def make_fronts(apps: StateApps, editor: BaseDatabaseSchemaEditor) -> None:
    """Give every opening a row for each of its fronts, and their boxes and records of fit to them."""
    Front, Box = apps.get_model("fronts", "Front"), apps.get_model("fronts", "Box")
    FitRecord = apps.get_model("fronts", "FitRecord")
    by_label = {}
    for opening in apps.get_model("fronts", "Opening").objects.select_related("cabinet"):
        fronts = [_front(Front, opening, place) for place in range(_count(opening))]
        Front.objects.bulk_create(fronts)
        for front in fronts:
            Box.objects.filter(opening=opening, index=front.position).update(front=front)
        label = f"{opening.cabinet.label}.{opening.label}"
        for front in fronts:
            name = label if len(fronts) == 1 else f"{label}.{front.position + 1}"
            by_label[opening.cabinet.job_id, name] = front
    for record in FitRecord.objects.all():
        record.front = by_label.get((record.job_id, record.label))
        record.save(update_fields=["front"])
    Box.objects.filter(front=None).delete()


def _count(opening: Any) -> int:
    if opening.closed_by == "drawers":
        return int(opening.count)
    return SEVERAL.get(str(opening.closed_by), 1)


def _front(Front: Any, opening: Any, place: int) -> Any:
    """What was decided about all fronts of the opening holds for each of them."""
    stack = opening.closed_by == "drawers"
    own = opening.heights[place] if stack and place < len(opening.heights) else None
    height = opening.front_height
    if stack and height is not None and opening.front_width is None:
        own, height = height if own is None else own, None
    return Front(
        opening=opening,
        position=place,
        own_height=own,
        door=opening.front_door,
        choose=opening.front_choose,
        width=opening.front_width,
        height=height,
        thickness=opening.front_thickness_own,
        build=opening.front_build,
        material=opening.front_material,
        shift_x=opening.shift_x,
        shift_y=opening.shift_y,
        hinged=opening.hinged if opening.closed_by == "door" else "",
    )


def back(apps: StateApps, editor: BaseDatabaseSchemaEditor) -> None:
    """Say of an opening what its first front says; the way back loses where fronts differ."""
    Front, Box = apps.get_model("fronts", "Front"), apps.get_model("fronts", "Box")
    for opening in apps.get_model("fronts", "Opening").objects.all():
        fronts = list(Front.objects.filter(opening=opening).order_by("position"))
        for front in fronts:
            Box.objects.filter(front=front).update(opening=opening, index=front.position)
        if not fronts:
            continue
        first = fronts[0]
        heights = tuple(front.own_height for front in fronts)
        opening.count = len(fronts) if opening.closed_by == "drawers" else 1
        opening.heights = heights if any(heights) else ()
        opening.hinged = first.hinged
        opening.front_door, opening.front_choose = first.door, first.choose
        opening.front_width, opening.front_height = first.width, first.height
        opening.front_thickness_own, opening.front_build = first.thickness, first.build
        opening.front_material = first.material
        opening.shift_x, opening.shift_y = first.shift_x, first.shift_y
        opening.save()
    for record in apps.get_model("fronts", "FitRecord").objects.exclude(front=None):
        record.cabinet = record.front.opening.cabinet.label
        record.save(update_fields=["cabinet"])


class Migration(migrations.Migration):

    dependencies = [
        ('fronts', '0003_fronts_are_rows'),
    ]

    operations = [
        migrations.RunPython(make_fronts, back),
    ]
