"""What the pages of dates show, worked out from planned days."""
