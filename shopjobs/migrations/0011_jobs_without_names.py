"""What jobs said of clients and sites in words is said by the rows that they point at."""

from django.db import migrations


class Migration(migrations.Migration):
    dependencies = [("shopjobs", "0010_names_become_clients")]

    operations = [
        migrations.RemoveField("job", "client_text"),
        migrations.RemoveField("job", "site_text"),
    ]
