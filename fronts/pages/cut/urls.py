"""The addresses of what there is to cut."""

from django.urls import URLPattern, path

from fronts.pages.cut.views import cut_fronts, grain_sets, offcuts, plan

urlpatterns: list[URLPattern] = [
    path("jobs/<int:job_id>/cut/", plan.job_cut, name="job-cut"),
    path("jobs/<int:job_id>/cut/fronts/", cut_fronts.cut_fronts, name="cut-fronts"),
    path("jobs/<int:job_id>/cut/cancel/", plan.cut_cancel, name="cut-cancel"),
    path("jobs/<int:job_id>/cut/offcuts/", offcuts.cut_offcuts, name="cut-offcuts"),
    path("jobs/<int:job_id>/cut/grain/", grain_sets.grain_sets, name="grain-sets"),
    path("jobs/<int:job_id>/cut/grain/apart/", grain_sets.grain_set_apart, name="grain-set-apart"),
]
