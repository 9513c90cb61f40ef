"""A sheet's code, scanned or typed: whether the sheet is still true, and what changed since."""

from django.http import HttpResponse
from django.shortcuts import redirect
from django.views.decorators.http import require_safe

from fronts.pages.sheets.forms import CodeForm
from fronts.pages.sheets.rows.sheet_code import sheet_now
from fronts.rules.fingerprint import read_short_name
from fronts.selectors.printed_sheets import sheets_with_code
from shopjobs.access import SignedInRequest, signed_in
from shopjobs.pages import render_page

PAGE = "fronts/sheets/code.html"
LAYOUTS = {True: "fronts/job.html", False: "base.html"}
"""Whether there is one job that the page is about."""


@signed_in
@require_safe
def sheet_codes(request: SignedInRequest) -> HttpResponse:
    """Take a code that is typed."""
    code = read_short_name(request.GET.get("code", ""))
    if code is not None:
        return redirect("fronts:sheet-code", code)
    form = CodeForm(request.GET or None)
    context = {"layout": LAYOUTS[False], "form": form}
    return render_page(request, PAGE, context, status=422 if form.is_bound else 200)


@signed_in
@require_safe
def sheet_code(request: SignedInRequest, code: str) -> HttpResponse:
    """Say what became of the sheet; one that this shop did not print is not known."""
    name = read_short_name(code)
    found = sheets_with_code(request.shop, name) if name else ()
    sheets = [sheet_now(printed) for printed in found]
    job = sheets[0].job if len(sheets) == 1 else None
    context = {
        "layout": LAYOUTS[job is not None],
        "job": job,
        "step": "fit",
        "code": code,
        "sheets": sheets,
        "form": CodeForm(initial={"code": "" if sheets else code}),
    }
    return render_page(request, PAGE, context, status=200 if sheets else 404)
