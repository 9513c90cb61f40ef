"""Views of the order: its lines, its approval, what was sent and what came."""
