"""Offcuts and doors on hand as their pages show them."""
