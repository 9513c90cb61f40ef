"""Fitting: the job's cabinets, one of them at the wall, and the steps of the work on it."""
