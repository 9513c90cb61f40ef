"""Answers read as a browser reads them: elements by selectors, and words as people see them."""

import re
from typing import Any

from selectolax.lexbor import LexborHTMLParser, LexborNode

INLINE = frozenset({"a", "b", "code", "em", "i", "label", "option", "small", "span", "strong",
                    "sub", "sup", "time", "tspan"})  # fmt: skip
UNSEEN = frozenset({"head", "script", "style", "template"})


class Part:
    """An element of a page, or the page itself."""

    def __init__(self, node: LexborNode) -> None:
        self._node = node

    @property
    def name(self) -> str:
        """What element it is: `div`, `a` …"""
        return self._node.tag or ""

    @property
    def words(self) -> str:
        """The text as it is read: one space between words, one between what stands apart."""
        return " ".join("".join(_texts(self._node)).split())

    def all(self, selector: str) -> list["Part"]:
        """Every element inside that the CSS selector names."""
        return [Part(found) for found in self._node.css(selector)]

    def one(self, selector: str) -> "Part":
        """The one element inside that the CSS selector names."""
        (found,) = self.all(selector)
        return found

    def has(self, selector: str) -> bool:
        """Whether the CSS selector names anything inside."""
        return bool(self.all(selector))

    def field(self, name: str) -> "Part":
        """The one field of this name that takes input."""
        return self.one(f':is(input, select, textarea)[name="{name}"]')

    @property
    def value(self) -> str:
        """What a field holds; of a list, what is chosen."""
        if self.name == "textarea":
            return self._node.text()
        if self.name == "select":
            chosen = self.all("option[selected]") or self.all("option")[:1]
            return chosen[0].attribute("value") if chosen else ""
        return self.attribute("value")

    @property
    def placeholder(self) -> str:
        """The greyed words of a field."""
        return self.attribute("placeholder")

    @property
    def values(self) -> list[str]:
        """What the fields inside hold."""
        return [field.value for field in self.all("input, select, textarea")]

    @property
    def addresses(self) -> list[str]:
        """Where the links inside lead and the forms are sent."""
        ways = self.all("[href], [action]")
        return [way.attribute("href") or way.attribute("action") for way in ways]

    def attribute(self, name: str) -> str:
        """An attribute, "" where it is not there."""
        return self._node.attributes.get(name) or ""

    def carries(self, attribute: str) -> bool:
        """Whether the attribute is there, whatever it says."""
        return attribute in self._node.attributes

    @property
    def id(self) -> str:
        return self.attribute("id")


class Answer(Part):
    """An answer's HTML: a whole page, or the parts of one."""

    def __init__(self, text: str) -> None:
        self._tree = LexborHTMLParser(text)
        root = self._tree.root
        assert root is not None
        super().__init__(root)
        self.is_whole = re.match(r"\s*<!doctype html>", text, re.IGNORECASE) is not None

    @property
    def first(self) -> Part:
        """The first element of an answer that is a part of a page."""
        return self.all("body > *")[0]


def dom(answer: Any) -> Answer:
    """What a test client was answered."""
    return Answer(answer.text)


def _texts(node: LexborNode) -> list[str]:
    if node.tag in UNSEEN:
        return []
    inside = []
    for child in node.iter(include_text=True):
        if child.is_text_node:
            inside.append(child.text_content or "")
        elif child.is_element_node:
            apart = [] if child.tag in INLINE else [" "]
            inside += [*apart, *_texts(child), *apart]
    return inside
