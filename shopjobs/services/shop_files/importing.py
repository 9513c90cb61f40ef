"""Reading a shop's file: its rows come in with new keys, all of them or none."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from itertools import groupby, islice
from typing import IO, Any

from django.db import transaction

from shopjobs.models import Person, Shop
from shopjobs.services.installation import migrations_applied, own_apps, refuse_newer
from shopjobs.services.refused import Refused
from shopjobs.services.shop_files.exporting import FORMAT
from shopjobs.services.shop_files.lines import read_lines
from shopjobs.services.shop_files.new_rows import Line, NewRows
from shopjobs.services.shop_files.newcomers import newcomer
from shopjobs.services.shop_files.tables import label_of, shop_tables

WRITTEN_AT_ONCE = 200


@dataclass(frozen=True, slots=True, kw_only=True)
class Arrival:
    """What came: the shop, how many rows, and who is called otherwise here."""

    shop: Shop
    rows: int
    renamed: Mapping[str, str]


@transaction.atomic
def shop_import(*, file: IO[bytes], name: str = "", with_people: bool = True) -> Arrival:
    """Make the shop of the file, under its own name or another; refuse a name that is taken.

    Without people, they come by name only, as `newcomer` says; so they do from a file that
    holds no more of them.
    """
    lines = read_lines(file)
    head = _head(next(lines, None))
    shop_name = name or head["shop"]
    if Shop.objects.filter(name=shop_name).exists():
        raise Refused(f"There is already a shop called “{shop_name}”. Give another name.")
    by_name_only = not (with_people and head["people"])
    rows, count = NewRows(), 0
    renamed: dict[str, str] = {}
    for label, stated in groupby((_line(said) for said in lines), key=lambda line: line.label):
        while several := list(islice(stated, WRITTEN_AT_ONCE)):
            own = [_as_here(line, shop_name, by_name_only=by_name_only) for line in several]
            rows.write(shop_tables()[label], own)
            count += len(own)
            if label == label_of(Person):
                renamed |= _renamed(several, own)
    rows.settle()
    shops = Shop.objects.filter(name=shop_name)
    if len(shops) != 1:
        raise Refused("This file doesn't hold one shop.")
    return Arrival(shop=shops[0], rows=count, renamed=renamed)


def _head(said: Any) -> Mapping[str, Any]:
    kinds = {"format": str, "application": str, "migrations": list, "shop": str, "people": bool}
    if not isinstance(said, dict) or said.get("format") != FORMAT:
        raise Refused("This is no file of a shop.")
    if any(not isinstance(said.get(key), kind) for key, kind in kinds.items()):
        raise Refused("The first line of this file doesn't say what it must.")
    stated = [str(each) for each in said["migrations"]]
    refuse_newer(version=said["application"], migrations=stated)
    missing = [each for each in migrations_applied(*own_apps()) if each not in stated]
    if missing:
        raise Refused(
            f"This file was written before {', '.join(missing)}: upgrade the installation that it "
            "comes from, and export it again."
        )
    return said


def _line(said: Any) -> Line:
    match said:
        case [str(label), int() | str() as key, dict(values)] if label in shop_tables():
            return Line(label, key, values)
    raise Refused("This file holds a line that is no row of a shop.")


def _as_here(line: Line, shop_name: str, *, by_name_only: bool) -> Line:
    table = shop_tables()[line.label]
    if table is Shop:
        return replace(line, values=line.values | {"name": shop_name})
    if table is Person:
        return replace(line, values=newcomer(line.values, by_name_only=by_name_only))
    return line


def _renamed(stated: list[Line], own: list[Line]) -> Iterator[tuple[str, str]]:
    for before, after in zip(stated, own, strict=True):
        if before.values["username"] != after.values["username"]:
            yield before.values["username"], after.values["username"]
