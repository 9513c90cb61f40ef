"""What is in stock by group: how much of each thing there is, for which jobs, and free."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from fronts.pages.shared.list_groups import ListGroup, list_groups
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

    @property
    def text(self) -> str:
        """All in which words are looked for."""
        jobs = (f"{each.job.number} {each.job.client_name}" for each in self.for_jobs)
        return " ".join([self.name, self.called, *jobs])


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
) -> list[ListGroup[StockRow]]:
    """The things by group in which all of `words` are found; of one job what is laid by for it."""
    shown = (each for each in balances if job is None or each.at(job))
    return list_groups((stock_row(each, names.get(each.goods.name, "")) for each in shown), words)
