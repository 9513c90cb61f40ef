"""What is no whole shop, or doesn't fit here, is refused in one line and leaves nothing behind."""

import random
from collections.abc import Callable
from copy import deepcopy
from io import BytesIO, StringIO
from pathlib import Path
from typing import Any

import pytest
from django.contrib.auth.models import Group
from django.core.management import call_command

from fronts.models import FitRecord
from shopjobs.models import Job, Revision, Shop
from shopjobs.services.refused import Refused
from shopjobs.services.shop_files.exporting import shop_export
from shopjobs.services.shop_files.importing import shop_import
from shopjobs.services.shop_files.lines import read_lines, write_lines
from tests.commands.test_jobs import refused
from tests.kitchen_files import SAMPLES
from tests.shop_files.whole_shop import rows_in

Lines = list[Any]
NEW = "Cedar Yard"


@pytest.fixture
def lines(ours: Shop) -> Lines:
    """What its file says, without people's passwords."""
    return list(read_lines(BytesIO(packed_shop(ours))))


def packed_shop(shop: Shop, *, with_people: bool = False) -> bytes:
    """The shop's file."""
    to = BytesIO()
    shop_export(shop=shop, to=to, with_people=with_people)
    return to.getvalue()


def packed(lines: Lines) -> BytesIO:
    """A file that says this."""
    to = BytesIO()
    write_lines(to, iter(lines))
    to.seek(0)
    return to


def rows_of_table(lines: Lines, label: str) -> Lines:
    """The lines of one table."""
    return [line for line in lines if isinstance(line, list) and line[0] == label]


def test_a_name_that_is_taken(ours: Shop, tmp_path: Path) -> None:
    """A shop's name, a person's, a file's: each is told with what to do."""
    file = tmp_path / "ours.shop"
    call_command("export_shop", ours.name, to=file, stdout=StringIO())

    assert refused_import(file) == [
        "There is already a shop called “Alder Row Cabinets”. Give another name."
    ]
    (line,) = refused_import(file, name=NEW)
    assert line.startswith(f"The sign-in name “{ours.people.order_by('pk')[0]}” is taken here.")
    assert refused("export_shop", ours.name, f"--to={file}") == [
        f"{file} is there already. Give another name."
    ]
    assert refused("export_shop", "Nobody", f"--to={tmp_path / 'nobody.shop'}") == [
        "no shop is called Nobody; there are: Alder Row Cabinets"
    ]
    assert [each.name for each in tmp_path.iterdir()] == ["ours.shop"]
    assert Shop.objects.count() == 1


def refused_import(file: Path, **options: str) -> list[str]:
    """What the command that brings a shop in says, a line each."""
    return refused("import_shop", str(file), **options)


def test_a_file_that_is_no_shop(ours: Shop, tmp_path: Path) -> None:
    """Another kind of file, nothing, a folder, no file."""
    for name, content, said in (
        ("job.json", SAMPLES[0].read_bytes(), "This is no file of a shop, or it is damaged."),
        ("empty", b"", "This file was cut short or changed since it was written."),
        ("other", packed([{"format": "else"}]).getvalue(), "This is no file of a shop."),
    ):
        (tmp_path / name).write_bytes(content)
        assert refused_import(tmp_path / name) == [said]
    assert refused_import(tmp_path) == [f"{tmp_path}: is a directory"]
    assert refused_import(tmp_path / "none") == [f"{tmp_path / 'none'}: no such file or directory"]


def test_a_file_that_was_damaged_on_its_way(ours: Shop) -> None:
    """Cut short or with a byte changed anywhere: never half a shop."""
    whole, dice = packed_shop(ours), random.Random(7)
    header_of_gzip = 10
    damaged = [whole[: dice.randrange(len(whole))] for _ in range(20)]
    for _ in range(60):
        place = dice.randrange(header_of_gzip, len(whole))
        changed = bytes([whole[place] ^ (1 << dice.randrange(8))])
        damaged.append(whole[:place] + changed + whole[place + 1 :])

    for content in damaged:
        with pytest.raises(Refused):
            shop_import(file=BytesIO(content), name=NEW)

    assert not Shop.objects.filter(name=NEW).exists()


def test_another_version(lines: Lines) -> None:
    """Newer: by its number, or by the names of migrations. Older: what it lacks."""
    newer, unknown, older = (deepcopy(lines) for _ in range(3))
    newer[0]["application"] = "99.0.0"
    unknown[0]["migrations"].append("fronts.0999_of_tomorrow")
    missing = older[0]["migrations"].pop()

    assert told(newer).startswith("This was made by version 99.0.0; this is version ")
    assert "fronts.0999_of_tomorrow" in told(unknown)
    assert told(older).startswith(f"This file was written before {missing}: upgrade")


def told(lines: Lines) -> str:
    """What is said of a file with these lines."""
    with pytest.raises(Refused) as refusal:
        shop_import(file=packed(lines), name=NEW)
    assert "\n" not in refusal.value.message
    assert not Shop.objects.filter(name=NEW).exists()
    return refusal.value.message


