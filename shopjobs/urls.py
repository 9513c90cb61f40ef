"""Addresses of the whole site."""

from django.urls import include, path, re_path

from shopjobs.views import (
    account,
    clients,
    errors,
    job_list,
    jobs,
    offline,
    people,
    sessions,
    shops,
    styles,
)

site_urls = (
    [
        path("", jobs.home, name="home"),
        path("sign-in/", account.sign_in, name="sign-in"),
        path("sign-out/", account.sign_out, name="sign-out"),
        path("password/", account.own_password, name="own-password"),
        path("sw.js", offline.worker, name="worker"),
        re_path(
            r"^styles/(?P<names>[a-z_]+(?:-[a-z_]+)*)\.(?P<mark>[0-9a-f]{12})\.css$",
            styles.styles,
            name="styles",
        ),
        path("waiting/", offline.may_send, name="may-send"),
        path("sessions/", sessions.session_list, name="session-list"),
        path("sessions/others/end/", sessions.other_sessions_end, name="other-sessions-end"),
        path("sessions/<slug:handle>/end/", sessions.own_session_end, name="session-end"),
        # jobs
        path("jobs/", job_list.job_list, name="job-list"),
        path("jobs/steps/", jobs.step_list, name="step-list"),
        path("jobs/<int:job_id>/settings/", jobs.job_settings, name="job-settings"),
        path("jobs/<int:job_id>/delete/", jobs.job_delete_now, name="job-delete"),
        path("jobs/<int:job_id>/bring-back/", jobs.job_bring_back, name="job-bring-back"),
        path("jobs/<int:job_id>/archive/", jobs.job_to_archive, name="job-archive"),
        path("jobs/<int:job_id>/unarchive/", jobs.job_from_archive, name="job-unarchive"),
        # clients
        path("clients/", clients.client_list, name="client-list"),
        path("clients/<int:client_id>/", clients.one_client, name="client-page"),
        path("clients/<int:client_id>/merge/", clients.client_merge, name="client-merge"),
        path(
            "clients/<int:client_id>/sites/<int:site_id>/delete/",
            clients.site_delete_now,
            name="site-delete",
        ),
        path("clients/<int:client_id>/delete/", clients.client_delete_now, name="client-delete"),
        # people
        path("people/", people.person_list, name="person-list"),
        path("people/<int:person_id>/", people.person_page, name="person-page"),
        path("people/<int:person_id>/password/", people.person_password, name="person-password"),
        path("people/<int:person_id>/close/", people.person_close, name="person-close"),
        path("people/<int:person_id>/open/", people.person_open, name="person-open"),
        # the shop
        path("shop/", shops.shop_page, name="shop-page"),
    ],
    "shopjobs",
)

urlpatterns = [
    path("", include(site_urls)),
    path("", include("fronts.urls")),
]

handler400 = errors.bad_request
handler403 = errors.not_allowed
handler404 = errors.not_found
handler500 = errors.failed
