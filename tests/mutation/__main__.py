"""Tries a sample of changes and says which of them no test notices: [FILE or FOLDER …]"""

import argparse
import ast
import os
import random
import sys
from collections.abc import Iterator, Sequence
from concurrent.futures import ThreadPoolExecutor

from shopjobs.bootstrap import ROOT
from tests.mutation.mutants import Mutant, mutants_of
from tests.mutation.trial import concerned, noticed, passes

FOLDERS = ("fronts/rules", "fronts/services")


def main(words: Sequence[str]) -> int:
    """Try the sample; fail where the tests do so without any change."""
    asked = _asked(words)
    sources = {path: (ROOT / path).read_text(encoding="utf-8") for path in _files(asked.paths)}
    mutants = [each for path, text in sources.items() for each in mutants_of(path, text)]
    sample = mutants if asked.all else _sample(mutants, asked.sample, asked.seed)
    if not sample:
        sys.exit("nothing there to change")
    print(f"{len(sample)} of {len(mutants)} changes in {len(sources)} files, seed {asked.seed}")
    failing = _failing_anyway(sample, sources)
    if failing:
        print("These fail without any change:", *failing, sep="\n  ")
        return 1
    unnoticed = []
    with ThreadPoolExecutor(asked.processes) as pool:
        for mutant, was_noticed in zip(sample, pool.map(noticed, sample), strict=True):
            print("noticed  " if was_noticed else "UNNOTICED", mutant, flush=True)
            unnoticed += [] if was_noticed else [mutant]
    share = 100 * (len(sample) - len(unnoticed)) / len(sample)
    print(f"\n{len(sample) - len(unnoticed)} noticed of {len(sample)} tried: {share:.1f} %")
    for mutant in unnoticed:
        print(f"  unnoticed: {mutant}")
    return 0


def _asked(words: Sequence[str]) -> argparse.Namespace:
    parser = argparse.ArgumentParser(prog="manage.py mutate", description=__doc__)
    parser.add_argument("paths", nargs="*", default=FOLDERS, help="files or folders of fronts")
    parser.add_argument("--sample", type=int, default=60, help="how many changes are tried")
    parser.add_argument("--seed", type=int, default=1, help="another seed is another sample")
    parser.add_argument("--all", action="store_true", help="try every change")
    cores = len(os.sched_getaffinity(0))
    parser.add_argument("--processes", type=int, default=cores, help="how many at a time")
    return parser.parse_args(words)


def _files(paths: Sequence[str]) -> Iterator[str]:
    for path in paths:
        there = ROOT / path
        files = sorted(there.glob("*.py")) if there.is_dir() else [there]
        yield from (str(file.relative_to(ROOT)) for file in files)


def _sample(mutants: Sequence[Mutant], size: int, seed: int) -> list[Mutant]:
    chosen = random.Random(seed).sample(range(len(mutants)), min(size, len(mutants)))
    return [mutants[index] for index in sorted(chosen)]


def _failing_anyway(sample: Sequence[Mutant], sources: dict[str, str]) -> list[str]:
    """The tests that would fail with every change, because they fail with none."""
    groups = {tuple(tests): each.path for each in sample for tests in concerned(each.path)}
    same = {path: ast.unparse(ast.parse(text)) for path, text in sources.items()}
    return [
        " ".join(tests)
        for tests, path in groups.items()
        if not passes(tests, Mutant(path, 0, "", "", same[path]))
    ]


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
