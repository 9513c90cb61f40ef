"""Kitchens of which a door maker makes some of the fronts."""

from dataclasses import replace

from hypothesis import strategies as st
from hypothesis.strategies import DrawFn

from fronts.rules.kinds import MadeBy
from fronts.rules.kitchen import Cabinet, Kitchen, Opening
from fronts.rules.standard_keys import Standard
from tests.strategies import kitchens

_SAID: st.SearchStrategy[MadeBy | None] = st.sampled_from((None, None, "here", "bought"))
_WORDS = st.sampled_from((None, "shaker", "=1+1", "bead, 1/4"))


@st.composite
def buying(draw: DrawFn) -> Kitchen:
    """Any kitchen, with a word at some of its levels on who makes its fronts, and how."""
    of = draw(kitchens())
    cabinets = [draw(_cabinet(one)) for one in of.cabinets]
    return replace(of, standard=draw(_level(of.standard)), cabinets=tuple(cabinets))


@st.composite
def _cabinet(draw: DrawFn, of: Cabinet) -> Cabinet:
    openings = [draw(_opening(one)) for one in of.openings]
    return replace(of, standard=draw(_level(of.standard)), openings=tuple(openings))


@st.composite
def _opening(draw: DrawFn, of: Opening) -> Opening:
    fronts = [replace(front, made_by=draw(_SAID)) for front in of.fronts]
    return replace(of, standard=draw(_level(of.standard)), fronts=tuple(fronts))


@st.composite
def _level(draw: DrawFn, of: Standard) -> Standard:
    return replace(of, made_by=draw(_SAID), door_style=draw(_WORDS), edge_profile=draw(_WORDS))
