"""What every form of a kitchen shares: its unit, its groups of fields, its refusals."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any, ClassVar, TypeVar, cast

from django import forms
from django.forms.boundfield import BoundField

from fronts.facts.form_fields import FactsFormMeta
from fronts.facts.item_form_field import ChoiceOrNothing
from fronts.facts.number_form_field import WeightField
from fronts.facts.rows import from_values
from fronts.facts.size_form_fields import Size, Sizes
from fronts.rules.facts import incomplete
from shopjobs.forms.house import sentence
from shopjobs.forms.seen import SeenForm
from shopjobs.words import capitalized

T = TypeVar("T")
_WIDE_CHOICE = 14
_WIDE_TEXT = 40
"""Letters of a choice, and of a text, that want two columns."""


@dataclass(frozen=True, slots=True)
class Group:
    """Fields that stand together; a folded group opens where something in it is said."""

    legend: str
    fields: tuple[str, ...]
    folded: bool = False
    hint: str = ""
    kind: str = ""


@dataclass(frozen=True, slots=True)
class When:
    """What another field must say for this one to have any use."""

    field: str
    says: tuple[str, ...]

    def __str__(self) -> str:
        """As the page's script reads it: `closed_by: door pair`."""
        return f"{self.field}: {' '.join(self.says)}"


@dataclass(frozen=True, slots=True)
class Cell:
    """A field in its group; the page puts it away while what `when` names says otherwise."""

    field: BoundField
    is_wide: bool
    when: When | None


@dataclass(frozen=True, slots=True)
class ShownGroup:
    """A group as a template shows it."""

    group: Group
    cells: tuple[Cell, ...]
    is_open: bool


class KitchenForm(SeenForm, metaclass=FactsFormMeta):
    """A form whose bare numbers are in the job's unit.

    It has a field for each fact of the kind of thing that `facts` says, but for those it is
    `without`. It `is_merged` where it changes what is there already.
    """

    facts: ClassVar[type | None] = None
    without: ClassVar[tuple[str, ...]] = ()
    also: ClassVar[tuple[tuple[type, str, tuple[str, ...]], ...]] = ()
    groups: tuple[Group, ...] = ()
    used_when: Mapping[str, When] = MappingProxyType({})
    """Fields that only some choices have a use for, by the rules that drop them too."""
    differing: frozenset[str] = frozenset()
    """Fields that stand for several values; they are left empty, but not folded away."""

    is_merged = False

    def __init__(self, *args: Any, unit: str, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.unit = unit
        for field in self.fields.values():
            if isinstance(field, (Size, Sizes, WeightField)):
                field.speak(unit)

    @property
    def entered(self) -> Any:
        """What was entered, as the thing that the form states."""
        raise NotImplementedError

    @property
    def values(self) -> dict[str, Any]:
        """What was entered, by the names of the table's columns."""
        return dict(self.cleaned_data)

    def clean(self) -> dict[str, Any]:
        """What belongs together is given together."""
        given = super().clean() or {}
        if self.facts is not None:
            for name, fault in incomplete(self.facts, given):
                if name in self.fields and name not in self.errors:
                    self.add_error(name, sentence(fault))
        return given

    def stated(self, kind: type[T], **beside: Any) -> T:
        """What was entered, as the thing that it states; `beside` is what the form doesn't ask."""
        return from_values(kind, self.cleaned_data, **beside)

    def shown_groups(self) -> Iterator[ShownGroup]:
        """The groups in their order; what is at fault or said is never folded away."""
        for group in self.groups:
            fields = tuple(self[name] for name in group.fields if name in self.fields)
            said = any(self._is_said(field) for field in fields)
            if fields:
                cells = tuple(self._cell(field) for field in fields)
                yield ShownGroup(group, cells, said or not group.folded)

    def _cell(self, field: BoundField) -> Cell:
        return Cell(field, _is_wide(field.field), self.used_when.get(field.name))

    def _is_said(self, field: BoundField) -> bool:
        if field.errors or field.name in self.differing:
            return True
        return field.value() not in (None, "", False, 0, (), "0")

    def offer(self, name: str, hint: str) -> None:
        """Show what holds where the field is left empty: greyed, or as the first of a choice."""
        field = self.fields[name]
        if isinstance(field, ChoiceOrNothing):
            field.nothing = capitalized(hint)
        elif isinstance(field, forms.ChoiceField):
            _, *chosen = cast(Iterable[tuple[str, str]], field.choices)
            field.choices = [("", capitalized(hint)), *chosen]
        else:
            field.widget.attrs["placeholder"] = hint


def _is_wide(field: forms.Field) -> bool:
    """Whether what the field holds is longer than a size."""
    if isinstance(field, forms.ChoiceField):
        return any(len(str(words)) > _WIDE_CHOICE for _, words in field.widget.choices)
    longest = getattr(field, "max_length", None) or 0
    return isinstance(field, Sizes) or longest > _WIDE_TEXT
