"""Faces that the shop saves under names of its own."""

from functools import partial
from typing import Any

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect
from django.urls import reverse
from django.views.decorators.http import require_http_methods, require_POST

from fronts.models import SavedFace
from fronts.pages.shared.drawn_face import drawn_face
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import posted, who
from fronts.pages.standard.forms.saved_face import SavedFaceForm
from fronts.services.saved_faces import face_forget, face_save, faces_of
from shopjobs.access import SignedInRequest, needs
from shopjobs.pages import render_page

PAGE = "fronts/standard/faces.html"


@needs("standard")
@require_http_methods(["GET", "HEAD", "POST"])
def shop_faces(request: SignedInRequest) -> HttpResponse:
    """Show the faces, and save another one; an address may say its words."""
    form = SavedFaceForm(
        posted(request),
        auto_id="face-new-%s",
        initial={"words": request.GET.get("words", "")},
    )
    return _answer(request, form, None)


@needs("standard")
@require_http_methods(["GET", "HEAD", "POST"])
def shop_face(request: SignedInRequest, key: int) -> HttpResponse:
    """Change a face, or its name."""
    row = get_object_or_404(SavedFace, shop=request.shop, pk=key)
    held = {"name": row.name, "words": row.words}
    return _answer(request, SavedFaceForm(posted(request), auto_id="face-%s", initial=held), row)


@needs("standard")
@require_POST
def shop_face_delete(request: SignedInRequest, key: int) -> HttpResponse:
    """Delete a face; cabinets keep what was entered by its name."""
    row = get_object_or_404(SavedFace, shop=request.shop, pk=key)
    row.shop = request.shop
    face_forget(row=row, **who(request))
    messages.success(request, f"The face {row.name} is deleted.")
    return redirect("fronts:shop-faces")


def _answer(request: SignedInRequest, form: SavedFaceForm, row: SavedFace | None) -> HttpResponse:
    def save() -> SavedFace:
        given = form.cleaned_data
        return face_save(
            shop=request.shop, name=given["name"], words=given["words"], row=row, **who(request)
        )

    return form_answer(
        request, form, show=partial(_show, request, form, row), save=save,
        done=partial(_saved, request),
    )  # fmt: skip


def _saved(request: SignedInRequest, face: SavedFace) -> HttpResponse:
    messages.success(request, f"The face {face.name} is saved.")
    return redirect("fronts:shop-faces")


def _show(
    request: SignedInRequest, form: SavedFaceForm, row: SavedFace | None, *, status: int = 200
) -> HttpResponse:
    shop = request.shop
    faces = faces_of(shop)
    rows = [
        (each, drawn_face(faces[each.name], each.unit))
        for each in SavedFace.objects.filter(shop=shop).order_by("name", "pk")
    ]
    action = reverse("fronts:shop-face", args=[row.pk]) if row else reverse("fronts:shop-faces")
    context: dict[str, Any] = {
        "form": form, "row": row, "rows": rows, "shop": shop, "action": action,
    }  # fmt: skip
    return render_page(request, PAGE, context, status=status)
