"""The field in which a person chooses a file of at most so many bytes."""

from typing import Any

from django import forms


class BytesField(forms.FileField):
    """A file's bytes, where there aren't too many; `what` names the file within a sentence."""

    def __init__(self, *, what: str, most: int, **kwargs: Any) -> None:
        self.what, self.most = what, most
        choose = f"Choose a {what}."
        kwargs.setdefault(
            "error_messages",
            {"required": choose, "empty": f"This file is empty. {choose}"},
        )
        super().__init__(**kwargs)

    def clean(self, data: Any, initial: Any = None) -> bytes:
        file = super().clean(data, initial)
        if file.size > self.most:
            raise forms.ValidationError(
                f"This file is over {self.most // 1024 // 1024} MB. No {self.what} is."
            )
        read: bytes = file.read()
        return read
