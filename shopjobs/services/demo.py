"""The demo shop and its three people."""

import json
import os
import secrets
from collections.abc import Mapping
from datetime import datetime

from django.db import transaction

from shopjobs.environment import secrets_folder, write_private
from shopjobs.models import Person, Role, Shop
from shopjobs.services.people import person_create
from shopjobs.services.shops import shop_create

SHOP_NAME = "Heron Lane Cabinets"
PEOPLE = (
    ("owner", Role.OWNER, "Hanna", "Reed"),
    ("installer", Role.INSTALLER, "Ivo", "Marsh"),
    ("office", Role.OFFICE, "Odile", "Sedge"),
)


@transaction.atomic
def demo_shop(*, at: datetime) -> Shop:
    """Return the demo shop; make it and its three people where they aren't there."""
    shop = Shop.objects.filter(name=SHOP_NAME).first() or shop_create(name=SHOP_NAME)
    passwords = demo_passwords(os.environ)
    for username, role, first_name, last_name in PEOPLE:
        if not Person.objects.filter(username=username).exists():
            person_create(
                shop=shop,
                username=username,
                role=role,
                password=passwords[username],
                first_name=first_name,
                last_name=last_name,
                at=at,
            )
    return shop


def demo_passwords(environ: Mapping[str, str]) -> dict[str, str]:
    """Return each demo person's password; made once, and kept outside the repository."""
    path = secrets_folder(environ) / "demo-passwords.json"
    made = {username: secrets.token_urlsafe(9) for username, *_ in PEOPLE}
    kept = path.read_text(encoding="utf-8") if path.exists() else ""
    passwords: dict[str, str] = json.loads(kept or write_private(path, json.dumps(made)))
    return passwords
