"""`manage.py test`: the whole suite, run by pytest with the arguments that are given."""

import os
import secrets
import sys
from collections.abc import Sequence

from django.core.management.base import BaseCommand

EXPLORE = "--explore"
MOST_SEED = 2**32
ALONE = ("-n", "--numprocesses", "--pdb", "--co", "-s", "--capture=no")
"""Words of pytest's that settle the number of processes, or want to be the only one."""


class Command(BaseCommand):
    """Hands over to pytest, whose exit code and closing line are the command's own."""

    help = (
        "Runs the tests, all of them on every core; whatever follows goes to pytest. With "
        "--explore, property tests try examples that nobody has tried; --explore=SEED tries "
        "the same ones again."
    )

    def run_from_argv(self, argv: list[str]) -> None:
        """Replace this process by pytest."""
        os.environ.pop("DJANGO_SETTINGS_MODULE", None)
        words = explored(argv[2:], secrets.randbelow(MOST_SEED))
        words += spread(words, len(os.sched_getaffinity(0)))
        sys.stdout.flush()
        os.execv(sys.executable, [sys.executable, "-m", "pytest", *words])


def explored(words: Sequence[str], seed: int) -> list[str]:
    """Return pytest's words for ours: `--explore` stands for new examples, from a seed.

    pytest's first lines name the seed, so that what failed can be tried again.
    """
    said: list[str] = []
    for word in words:
        option, _, given = word.partition("=")
        if option != EXPLORE:
            said.append(word)
            continue
        said += ["--hypothesis-profile=explore", f"--hypothesis-seed={given or seed}"]
    return said


def spread(words: Sequence[str], cores: int) -> list[str]:
    """Return what spreads the whole suite over the cores.

    What is named runs in one process, since starting more takes longer than a few tests do.
    """
    alone = any(not word.startswith("-") or word.startswith(ALONE) for word in words)
    return [] if alone or cores == 1 else [f"--numprocesses={cores}", "--dist=worksteal"]
