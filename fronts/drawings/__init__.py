"""Drawings as SVG: a schedule in, lines and figures out; open drafting standards' line kinds."""
