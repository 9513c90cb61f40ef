"""The app of kitchens and their fronts."""

from django.apps import AppConfig


class FrontsConfig(AppConfig):
    """Cabinets, openings, fronts, and everything shown of them."""

    name = "fronts"
    verbose_name = "Kitchens and fronts"
    default_auto_field = "django.db.models.BigAutoField"
