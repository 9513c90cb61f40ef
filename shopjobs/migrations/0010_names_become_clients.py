"""Every name and address becomes a row of its shop; jobs point at it and say the same words."""

from collections.abc import Iterator
from typing import Any

from django.db import migrations

KEYS = {"client": "client_id", "site": "site_id"}


def texts_to_rows(apps: Any, schema_editor: Any) -> None:
    """One client for each name of a shop, one site for each address of a client."""
    client, site = apps.get_model("shopjobs", "Client"), apps.get_model("shopjobs", "Site")
    jobs = apps.get_model("shopjobs", "Job")._base_manager
    for job in jobs.exclude(client_text="", site_text="").order_by("pk").iterator():
        name, address = job.client_text, job.site_text
        if name.strip():
            job.client, _ = client.objects.get_or_create(shop_id=job.shop_id, name=name)
        if address.strip():
            job.site, _ = site.objects.get_or_create(
                shop_id=job.shop_id, client=job.client, address=address
            )
        job.save(update_fields=["client", "site"])
    for revision, job, changes in _of_jobs(apps):
        for change in changes:
            for said in change[2:4]:
                _key_said(said, job, client, site)
        revision.save(update_fields=["changes"])


def _key_said(said: dict[str, Any] | None, job: Any, client: Any, site: Any) -> None:
    """History names a client or site by its key, where there is one of that name by now."""
    if not said:
        return
    name, address = said.pop("client", None), said.pop("site", None)
    found = {
        "client": client.objects.filter(shop_id=job.shop_id, name=name),
        "site": site.objects.filter(shop_id=job.shop_id, address=address),
    }
    for word, text in (("client", name), ("site", address)):
        row = found[word].order_by("pk").first() if text else None
        if row is not None or text == "":
            said[KEYS[word]] = row and row.pk


def rows_to_texts(apps: Any, schema_editor: Any) -> None:
    """The words that jobs say, in the jobs themselves; what else was known of clients goes."""
    jobs = apps.get_model("shopjobs", "Job")._base_manager
    for job in jobs.select_related("client", "site").order_by("pk").iterator():
        job.client_text = job.client.name if job.client else ""
        job.site_text = job.site.address if job.site else ""
        job.save(update_fields=["client_text", "site_text"])
    names = dict(apps.get_model("shopjobs", "Client").objects.values_list("pk", "name"))
    addresses = dict(apps.get_model("shopjobs", "Site").objects.values_list("pk", "address"))
    for revision, _, changes in _of_jobs(apps):
        for change in changes:
            for said in filter(None, change[2:4]):
                for word, known in (("client", names), ("site", addresses)):
                    if KEYS[word] in said:
                        said[word] = known.get(said.pop(KEYS[word]), "")
        revision.save(update_fields=["changes"])


def _of_jobs(apps: Any) -> Iterator[tuple[Any, Any, list[Any]]]:
    """Every revision of a job that changed its row, and those changes."""
    revisions = apps.get_model("shopjobs", "Revision").objects.exclude(job=None)
    for revision in revisions.select_related("job").order_by("pk").iterator():
        changes = [change for change in revision.changes if change[0] == "shopjobs.job"]
        if changes:
            yield revision, revision.job, changes


class Migration(migrations.Migration):
    dependencies = [("shopjobs", "0009_clients_and_sites")]

    operations = [migrations.RunPython(texts_to_rows, rows_to_texts)]