def _set(label: str, name: str, value: Any) -> Callable[[Lines], None]:
    def change(lines: Lines) -> None:
        rows_of_table(lines, label)[0][2][name] = value

    return change


def _twice(lines: Lines) -> None:
    lines.append(rows_of_table(lines, "shopjobs.revision")[0])


def _two_shops(lines: Lines) -> None:
    _, key, values = rows_of_table(lines, "shopjobs.shop")[0]
    lines.insert(1, ["shopjobs.shop", key + 1, values])


def _no_shop(lines: Lines) -> None:
    del lines[1:]


def _without_a_column(lines: Lines) -> None:
    del rows_of_table(lines, "fronts.opening")[0][2]["x"]


FAULTS: tuple[tuple[Callable[[Lines], object], str], ...] = (
    (_set("fronts.opening", "cabinet", 10**6), "cabinet: it points at nothing in this file."),
    (_set("fronts.fitrecord", "front", 10**6), "front: it points at nothing in this file."),
    (_set("fronts.cutplan", "made_by", None), "made_by: it points at nothing in this file."),
    (_set("fronts.cutplan", "job", ["any"]), "job: it points at nothing in this file."),
    (_set("fronts.opening", "closed_by", "kettle"), "closed_by: Value 'kettle' is not a valid"),
    (_set("fronts.opening", "width", "wide"), ", width: "),
    (_set("fronts.opening", "width", "-3"), ", width: "),
    (_set("fronts.opening", "width", None), ", width: "),
    (_set("fronts.opening", "width", {}), ", width: "),
    (_set("fronts.opening", "height", "9" * 400), ", height: "),
    (_set("shopjobs.job", "number", "n" * 41), "number: Ensure this value has at most 40"),
    (_set("shopjobs.job", "created_at", "soon"), ", created_at: "),
    (_set("shopjobs.person", "role", "king"), "role: Value 'king' is not a valid choice."),
    (_set("fronts.opening", "colour", "red"), "not the columns of fronts.opening (colour)"),
    (_without_a_column, "not the columns of fronts.opening (x)"),
    (_twice, "is in this file twice."),
    (_two_shops, "shopjobs.shop"),
    (_no_shop, "This file doesn't hold one shop."),
    (lambda lines: lines.append(["auth.group", 1, {}]), "no row of a shop."),
    (lambda lines: lines.append(["shopjobs.signinfailure", 1, {}]), "no row of a shop."),
    (lambda lines: lines.append(7), "no row of a shop."),
    (lambda lines: lines[0].update(migrations=None), "doesn't say what it must."),
    (lambda lines: lines[0].update(application="one"), "no version of this program."),
)


def test_a_file_that_somebody_made_up(lines: Lines) -> None:
    """Each fault is told by table, key and column, and nothing of the file stays."""
    answers = []
    for change, _ in FAULTS:
        made_up = deepcopy(lines)
        change(made_up)
        answers.append(told(made_up))

    assert [
        (answer, said)
        for answer, (_, said) in zip(answers, FAULTS, strict=True)
        if said not in answer
    ] == []


def test_rows_in_another_order(ours: Shop, lines: Lines) -> None:
    """A row that comes before the one that it points at finds it at the end."""
    fits = rows_of_table(lines, "fronts.fitrecord")
    rest = [line for line in lines if line not in fits]
    needed = [rest.index(rows_of_table(rest, f"shopjobs.{name}")[-1]) for name in ("job", "person")]
    early = max(needed) + 1

    arrival = shop_import(file=packed([*rest[:early], *fits, *rest[early:]]), name=NEW)

    before = rows_in(ours)["fronts.fitrecord"]
    assert rows_in(arrival.shop)["fronts.fitrecord"] == before
    assert len([row for row in before if row["front"]]) > 1


@pytest.mark.parametrize("which", ["person", "job", "group"])
def test_a_row_that_points_at_another_shops(which: str, ours: Shop, theirs: Shop) -> None:
    """Such a shop is not taken apart from the other, in either direction; the line says where."""
    stranger = theirs.people.get(role="owner")
    if which == "person":
        FitRecord.objects.filter(job__shop=ours).update(fitted_by=stranger)
        said = f"points at shopjobs.person {stranger.pk}"
    elif which == "job":
        job = Job.objects.get(shop=theirs)
        Revision.objects.filter(shop=ours).update(job=job)
        said = f"points at shopjobs.job {job.pk}, which is not of this shop"
    else:
        group = Group.objects.create(name="fitters")
        ours.people.get(role="owner").groups.add(group)
        said = f"points at auth.group {group.pk}"

    with pytest.raises(Refused) as refusal:
        packed_shop(ours)
    assert said in refusal.value.message
    if which != "group":
        with pytest.raises(Refused):
            packed_shop(theirs)
