"""Measuring at the client's, on a phone: one opening and one size at a time."""
