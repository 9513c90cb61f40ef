"""A job file to a kitchen, or everything that is wrong with it."""

from fronts.jobfile import sizes, values, words
from fronts.jobfile.cabinets import cabinets
from fronts.jobfile.consistency import Agreement
from fronts.jobfile.doors import doors
from fronts.jobfile.json_text import decoded, parsed
from fronts.jobfile.reader import Page, Place, Record
from fronts.jobfile.shop_numbers import practice
from fronts.jobfile.standard import standard
from fronts.jobfile.stock import stock
from fronts.rules.kitchen import JobFacts, Kitchen, Unit
from fronts.rules.lengths import INCH, Mm

VERSION = 1
KEYS = (
    "version", "job", "standard", "doors_on_hand", "cabinets", "stock", "practice",
)  # fmt: skip
JOB_KEYS = ("number", "client", "site", "unit", "step", "fit_on")
STEPS: dict[Unit, Mm] = {"in": INCH / 16, "mm": Mm(1, 2)}
COARSEST_STEP = INCH
LONGEST_CLIENT = 120
LONGEST_SITE = 240


def read(text: str) -> Kitchen:
    """The kitchen that a job file states; `Refused` with every fault in it."""
    page = Page()
    root = Record(Place(page, "", parsed(text)), KEYS)
    root.need("version", _version, VERSION, str(VERSION))
    job = root.need("job", _job, JobFacts(number=""), "an object with number and unit")
    job_standard, found_doors = standard(root), doors(root)
    kitchen = Kitchen(
        job=job,
        standard=job_standard,
        doors_on_hand=found_doors,
        cabinets=cabinets(root, Agreement(found_doors)),
        stock=stock(root),
        practice=practice(root),
    )
    page.faults.refuse_if_any()
    return kitchen


def read_bytes(data: bytes) -> Kitchen:
    """As `read`, from a file's bytes."""
    return read(decoded(data))


def _version(place: Place) -> int | None:
    if place.value is not True and place.value == VERSION:
        return VERSION
    place.fault(str(VERSION))
    return None


def _job(place: Place) -> JobFacts:
    """Reads the unit first: bare numbers in the whole file are in it."""
    record = Record(place, JOB_KEYS)
    unit: Unit = values.chosen(record, "unit", words.UNITS, "mm")
    place.page.unit = unit
    step = record.take("step", _step)
    return JobFacts(
        number=record.need("number", values.label(), "", "the job's number, as text"),
        client=record.take("client", values.text(LONGEST_CLIENT)) or "",
        site=record.take("site", values.text(LONGEST_SITE)) or "",
        unit=unit,
        step=STEPS[unit] if step is None else step,
        fit_on=record.take("fit_on", values.day),
    )


def _step(place: Place) -> Mm | None:
    return sizes.length(place, sizes.Limits(most=COARSEST_STEP))
