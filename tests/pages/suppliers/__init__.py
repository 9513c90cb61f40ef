"""Suppliers and prices, as people see them."""
