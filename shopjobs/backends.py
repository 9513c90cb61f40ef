"""How a request's person is found."""

from django.contrib.auth.backends import ModelBackend

from shopjobs.models import Person


class PersonBackend(ModelBackend):
    """Passwords as Django checks them; a request's person comes with their shop."""

    def get_user(self, user_id: int) -> Person | None:
        """Find the person of a session, unless they may sign in no more."""
        try:
            person = Person.objects.select_related("shop").get(pk=user_id)
        except Person.DoesNotExist:
            return None
        return person if self.user_can_authenticate(person) else None
