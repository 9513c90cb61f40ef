"""What must agree between the things of one kitchen, so that a drawing names each once."""

from collections import Counter

from django.db.models import Count

from fronts.models import Cabinet, Opening
from fronts.rules.labels import labels_taken
from fronts.rules.lengths import show_with_unit
from fronts.rules.past_cabinet import ends_past
from shopjobs.models import Job


def label_taken_twice(job: Job) -> str | None:
    """A front's name that two openings of the job would share, or None."""
    openings = Opening.objects.filter(cabinet__job=job).annotate(number=Count("fronts"))
    named = Counter(
        name
        for row in openings.values_list("cabinet__label", "label", "number")
        for name in labels_taken(*row)
    )
    return min((name for name, times in named.items() if times > 1), default=None)


def past_cabinet(opening: Opening, cabinet: Cabinet, unit: str) -> dict[str, str]:
    """Where the opening goes past its cabinet's outline, at `width` and `height`."""
    return {
        size: f"the opening ends {show_with_unit(by, unit)} past cabinet {cabinet.label}"
        for size, by in ends_past(opening, cabinet).items()
    }
