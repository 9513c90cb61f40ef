"""A browser in few words, from what it says of itself."""

BROWSERS = (
    ("Edg", "Edge"),
    ("OPR/", "Opera"),
    ("SamsungBrowser/", "Samsung Internet"),
    ("Firefox/", "Firefox"),
    ("FxiOS/", "Firefox"),
    ("CriOS/", "Chrome"),
    ("Chrome/", "Chrome"),
    ("Safari/", "Safari"),
)
"""What stands in a User-Agent, the first that is there: many also name those further down."""
SYSTEMS = (
    ("iPhone", "iPhone"),
    ("iPad", "iPad"),
    ("Android", "Android"),
    ("Windows", "Windows"),
    ("CrOS", "ChromeOS"),
    ("Macintosh", "Mac"),
    ("Linux", "Linux"),
)


def browser_words(user_agent: str) -> str:
    """Return words like "Firefox on Windows"; "" where nothing is known."""
    browser = _first(BROWSERS, user_agent)
    system = _first(SYSTEMS, user_agent)
    return f"{browser} on {system}" if browser and system else browser or system


def _first(words: tuple[tuple[str, str], ...], user_agent: str) -> str:
    return next((word for sign, word in words if sign in user_agent), "")
