"""Where uploaded files are kept: a folder of this machine, or a bucket of an S3 store.

With a bucket several machines serve the same photos. They still go through the site, which
asks each time who may see them: nothing in a bucket has a link of its own.
"""

from typing import Any
from urllib.parse import urlsplit

from django.core.exceptions import ImproperlyConfigured

from shopjobs.bootstrap import S3
from shopjobs.environment import Environment

IN_A_FOLDER = "django.core.files.storage.FileSystemStorage"
IN_A_BUCKET = "shopjobs.s3_uploads.S3Uploads"


def uploads_folder(environment: Environment) -> str:
    """The folder for uploaded files; "" where they are kept in a bucket."""
    return "" if environment.uploads.startswith(S3) else environment.uploads


def uploads_storage(environment: Environment) -> dict[str, Any]:
    """How Django keeps them: `s3://BUCKET`, or `s3://BUCKET/FOLDER`, is a place in a bucket.

    Who may use the bucket, and where it is, boto3 reads from the environment itself. A store
    other than the first of its kind is asked by paths, since few have a name for each bucket.
    """
    if not environment.uploads.startswith(S3):
        return {"BACKEND": IN_A_FOLDER}
    place = urlsplit(environment.uploads)
    if not place.netloc or place.query or place.fragment or place.username:
        raise ImproperlyConfigured(
            f"SHOPJOBS_UPLOADS is {environment.uploads!r}; give s3://BUCKET or s3://BUCKET/FOLDER."
        )
    by_path = {"addressing_style": "path"} if environment.s3_endpoint else {}
    options = {"bucket_name": place.netloc, "location": place.path.strip("/"), **by_path}
    return {"BACKEND": IN_A_BUCKET, "OPTIONS": options}
