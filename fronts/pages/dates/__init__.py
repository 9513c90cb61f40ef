"""Dates: a job's stages, the shop's calendar, the diary by week, a calendar to subscribe to."""
