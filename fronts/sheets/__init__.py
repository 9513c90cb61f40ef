"""Printed sheets: a schedule in, pages out; `pdf` is the one door to WeasyPrint."""
