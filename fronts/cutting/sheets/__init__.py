"""Plans for sheets."""
