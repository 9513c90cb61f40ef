"""What is in stock by group: how much of each thing there is, for which jobs, and free."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from fronts.rules.buying_names import GROUPS, group_of
from fronts.rules.shelf import in_words
from fronts.selectors.shelf import Balance
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class ForJob:
    """What is laid by for one job; of what, for the forms that give it back or use it."""

    job: Job
    amount: str
    number: str

    @property
    def is_gone(self) -> bool:
        """Whether the job was deleted, and has no page."""
        return self.job.deleted_at is not None


@dataclass(frozen=True, slots=True)
class StockRow:
    """One thing; `called` is what the shop's list calls it."""

    key: int
    name: str
    called: str
    on_hand: str
    free: str
    for_jobs: tuple[ForJob, ...]


@dataclass(frozen=True, slots=True)
class StockGroup:
    """Things of one group."""

    name: str
    rows: tuple[StockRow, ...]


def stock_row(balance: Balance, called: str = "") -> StockRow:
    """A thing in words."""
    unit = balance.unit
    return StockRow(
        key=balance.goods.pk,
        name=balance.goods.name,
        called=called,
        on_hand=in_words(balance.on_hand, unit),
        free=in_words(balance.free, unit),
        for_jobs=tuple(
            ForJob(job, in_words(amount, unit), in_words(amount, unit).split()[0])
            for job, amount in balance.laid_by
        ),
    )


def stock_groups(
    balances: Iterable[Balance], names: Mapping[str, str], words: str, job: Job | None
) -> list[StockGroup]:
    """The things by group in which all of `words` are found; of one job what is laid by for it."""
    wanted = words.casefold().split()
    groups: dict[str, list[StockRow]] = {group: [] for group in GROUPS}
    for balance in balances:
        row = stock_row(balance, names.get(balance.goods.name, ""))
        if _holds(row, wanted) and (job is None or balance.at(job)):
            groups[group_of(row.name)].append(row)
    return [StockGroup(group, tuple(rows)) for group, rows in groups.items() if rows]


def _holds(row: StockRow, wanted: Sequence[str]) -> bool:
    jobs = (f"{each.job.number} {each.job.client_name}" for each in row.for_jobs)
    text = " ".join([row.name, row.called, *jobs]).casefold()
    return all(word in text for word in wanted)
