"""Items as CSV: out, in again, and every way in which a file can be wrong."""

import csv
import io
from collections.abc import Callable
from typing import Any

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client

from fronts.pages.hardware.rows.csv_in import items_from_csv
from fronts.pages.hardware.rows.csv_out import items_csv
from fronts.rules.items import HandleItem, Hardware, HingeItem
from fronts.rules.practice import inches
from fronts.services.hardware import items_set
from fronts.snapshot import kitchen_of
from fronts.snapshot.hardware import hardware_in_force
from shopjobs.models import Job, Person, Revision, Shop
from tests.dom import dom
from tests.factories import NOW
from tests.facts.distinct import Distinct
from tests.facts.whole_kitchen import whole_hardware

SignIn = Callable[[Person], Client]
WAY = "/shop/hardware/handles/file/"
HEAD = "code,name,hole centres of a pull (in),thread\n"


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


def sent(client: Client, data: bytes | str, way: str = WAY) -> Any:
    """Take in a file."""
    content = data.encode() if isinstance(data, str) else data
    return client.post(way, {"file": SimpleUploadedFile("items.csv", content)})


@pytest.mark.parametrize("unit", ["in", "mm"])
@pytest.mark.parametrize("kind", ["hinges", "slides", "handles", "lifts", "bands"])
def test_every_fact_of_an_item_comes_back_from_its_file(kind: str, unit: str) -> None:
    """In the unit of the shop, or of another."""
    items = getattr(whole_hardware(Distinct()), kind)
    made = items_csv(type(items[0]), items, unit=unit, name="x.csv")

    assert tuple(items_from_csv(type(items[0]), made.content)) == items


def test_a_file_says_in_plain_words_what_its_columns_hold(desk: Client, shop: Shop) -> None:
    """With the unit in the heading; no size could be taken for a date."""
    pull = HandleItem("P", "bar", centres=inches(7, 2), thread="8-32", projection=inches(11, 8))
    items_set(owner=shop, kind=HandleItem, items=[pull], at=NOW)

    answer = desk.get("/shop/hardware/handles/items.csv")

    rows = list(csv.reader(io.StringIO(answer.content.decode("utf-8-sig"))))
    assert rows == [
        [
            "code", "name", "hole centres of a pull (in)", "thread",
            "stands out from the front (in)", "on a door", "on a drawer front",
        ],
        ["P", "bar", "3.5", "8-32", "1.375", "Upright", "Across"],
    ]  # fmt: skip
    assert "knobs and pulls.csv" in answer["Content-Disposition"]


def test_a_file_replaces_the_list_in_its_own_order(desk: Client, shop: Shop, job: Job) -> None:
    """Items that stay are changed; what was done is told with its numbers."""
    items_set(owner=shop, kind=HandleItem, items=[HandleItem("A"), HandleItem("B")], at=NOW)

    assert sent(desk, f"{HEAD}C,new,,\nB,knob,76.2 mm,M4\n").status_code == 302

    assert [
        (item.code, item.name, item.centres, item.thread)
        for item in kitchen_of(job).hardware.handles
    ] == [("C", "new", None, None), ("B", "knob", inches(3), "M4")]
    assert "1 new, 1 changed, 1 taken out" in Revision.objects.order_by("-pk")[0].text


def test_a_spreadsheet_may_part_cells_by_semicolons(desk: Client, job: Job) -> None:
    """As it does where decimals have a comma."""
    assert sent(desk, "code;hole centres of a pull (mm)\nP;128\n").status_code == 302

    assert kitchen_of(job).hardware.handles[0].centres == 128


@pytest.mark.parametrize(
    ("data", "told"),
    [
        (f"{HEAD}K,,wide,\n", "Line 2, hole centres of a pull: “wide” is not a length"),
        (f"{HEAD}K,,0,\n", "Line 2, hole centres of a pull"),
        (f"{HEAD}K,,,fine\n", "Line 2, thread: Enter a thread like 8-32, 1/4-20 or M4"),
        (f"{HEAD},,3,\n", "Line 2, code: "),
        (f"{HEAD}K,,,\n\nK,,,\n", "Line 4, code: K stands in line 2 already"),
        (f"{HEAD}K,,,,7\n", "Line 2, column 5: there is no heading over this"),
        ("code,colour\nK,red\n", "Line 1, column 2: no column is called “colour”"),
        ("name\nbar\n", "Line 1: the column “code” is missing"),
        ("code,code\nK,K\n", "Line 1, column 2: “code” stands there twice"),
        (f'{HEAD}K,"never closed,,\n', "this can't be read as CSV"),
        (b"\xff\xfe\x00", "no text in UTF-8"),
        ("\n \n", "Line 1: a heading for each column is missing"),
        (f"{HEAD}" + "".join(f"K{n},,,\n" for n in range(201)), "enter at most 200"),
        (f"{HEAD}{'K' * 41},,,\n", "Line 2, code: Keep it to 40 characters"),
        (f'{HEAD}K,"two\nlines",,\n', "name"),
    ],
)  # fmt: skip
def test_a_bad_file_is_refused_and_nothing_half_done(
    data: bytes | str, told: str, desk: Client, shop: Shop
) -> None:
    """With line and column; the list stays as it was."""
    items_set(owner=shop, kind=HandleItem, items=[HandleItem("A")], at=NOW)

    answer = sent(desk, data)

    assert answer.status_code == 422
    assert told.casefold() in dom(answer).one("main").words.casefold()
    assert hardware_in_force(shop) == Hardware(handles=(HandleItem("A"),))


def test_all_faults_are_told_at_once(desk: Client) -> None:
    """Not the first alone."""
    page = dom(sent(desk, f"{HEAD}K,,wide,\nL,,,fine\n"))

    assert "Line 2" in page.words
    assert "Line 3" in page.words


def test_nothing_chosen_and_too_much_are_refused(desk: Client) -> None:
    """At the field."""
    assert desk.post(WAY).status_code == 422
    assert sent(desk, b"x" * (1024 * 1024 + 1)).status_code == 422


def test_no_cell_is_a_formula_and_each_comes_back(desk: Client, shop: Shop) -> None:
    """A name that a spreadsheet would work out is text in the file, and a name again after it."""
    knob = HandleItem("=K", "=1+1;=2", thread="8-32")
    items_set(owner=shop, kind=HandleItem, items=[knob], at=NOW)

    data = desk.get("/shop/hardware/handles/items.csv").content

    assert b"'=K,'=1+1;'=2," in data
    assert sent(desk, data).status_code == 302
    assert hardware_in_force(shop).handles == (knob,)


def test_a_fixed_distance_below_zero_comes_back(desk: Client, shop: Shop) -> None:
    """A minus begins no formula in our file, and is none that is lost."""
    hinge = HingeItem("H", "overlay", fixed_distance=-inches(1, 8))
    items_set(owner=shop, kind=HingeItem, items=[hinge], at=NOW)

    data = desk.get("/shop/hardware/hinges/items.csv").content

    assert sent(desk, data, "/shop/hardware/hinges/file/").status_code == 302
    assert hardware_in_force(shop).hinges == (hinge,)


def test_a_jobs_own_list_has_files_of_its_own(desk: Client, shop: Shop, job: Job) -> None:
    """The shop's stays as it is."""
    here = f"/jobs/{job.pk}/hardware/"
    desk.post(f"{here}own/")

    assert sent(desk, f"{HEAD}K,,,\n", f"{here}handles/file/").status_code == 302

    assert [item.code for item in kitchen_of(job).hardware.handles] == ["K"]
    assert hardware_in_force(shop) == Hardware()
