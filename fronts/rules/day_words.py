"""Days and numbers of working days, as people say them."""

from datetime import date


def day_words(day: date, today: date) -> str:
    """`3 March`; with its year where that is another than today's."""
    words = f"{day.day} {day:%B}"
    return words if day.year == today.year else f"{words} {day.year}"


def days_words(days: int) -> str:
    """`1 working day`, `4 working days`."""
    return f"{days} working day{'' if days == 1 else 's'}"


def listed(words: list[str]) -> str:
    """`a`, `a and b`, `a, b and c`."""
    head, last = words[:-1], words[-1:]
    return " and ".join([", ".join(head), *last] if head else last)
