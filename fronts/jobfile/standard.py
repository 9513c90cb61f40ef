"""The house standard of one level, as a job file gives it."""

from fronts.jobfile.reader import Place, Record
from fronts.jobfile.stated import keys_of, stated
from fronts.rules.kinds import CABINET_KINDS
from fronts.rules.kitchen import KindStandard
from fronts.rules.standard_keys import Standard


def standard(record: Record) -> Standard:
    """What `record`'s key `standard` says; an empty standard where it is left out."""
    return record.take("standard", _standard) or Standard()


def kind_standards(record: Record) -> tuple[KindStandard, ...]:
    """What `record`'s key `kind_standards` says of cabinet kinds, each once."""
    found: list[KindStandard] = []
    kinds: set[str] = set()
    for place in record.entries("kind_standards", len(CABINET_KINDS)):
        entry = Record(place, keys_of(KindStandard))
        said = stated(KindStandard, entry, standard=standard(entry))
        entry.once("kind", said.kind, kinds, "a kind that no other entry is about")
        found.append(said)
    return tuple(found)


def _standard(place: Place) -> Standard:
    record = Record(place, keys_of(Standard, place.page.version))
    if record.has("overlay") and record.has("reveal"):
        record.fault("reveal", "only one of overlay and reveal on one level", "both")
    return stated(Standard, record)
