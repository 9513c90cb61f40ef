"""Cutting plans: parts and stock in, a plan that a person can saw out, with its proven bound.

Pure but for the solver. Lengths are exact: they are scaled to whole numbers, and only
whole numbers decide what fits and what is proved.
"""
