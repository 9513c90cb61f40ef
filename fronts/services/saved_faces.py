"""Faces that a shop saves under names of its own, for cells, lines and rows to say."""

from datetime import datetime
from typing import cast

from fronts.models import SavedFace
from fronts.notebook import Face, Faces, NotUnderstood, read_face, read_line
from fronts.notebook.lines import CabinetLine
from fronts.rules.kinds import Unit
from fronts.services.saving import checked, enter, saved, shop_changed
from shopjobs.models import Person, Shop
from shopjobs.services.recording import deleted, recorded
from shopjobs.services.refused import refuse_twice

MOST_FACES = 200


@recorded
def face_save(
    *,
    shop: Shop,
    name: str,
    words: str,
    row: SavedFace | None = None,
    at: datetime,
    by: Person | None = None,
) -> SavedFace:
    """Save a face under a name, or change one; bare numbers in new words are in the shop's unit."""
    others = SavedFace.objects.filter(shop=shop)
    row = row or SavedFace(shop=shop)
    name, words = " ".join(name.split()), " ".join(words.split())
    others = others.exclude(pk=row.pk)
    unit = row.unit if words == row.words else str(shop.unit)
    faults = _faults(name, words, cast(Unit, unit))
    taken = f"there is already a face called {name}"
    if any(one.casefold() == name.casefold() for one in others.values_list("name", flat=True)):
        faults["name"] = taken
    if row._state.adding and others.count() >= MOST_FACES:
        faults["name"] = f"a shop keeps at most {MOST_FACES} faces; delete one first"
    enter(row, {"name": name, "words": words, "unit": unit})
    checked(row, faults)
    with refuse_twice(taken, field="name"):
        saved(row)
    shop_changed(shop=shop, text=f"Saved the face {name}", by=by, at=at)
    return row


@recorded
def face_forget(*, row: SavedFace, at: datetime, by: Person | None = None) -> None:
    """Delete a saved face; cabinets that were entered by its name keep their openings."""
    shop, name = row.shop, row.name
    deleted([row])
    shop_changed(shop=shop, text=f"Deleted the face {name}", by=by, at=at)


def faces_of(shop: Shop) -> Faces:
    """The faces that the shop saved, by their names."""
    rows = SavedFace.objects.filter(shop=shop).order_by("pk")
    return {row.name: read_face(row.words, cast(Unit, row.unit)) for row in rows}


def _faults(name: str, words: str, unit: Unit) -> dict[str, str]:
    """What is wrong with either: a name must be one that a line is understood by."""
    try:
        face = read_face(words, unit)
    except NotUnderstood as fault:
        return {"words": f"found {fault.found}; {fault.wanted} may stand there"}
    return {} if _is_understood(name, face, unit) else {
        "name": "this name would be read as sizes or as another face; choose a word of your own"
    }  # fmt: skip


def _is_understood(name: str, face: Face, unit: Unit) -> bool:
    if "#" in name or not name[:1].isalpha():
        return False
    try:
        read_face(name, unit)
    except NotUnderstood:
        pass
    else:
        return False
    try:
        line = read_line(f"X1 36 {name}", unit, {name: face})
    except NotUnderstood:
        return False
    return isinstance(line, CabinetLine) and line.face == face and not line.sizes
