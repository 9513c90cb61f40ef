"""Views of dates: a job's, the shop's, the diary, its calendar."""
