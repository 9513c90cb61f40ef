"""A job file to a kitchen and its records, or everything that is wrong with it."""

from dataclasses import dataclass, replace

from fronts.jobfile import values
from fronts.jobfile.cabinets import cabinets
from fronts.jobfile.consistency import Consistency
from fronts.jobfile.items import hardware
from fronts.jobfile.json_text import Keys, decoded, parsed
from fronts.jobfile.reader import Page, Place, Record
from fronts.jobfile.records import KEYS as RECORD_KEYS
from fronts.jobfile.records import records
from fronts.jobfile.shop_numbers import practice
from fronts.jobfile.standard import kind_standards, standard
from fronts.jobfile.stated import keys_of, stated, thing
from fronts.jobfile.stock import stock
from fronts.jobfile.things import things
from fronts.jobfile.walls import tell_wall_faults
from fronts.rules.box_facts import USUAL_BOXES, BoxesMadeOf
from fronts.rules.facts import rows_of
from fronts.rules.job_facts import JobFacts
from fronts.rules.kinds import UNITS, Unit
from fronts.rules.kitchen import BESIDE_CABINETS, Kitchen
from fronts.rules.lengths import INCH, Mm
from fronts.rules.records import NO_RECORDS, Records

VERSION = 2
"""Of what is written."""
VERSIONS = (1, 2)
STEPS: dict[Unit, Mm] = {"in": INCH / 16, "mm": Mm(1, 2)}


@dataclass(frozen=True, slots=True)
class JobFile:
    """All that a job file states: the kitchen, and what people recorded on its job."""

    kitchen: Kitchen
    records: Records = NO_RECORDS


def read(text: str) -> Kitchen:
    """The kitchen alone that a job file states; `Refused` with every fault in the file."""
    return read_job(text).kitchen


def read_job(text: str) -> JobFile:
    """All that a job file states; `Refused` with every fault in it."""
    page, tree = Page(), parsed(text)
    older = isinstance(tree, Keys) and tree.get("version") == 1
    page.version = 1 if older else VERSION
    own = ("version", *keys_of(Kitchen, page.version))
    root = Record(Place(page, "", tree), own if older else (*own, *RECORD_KEYS))
    version = root.need("version", _version, VERSION, _WANTED)
    job = root.need("job", _job, JobFacts(number=""), "an object with number and unit")
    standing = {
        fact.name: things(root, fact, declared)
        for fact, declared in rows_of(Kitchen)
        if fact.kind in BESIDE_CABINETS
    }
    kitchen = Kitchen(
        job=job,
        standard=standard(root),
        kind_standards=kind_standards(root),
        stock=stock(root),
        practice=practice(root),
        hardware=hardware(root),
        boxes_made_of=root.take("boxes_made_of", thing(BoxesMadeOf)) or USUAL_BOXES,
        **standing,
    )
    consistency = Consistency(kitchen.doors_on_hand)
    kitchen = replace(kitchen, cabinets=cabinets(root, consistency, version))
    tell_wall_faults(root, kitchen)
    recorded = NO_RECORDS if older else records(root, kitchen)
    page.faults.refuse_if_any()
    return JobFile(kitchen, recorded)


def read_bytes(data: bytes) -> JobFile:
    """As `read_job`, from a file's bytes."""
    return read_job(decoded(data))


_WANTED = " or ".join(str(version) for version in VERSIONS)


def _version(place: Place) -> int | None:
    if place.value is not True and place.value in VERSIONS:
        return int(place.value)
    place.fault(_WANTED)
    return None


def _job(place: Place) -> JobFacts:
    """Reads the unit first: bare numbers in the whole file are in it."""
    record = Record(place, keys_of(JobFacts))
    unit: Unit = values.chosen(record, "unit", {word: word for word in UNITS}, "mm")
    place.page.unit = unit
    job = stated(JobFacts, record, unit=unit)
    return job if record.has("step") else replace(job, step=STEPS[unit])
