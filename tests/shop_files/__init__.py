"""Tests of a shop on its way from one installation to another."""
