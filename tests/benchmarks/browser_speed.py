"""How fast this machine's browser is, since times on a slowed processor are as slow as that.

The two loops and the mean of them are Lighthouse's BenchmarkIndex (github.com/GoogleChrome/
lighthouse, core/lib/page-functions.js): its "four times slowed" is meant for a machine of 1,500
to 2,000 (its docs/throttling.md).
"""

from playwright.sync_api import Page

from tests.benchmarks.figures import Figure

LOOPS = """() => {
  const perSecond = (loop) => {
    const start = Date.now();
    let rounds = 0;
    while (rounds % 10 || Date.now() - start < 500) loop(rounds++);
    return rounds / 10 / ((Date.now() - start) / 1000);
  };
  const text = () => {
    let letters = "";
    for (let at = 0; at < 10000; at++) letters += "a";
    if (letters.length === 1) throw new Error("never: or the loop is left out");
  };
  const one = [], other = [];
  for (let at = 0; at < 100000; at++) one[at] = other[at] = at;
  const copies = (round) => {
    const [from, to] = round % 2 ? [other, one] : [one, other];
    for (let at = 0; at < from.length; at++) to[at] = from[at];
  };
  return (perSecond(text) + perSecond(copies)) / 2;
}"""


def browser_speed(page: Page) -> Figure:
    """The index of this machine as it is now; of a page that is not slowed."""
    index: float = page.evaluate(LOOPS)
    return Figure("this machine's browser (4 times slowed is meant for 1,500 to 2,000)", index, "")
