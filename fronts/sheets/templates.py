"""Templates at true size: what is bored and cut on each face, to lay on the wood and mark through.

A first page says how they are used and lists them; the pages of templates follow.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import groupby

from django.utils.safestring import SafeString

from fronts.drawings.true_size.card import Card, cards_of
from fronts.drawings.true_size.holes import hole_outline
from fronts.drawings.true_size.jig_end import jig_end, slot_view
from fronts.drawings.true_size.outline import Outline
from fronts.drawings.true_size.page import BAR, ROOM, PlacedCard, template_page
from fronts.figures import cautions
from fronts.figures.findings import findings_of
from fronts.figures.templates import (
    SaidUses,
    already_words,
    edge_words,
    profile_about,
    said_uses,
    slot_about,
    template_about,
    template_title,
)
from fronts.rules.hole_templates import hole_templates
from fronts.rules.jig_profiles import jig_profiles
from fronts.rules.kinds import Unit
from fronts.rules.lengths import Mm, show_with_unit
from fronts.rules.stopped_fronts import stopped_fronts
from fronts.rules.template_holes import bored_before, hole_groups
from fronts.rules.template_results import HoleTemplate, JigProfile, TemplateRoom
from fronts.sheets.sheet_page import SheetSource, page
from fronts.sheets.template_pages import placed_cards

REACH = TemplateRoom(one=(Mm(145), Mm(160)), most=(Mm(440), Mm(480)), both=Mm(77))
"""Up to three sheets are taped together: each seam adds its own error, a tape measure has none.
What has edges on both sides is as wide as leaves room for another beside it."""
_MOST_SAID = 1500
_A_PLACE = 40
"""Letters of fronts and of their places that one drawing bears; what is over has its own."""


@dataclass(frozen=True, slots=True)
class Listed:
    """A template in the list: its number, for which fronts, on which pages of templates."""

    number: str
    uses: SaidUses
    pages: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class ListedKind:
    """Templates that mark the same on the same kind of face."""

    title: str
    about: str
    templates: tuple[Listed, ...]


@dataclass(frozen=True, slots=True)
class _Made:
    """A template with its words and the cards that it is printed on."""

    title: str
    about: Sequence[str]
    uses: SaidUses
    cards: Sequence[Card]


def has_templates(source: SheetSource) -> bool:
    """Whether anything is bored or any jig made: merged, some are left of any."""
    schedule = source.schedule
    return bool(schedule.jigs) or any(True for _ in hole_groups(schedule, source.kitchen))


def content(source: SheetSource) -> str:
    """The templates as HTML."""
    schedule, kitchen = source.schedule, source.kitchen
    unit = kitchen.job.unit
    made = list(_made(source))
    pages = placed_cards([each.cards for each in made])
    context = {
        "title": "Templates at true size",
        "stops": findings_of(schedule).stops,
        "spared": len(source.jig_plan.spared),
        "bar": show_with_unit(BAR[unit], unit),
        "listed": list(_listed(made, pages)),
        "already": [(already_words(each), each.fronts)
                    for each in bored_before(schedule, kitchen)],
        "drawings": [SafeString(template_page(cards, unit)) for cards in pages],
        "cautions": cautions.at_bench(source.jig_plan.jigs, schedule.shims, schedule.fronts),
    }  # fmt: skip
    return page("templates.html", source, context)


def _made(source: SheetSource) -> Iterator[_Made]:
    schedule, unit = source.schedule, source.kitchen.job.unit
    stopped = stopped_fronts(schedule)
    templates = hole_templates(schedule, source.kitchen, REACH)
    titles = [*dict.fromkeys(map(template_title, templates))]
    for template in sorted(templates, key=lambda each: titles.index(template_title(each))):
        for portion in _portions(template):
            yield _of_holes(portion, unit, stopped)
    profiles = jig_profiles(source.jig_plan.jigs)
    for profile in profiles:
        about = profile_about(profile, unit)
        yield _of_jig("Jig’s end", about, jig_end(profile, unit), profile, stopped)
    for profile in profiles:
        if profile.slot is not None:
            outline = slot_view(profile.slot, profile, unit)
            yield _of_jig("Jig’s slot", slot_about(), outline, profile, stopped)


def _portions(template: HoleTemplate) -> Iterator[HoleTemplate]:
    """The template with as many of its uses as its words have room for."""
    letters, uses = 0, [template.uses[0]]
    for use in template.uses[1:]:
        letters += (len(use.front) + _A_PLACE) if use.front != uses[-1].front else 0
        if letters > _MOST_SAID:
            yield replace(template, uses=tuple(uses))
            letters, uses = 0, []
        uses.append(use)
    yield replace(template, uses=tuple(uses))


def _of_holes(template: HoleTemplate, unit: Unit, stopped: frozenset[str]) -> _Made:
    title, about = template_title(template), template_about(template, unit)
    uses = said_uses(template, unit)
    outline = hole_outline(template, edge_words(template), unit)
    return _Made(title, about, uses, cards_of(outline, title, _texts(about, uses, stopped), ROOM))


def _of_jig(
    title: str, about: Sequence[str], outline: Outline, profile: JigProfile,
    stopped: frozenset[str],
) -> _Made:  # fmt: skip
    uses = (("For", profile.fronts),)
    return _Made(title, about, uses, cards_of(outline, title, _texts(about, uses, stopped), ROOM))


def _texts(about: Iterable[str], uses: SaidUses, stopped: frozenset[str]) -> list[str]:
    """All that is said over a template; a front that must not be cut says so."""
    return [*about, *(f"{place}: {_named(fronts, stopped)}" for place, fronts in uses)]


def _named(fronts: Iterable[str], stopped: frozenset[str]) -> str:
    return ", ".join(f"{label} (STOP)" if label in stopped else label for label in fronts)


def _listed(made: Sequence[_Made], pages: Sequence[Sequence[PlacedCard]]) -> Iterator[ListedKind]:
    numbered = enumerate(made, 1)
    for (title, about), same in groupby(numbered, lambda each: (each[1].title, each[1].about[0])):
        rows = tuple(
            Listed(f"T{number}", each.uses, tuple(
                at for at, cards in enumerate(pages, 1)
                if any(placed.number == number for placed in cards)
            ))
            for number, each in same
        )  # fmt: skip
        yield ListedKind(title, about, rows)
