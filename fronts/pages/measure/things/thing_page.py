"""How one kind of thing beside the cabinets is entered and shown; a file here for each."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, ClassVar

from fronts.facts.rows import columns_of
from fronts.models.kept import Kept, table_of
from fronts.pages.measure.forms.row_forms import RowForm
from fronts.pages.shared.kitchen_form import KitchenForm
from fronts.pages.shared.thing_addresses import path_of
from fronts.rules.facts import rows_of
from fronts.rules.kitchen import BESIDE_CABINETS
from fronts.services.things import thing_delete
from shopjobs.models import Job
from shopjobs.words import capitalized


class ThingForm(KitchenForm):
    """The form of a thing, without the rows in it."""

    facts: ClassVar[type]

    def __init__(self, *args: Any, held: Any = None, **kwargs: Any) -> None:
        if held is not None:
            kwargs.setdefault("initial", columns_of(held))
        super().__init__(*args, **kwargs)

    @property
    def entered(self) -> Any:
        """The thing as it was entered, without the rows in it."""
        return self.stated(self.facts, **{fact.name: () for fact, _ in rows_of(self.facts)})


@dataclass(frozen=True, slots=True)
class Words:
    """A thing in its list: its size, what it is, what else is known."""

    size: str
    what: str
    notes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class InThing:
    """A small table in a thing's form: the fact that it states, and the form of its rows.

    `prefix` begins the names of its fields.
    """

    fact: str
    form: type[RowForm]
    prefix: str
    legend: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ThingPage:
    """One kind of thing: its form, and its words in a list, by row and unit.

    `letter` begins the labels that are offered, and a new one starts with what is `alike`
    in the last; `offers` says otherwise what one starts with. `settle` gives a form what only
    the job knows. `delete` is asked for where its deletion touches something else. `none` is
    said of an empty list.
    """

    form: type[ThingForm]
    words: Callable[[Any, str], Words]
    letter: str
    none: str
    alike: tuple[str, ...] = ()
    inside: InThing | None = None
    delete: Callable[..., None] = thing_delete
    offers: Callable[[Job], dict[str, object]] | None = None
    settle: Callable[[ThingForm, Job, Any], None] | None = None

    @property
    def table(self) -> type[Kept]:
        """The table that keeps such things."""
        return table_of(self.form.facts)

    @property
    def one(self) -> str:
        """What one is called beside its label; it begins the ids of the page: `door`."""
        return BESIDE_CABINETS[self.form.facts].one

    @property
    def path(self) -> str:
        """What stands for the kind in addresses, and is the id of its list: `doors`."""
        return path_of(self.form.facts)

    @property
    def heading(self) -> str:
        """What they are called together."""
        return capitalized(BESIDE_CABINETS[self.form.facts].says)

    @property
    def name(self) -> str:
        """What one is called in full, with its article: `a door on hand`."""
        name = str(self.table._meta.verbose_name)
        return f"{'an' if name[0] in 'aeiou' else 'a'} {name}"

    @property
    def new_key(self) -> str:
        """Where a new one is entered."""
        return f"{self.one}-new"


@dataclass(frozen=True, slots=True)
class ThingRow:
    """One thing in its list."""

    page: ThingPage
    row: Any
    words: Words

    @property
    def key(self) -> str:
        """The id of its element."""
        return f"{self.page.one}-{self.row.pk}"
