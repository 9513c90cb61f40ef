"""How a front stands on site: not hung, hung but to be adjusted, done, or a problem.

A record of fit says one of these in a word. Only what is done counts as done; a word that
is none of these, from an older file, is shown as it is and does not count.
"""

from collections.abc import Mapping
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class FrontState:
    """A state: what people call it, and its sign, which says the same without a colour."""

    word: str
    says: str
    sign: str
    is_done: bool = False
    is_problem: bool = False
    hangs: bool = False

    @property
    def is_open(self) -> bool:
        """Whether it can be done and is not."""
        return not (self.is_done or self.is_problem)


NOT_HUNG = FrontState("not-hung", "not hung", "○")
TO_ADJUST = FrontState("to-adjust", "hung, to adjust", "◐", hangs=True)
DONE = FrontState("done", "done", "✓", is_done=True, hangs=True)
A_PROBLEM = FrontState("problem", "a problem", "✕", is_problem=True)
"""What all problems have in common; a record names one of them."""
_PROBLEMS = (
    FrontState("to-remake", "to remake", A_PROBLEM.sign, is_problem=True),
    FrontState("missing", "missing", A_PROBLEM.sign, is_problem=True),
    FrontState("damaged", "damaged", A_PROBLEM.sign, is_problem=True),
    FrontState("wrong-size", "wrong size", A_PROBLEM.sign, is_problem=True, hangs=True),
)
FRONT_STATES: Mapping[str, FrontState] = {
    state.word: state for state in (NOT_HUNG, TO_ADJUST, DONE, *_PROBLEMS)
}


def front_state(word: str) -> FrontState:
    """The state that a word names; a word of an older file as a state of its own."""
    return FRONT_STATES.get(word, FrontState(word, word, "?", hangs=True))
