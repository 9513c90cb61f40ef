"""Signing in and out, and one's own password."""

from typing import Any

from django.contrib import messages
from django.contrib.auth import update_session_auth_hash
from django.contrib.auth.views import LoginView, LogoutView
from django.http import HttpResponse
from django.utils import timezone
from django.views.decorators.http import require_http_methods

from shopjobs.access import SignedInRequest, signed_in
from shopjobs.client_address import client_address
from shopjobs.forms.people import OwnPasswordForm
from shopjobs.forms.sign_in import SignInForm
from shopjobs.pages import go_to, render_page
from shopjobs.services.people import password_set


class SignIn(LoginView):
    """Sign in, then go where one was going."""

    template_name = "registration/sign_in.html"
    authentication_form = SignInForm
    redirect_authenticated_user = True

    def get_context_data(self, **kwargs: Any) -> dict[str, Any]:
        """Whether a session ended under somebody's work, and whether that is kept."""
        return super().get_context_data(**kwargs, ended=self.request.GET.get("ended", ""))

    def form_invalid(self, form: object) -> HttpResponse:
        """Answer 422 with what was typed, but for the password."""
        response = super().form_invalid(form)  # type: ignore[arg-type]
        response.status_code = 422
        return response


sign_in = SignIn.as_view()
sign_out = LogoutView.as_view()


@signed_in
@require_http_methods(["GET", "POST"])
def own_password(request: SignedInRequest) -> HttpResponse:
    """Change one's own password and stay signed in."""
    form = OwnPasswordForm(
        request.POST if request.method == "POST" else None,
        person=request.user,
        address=client_address(request),
    )
    if form.is_bound and form.is_valid():
        password_set(
            person=request.user,
            password=form.cleaned_data["password"],
            by=request.user,
            at=timezone.now(),
        )
        update_session_auth_hash(request, request.user)
        messages.success(request, "Your password is changed.")
        return go_to(request, "shopjobs:own-password")
    status = 422 if form.is_bound else 200
    return render_page(
        request,
        "shopjobs/own_password.html",
        {"form": form},
        partial="own-password",
        status=status,
    )
