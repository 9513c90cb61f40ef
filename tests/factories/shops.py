"""Shops, their people and their jobs."""

from typing import Any

from factory.declarations import LazyAttribute, Sequence, SubFactory, Trait
from factory.django import DjangoModelFactory

from shopjobs.models import Job, Person, Role, Shop
from shopjobs.services.jobs import job_create
from shopjobs.services.people import person_create
from shopjobs.services.shops import shop_create
from tests.factories.made import ServedFactory

PASSWORD = "spokeshave and sawdust 9"


class ShopFactory(DjangoModelFactory[Shop]):
    """A shop that works in inches."""

    name = Sequence(lambda number: f"Alder Row Cabinets {number}")

    class Meta:
        model = Shop

    @classmethod
    def _create(cls, model_class: type[Shop], *args: Any, **values: Any) -> Shop:
        return shop_create(**values)


class PersonFactory(ServedFactory[Person]):
    """Somebody of a shop, by default one who only installs."""

    service = person_create
    shop = SubFactory(ShopFactory)
    role = Role.INSTALLER
    username = Sequence(lambda number: f"person-{number}")
    password = PASSWORD

    class Meta:
        model = Person

    class Params:
        owner = Trait(role=Role.OWNER)
        office = Trait(role=Role.OFFICE)
        installer = Trait(role=Role.INSTALLER)


class JobFactory(ServedFactory[Job]):
    """A job without a kitchen, numbered after the shop's others."""

    service = job_create
    shop = SubFactory(ShopFactory)
    number = LazyAttribute(lambda job: f"K-{Job.objects.filter(shop=job.shop).count() + 1}")

    class Meta:
        model = Job
