"""Fitting: the cabinets by wall, and each at the installer's phone."""
