"""Addresses of the hardware order."""

from django.urls import URLPattern, path

from fronts.pages.order.views import approval, lines, sendings

_ORDER = "jobs/<int:job_id>/order/"
_SENT = _ORDER + "sent/<int:sending_id>/"

urlpatterns: list[URLPattern] = [
    path(_ORDER, lines.job_order, name="job-order"),
    path("jobs/<int:job_id>/order.csv", lines.job_order_csv, name="job-order-csv"),
    path(_ORDER + "check/", lines.order_lines_check_now, name="order-check"),
    path(_ORDER + "approve/", approval.order_approve_now, name="order-approve"),
    path(_ORDER + "changes/", approval.order_changes_settle, name="order-changes"),
    path(_ORDER + "sent/", sendings.order_send_now, name="order-send"),
    path(_SENT, sendings.order_sending_change, name="order-sending"),
    path(_SENT + "back/", sendings.order_sending_take_back, name="order-sending-back"),
    path(_SENT + "came/", sendings.order_receive_now, name="order-receive"),
]
