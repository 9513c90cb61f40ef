"""Addresses of a job's dates, the shop's calendar, the diary, and its calendar to subscribe to."""

from django.urls import path

from fronts.pages.dates.views import diary, feeds, job, shop

_JOB = "jobs/<int:job_id>/dates/"

urlpatterns = [
    path(_JOB, job.job_dates, name="job-dates"),
    path(_JOB + "days/", job.job_days, name="job-days"),
    path(_JOB + "mark/<slug:stage>/", job.stage_mark_now, name="stage-mark"),
    path("shop/dates/", shop.shop_dates, name="shop-dates"),
    path("shop/dates/closed/", shop.closed_new, name="closed-new"),
    path("shop/dates/closed/<int:closed_id>/", shop.closed_page, name="closed"),
    path("shop/dates/closed/<int:closed_id>/delete/", shop.closed_delete_now, name="closed-delete"),
    path("diary/", diary.diary, name="diary"),
    path("diary/calendar/", feeds.own_feed, name="own-feed"),
    path("diary/calendar/new/", feeds.own_feed_make, name="own-feed-make"),
    path("diary/calendar/withdraw/", feeds.own_feed_withdraw, name="own-feed-withdraw"),
    path("calendar/<str:token>.ics", feeds.feed, name="feed"),
]
