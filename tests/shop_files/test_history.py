"""What a shop's history names is its own rows, wherever it has moved."""

from io import BytesIO

from fronts.models import Cabinet
from fronts.services.history import revision_undo
from shopjobs.models import Job, Person, Revision, Shop
from shopjobs.services.shop_files.exporting import shop_export
from shopjobs.services.shop_files.importing import shop_import
from shopjobs.services.shop_files.lines import read_lines, write_lines
from tests.factories import NOW, CabinetFactory
from tests.shop_files.whole_shop import rows_in


def test_history_goes_along(ours: Shop, theirs: Shop) -> None:
    """Undo brings back what the arrived shop deleted, and touches no other shop's row."""
    packed = BytesIO()
    shop_export(shop=ours, to=packed, with_people=False)
    packed.seek(0)
    arrived = shop_import(file=packed, name="Cedar Yard").shop
    before = rows_in(ours)
    later = CabinetFactory.create(job=Job.objects.get(shop=theirs), label="Y8")
    beside = rows_in(theirs)
    cabinets = Cabinet.objects.filter(job__shop=arrived)
    assert not cabinets.filter(label="Z9").exists()

    owner = arrived.people.get(role="owner")
    for text in ("Deleted cabinet Z9", "Undid: Deleted cabinet Z9"):
        revision = Revision.objects.get(shop=arrived, text=text)
        revision_undo(revision=revision, at=NOW, by=owner)
        there = cabinets.filter(label="Z9")
        assert there.count() == (1 if text.startswith("Deleted") else 0)
        assert [each.openings.count() for each in there] == [1] * there.count()

    assert (rows_in(ours), rows_in(theirs)) == (before, beside)
    assert Cabinet.objects.filter(pk=later.pk).exists()
    assert CabinetFactory.create(job=Job.objects.get(shop=theirs), label="X7").pk > later.pk


def test_history_brings_back_no_rights(ours: Shop, theirs: Shop) -> None:
    """Nor can a made-up one name what is no row of the shop: such a row gets a key of its own."""
    stranger, packed = theirs.people.get(role="owner"), BytesIO()
    shop_export(shop=ours, to=packed, with_people=False)
    packed.seek(0)
    lines = list(read_lines(packed))
    history = next(
        line for line in lines if isinstance(line, list) and line[0] == "shopjobs.revision"
    )
    history[2]["changes"] = [
        ["shopjobs.person", stranger.pk, {"is_superuser": True}, {"is_superuser": False}, "x"],
        ["fronts.cabinet", 1, {"job_id": Job.objects.get(shop=theirs).pk}, None],
    ]
    made_up = BytesIO()
    write_lines(made_up, iter(lines))
    made_up.seek(0)

    arrived = shop_import(file=made_up, name="Cedar Yard").shop

    first = Revision.objects.filter(shop=arrived).order_by("pk")[0]
    (_, person, before, _, _), (_, _, cabinet, _) = first.changes
    assert not Person.objects.filter(pk=person).exists()
    assert before == {"is_superuser": False}
    assert not Job.objects.filter(pk=cabinet["job_id"]).exists()
