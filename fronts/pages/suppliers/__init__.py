"""Suppliers, and what they ask for what the shop buys."""
