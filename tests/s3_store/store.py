"""A server that speaks S3, for tests: a process of its own on this machine, gone afterwards."""

import os
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Any

import boto3

STARTS_S = 60
BUCKET = "shop-uploads"


@dataclass(frozen=True, kw_only=True)
class Store:
    """Where it answers, and who may use it."""

    address: str

    @property
    def environ(self) -> dict[str, str]:
        """What the site is told of it."""
        return {
            "AWS_ENDPOINT_URL_S3": self.address, "AWS_ACCESS_KEY_ID": "a-key-for-tests",
            "AWS_SECRET_ACCESS_KEY": "only-for-tests", "AWS_DEFAULT_REGION": "us-east-1",
        }  # fmt: skip

    def client(self) -> Any:
        """A client of the same kind of store, without the site."""
        return boto3.client(
            "s3", endpoint_url=self.address, aws_access_key_id="another-key",
            aws_secret_access_key="only-for-tests", region_name="us-east-1",
        )  # fmt: skip

    def names(self, bucket: str = BUCKET) -> list[str]:
        """What lies in a bucket."""
        return [
            one["Key"] for one in self.client().list_objects_v2(Bucket=bucket).get("Contents", [])
        ]

    def empty_bucket(self, bucket: str = BUCKET) -> None:
        """A bucket with nothing in it."""
        client = self.client()
        client.create_bucket(Bucket=bucket)
        for name in self.names(bucket):
            client.delete_object(Bucket=bucket, Key=name)


@contextmanager
def running_store() -> Iterator[Store]:
    """The server, as soon as it answers."""
    with socket.create_server(("127.0.0.1", 0)) as probe:
        port = probe.getsockname()[1]
    command = [sys.executable, "-W", "ignore", "-m", "moto.server", "-H", "127.0.0.1"]
    process = subprocess.Popen(
        [*command, "-p", str(port)], env={**os.environ},
        stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
    )  # fmt: skip
    try:
        _wait_for(port, process)
        yield Store(address=f"http://127.0.0.1:{port}")
    finally:
        process.terminate()
        process.wait()


def _wait_for(port: int, process: "subprocess.Popen[bytes]") -> None:
    end = time.monotonic() + STARTS_S
    while time.monotonic() < end and process.poll() is None:
        try:
            socket.create_connection(("127.0.0.1", port), timeout=1).close()
        except OSError:
            time.sleep(0.1)
        else:
            return
    raise RuntimeError("the S3 server for tests did not start")
