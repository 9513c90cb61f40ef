"""The house standard of one level, as a job file gives it."""

from fronts.jobfile.reader import Place, Record
from fronts.jobfile.stated import keys_of, stated
from fronts.rules.standard_keys import Standard


def standard(record: Record) -> Standard:
    """What `record`'s key `standard` says; an empty standard where it is left out."""
    return record.take("standard", _standard) or Standard()


def _standard(place: Place) -> Standard:
    record = Record(place, keys_of(Standard, place.page.version))
    if record.has("overlay") and record.has("reveal"):
        record.fault("reveal", "only one of overlay and reveal on one level", "both")
    return stated(Standard, record)
