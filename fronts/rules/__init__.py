"""The trade's rules, one to a file, pure: measured facts in, schedule out.

Each file reads the same way: a line in shop words, a sketch where it helps, its
errors, its one or two public functions, then private ones.
"""
