"""Addresses of history, of a job and of the shop."""

from django.urls import URLPattern, path

from fronts.pages.history import views

urlpatterns: list[URLPattern] = [
    path("jobs/<int:job_id>/history/", views.job_history, name="job-history"),
    path("jobs/<int:job_id>/history/<int:key>/", views.job_past, name="job-past"),
    path("jobs/<int:job_id>/undo/", views.job_undo, name="job-undo"),
    path("jobs/<int:job_id>/undo/bar/", views.job_undo_bar, name="job-undo-bar"),
    path("shop/history/", views.shop_history, name="shop-history"),
    path("shop/undo/", views.shop_undo, name="shop-undo"),
]
