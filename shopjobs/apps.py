"""The app of shops, people and jobs."""

from django.apps import AppConfig


class ShopjobsConfig(AppConfig):
    """Shops, their people, their jobs and the diary."""

    name = "shopjobs"
    verbose_name = "Shops and jobs"
    default_auto_field = "django.db.models.BigAutoField"
