"""Prepares what the project needs, outside an activated environment."""


def enter(arguments: list[str]) -> None:
    """Return at once: the environment is taken as it is."""
