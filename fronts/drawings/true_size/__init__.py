"""Drawings that are printed as large as what they show."""
