"""Tests of what is learned."""
