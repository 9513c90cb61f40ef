"""Forms of what others change too: what was shown goes along, and only what was touched counts."""

import json
from collections.abc import Callable, Iterable, Mapping
from typing import Any

from django import forms
from django.core.exceptions import ValidationError
from django.forms.formsets import BaseFormSet

from shopjobs.forms.house import HouseForm

SEEN = "seen"
ROWS = "rows of the table"
THEIRS = "theirs"
"""Names of fields of which what another saved is taken, sent by the button beside each."""
WrittenBy = Callable[[str], str]


def somebody(_: str) -> str:
    """Who saved a field, where that is not known."""
    return "Somebody"


class SeenForm(HouseForm):
    """A form that says what it was shown with, so that two people's changes go together.

    A field that was left as it was shown holds what is there by now, whoever saved that; a
    field that was changed here and elsewhere is a clash: it shows both, and waits for a choice.
    A form that doesn't say what it was shown with has seen nothing.

    `is_merged` is whether there is something to go together with: a new thing has nothing.
    `table` is the form's own small table, which counts as one field. `written_by` says who
    saved a field last.
    """

    seen = forms.CharField(required=False, widget=forms.HiddenInput)
    is_merged = True
    table: "BaseFormSet[Any] | None" = None
    written_by: WrittenBy = staticmethod(somebody)

    def get_initial_for_field(self, field: forms.Field, field_name: str) -> Any:
        """What the form was shown with goes along."""
        if field_name == SEEN:
            return json.dumps(self._now(), ensure_ascii=False)
        return super().get_initial_for_field(field, field_name)

    def full_clean(self) -> None:
        """Put together what was typed and what was saved since, then check it."""
        if self.is_bound and self.is_merged and not hasattr(self, "_clashing"):
            self._clashing = self._merge()
        super().full_clean()
        if self.is_bound and self.is_merged:
            # What is wrong by itself is mended first, whoever else saved.
            self.has_clashes = bool(self._clashing) and not self.errors
            for name, words in self._clashing.items():
                self.add_error(None if name == ROWS else name, words)

    def clean(self) -> dict[str, Any]:
        """What was shown is no fact."""
        given = super().clean() or {}
        given.pop(SEEN, None)
        return given

    def _now(self) -> dict[str, Any]:
        now: dict[str, Any] = shown(self)
        if self.table is not None:
            now[ROWS] = self.table.shown_rows  # type: ignore[attr-defined]
        return now

    def _merge(self) -> dict[str, str]:
        """Let what others saved stand where nothing was typed; the clashes, by field."""
        seen, now = _parsed(self.data.get(self.add_prefix(SEEN))), self._now()
        data: Any = self.data
        self.data = data = data.copy()
        taken = _listed(data, THEIRS)
        clashing: dict[str, str] = {}
        for name, field in self.fields.items():
            was, held = seen.get(name), now.get(name)
            typed = _text(_raw(self, name, field))
            if name in taken:
                self._put(data, name, held)
            elif name == SEEN or was == held:
                continue
            elif isinstance(was, str) and _same(field, typed, was):
                self._put(data, name, held)
            elif not _same(field, typed, held):
                clashing[name] = self._words(name, held, typed)
                vars(field).update(has_theirs=True, theirs=_as_read(field, held))
        if self.table is not None and self._table_clashes(seen.get(ROWS), now[ROWS]):
            clashing[ROWS] = (
                f"{self.written_by(ROWS)} changed the rows while you were typing. "
                "Save again to put yours in their place."
            )
        if clashing:
            data[self.add_prefix(SEEN)] = json.dumps(now, ensure_ascii=False)
        return clashing

    def _table_clashes(self, was: Any, now: list[list[str]]) -> bool:
        """Whether the rows were changed here and elsewhere; untouched, they are what there is."""
        table: Any = self.table
        if not isinstance(was, list) or was == now:
            return False
        typed = table.typed_rows
        if typed == was:
            table.leave_as_held()
            return False
        return bool(typed != now)

    def _put(self, data: Any, name: str, value: str | None) -> None:
        key = self.add_prefix(name)
        if isinstance(self.fields[name].widget, forms.CheckboxInput) and not value:
            data.pop(key, None)
        else:
            data[key] = value or ""

    def _words(self, name: str, held: str | None, typed: str) -> str:
        field = self.fields[name]
        theirs = f"“{_as_read(field, held)}”" if held else "nothing"
        yours = f"“{_as_read(field, typed)}”" if typed else "nothing"
        return (
            f"{self.written_by(name)} made this {theirs} while you were typing; yours is {yours}. "
            "Save again to put yours in its place."
        )


def shown(form: forms.BaseForm) -> dict[str, str]:
    """What each field of a form shows that nobody has typed in yet."""
    return {
        name: _text(_shown(form, name, field))
        for name, field in form.fields.items()
        if name != SEEN
    }


def typed_in(form: forms.BaseForm) -> dict[str, str]:
    """What was typed into each field of a form."""
    return {
        name: _text(_raw(form, name, field)) for name, field in form.fields.items() if name != SEEN
    }


def _shown(form: forms.BaseForm, name: str, field: forms.Field) -> Any:
    value = field.prepare_value(form.get_initial_for_field(field, name))
    if isinstance(field.widget, forms.CheckboxInput):
        return "on" if value else ""
    return field.widget.format_value(value)


def _raw(form: forms.BaseForm, name: str, field: forms.Field) -> Any:
    value = field.widget.value_from_datadict(form.data, form.files, form.add_prefix(name))
    return ("on" if value else "") if isinstance(value, bool) else value


def _text(value: Any) -> str:
    if isinstance(value, list | tuple):
        return ",".join(_text(each) for each in value)
    return "" if value is None else str(value)


def _same(field: forms.Field, one: str, other: str | None) -> bool:
    """Whether two texts say the same in a field, also in other words: `17.25`, `17 1/4`."""
    if one == (other or ""):
        return True
    try:
        return bool(field.clean(one) == field.clean(other or ""))
    except ValidationError:
        return False


def _as_read(field: forms.Field, value: str | None) -> str:
    """What a field holds as a person reads it: of a list, the words of what is chosen."""
    chosen: Iterable[Any] = getattr(field, "choices", ())
    return next((str(words) for key, words in chosen if str(key) == value), value or "")


def _parsed(said: Any) -> Mapping[str, Any]:
    """What the form was shown with; nothing where that was not sent, or is not ours."""
    try:
        seen = json.loads(said or "{}")
    except (ValueError, RecursionError):
        return {}
    return seen if isinstance(seen, dict) else {}


def _listed(data: Any, name: str) -> list[str]:
    return data.getlist(name) if hasattr(data, "getlist") else [data.get(name, "")]
