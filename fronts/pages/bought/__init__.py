"""Fronts that are bought: the door maker's list, checked off on receipt."""
