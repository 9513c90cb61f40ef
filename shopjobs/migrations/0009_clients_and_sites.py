"""Clients and sites have tables; jobs point at them beside the words that they still say."""

import django.db.models.deletion
from django.db import migrations, models

import shopjobs.words


class Migration(migrations.Migration):
    dependencies = [("shopjobs", "0008_job_lists")]

    operations = [
        migrations.CreateModel(
            name="Client",
            fields=[
                ("id", models.BigAutoField(
                    auto_created=True, primary_key=True, serialize=False, verbose_name="ID"
                )),
                ("name", models.CharField(
                    max_length=120,
                    validators=[shopjobs.words.one_line],
                )),
                ("contact", models.CharField(
                    blank=True, max_length=120, validators=[shopjobs.words.one_line]
                )),
                ("phone", models.CharField(
                    blank=True, max_length=40, validators=[shopjobs.words.one_line]
                )),
                ("email", models.EmailField(blank=True, max_length=254)),
                ("note", models.CharField(
                    blank=True, max_length=400, validators=[shopjobs.words.one_line]
                )),
                ("shop", models.ForeignKey(
                    on_delete=django.db.models.deletion.CASCADE, related_name="clients",
                    to="shopjobs.shop",
                )),
            ],
        ),
        migrations.CreateModel(
            name="Site",
            fields=[
                ("id", models.BigAutoField(
                    auto_created=True, primary_key=True, serialize=False, verbose_name="ID"
                )),
                ("address", models.CharField(
                    max_length=240,
                    validators=[shopjobs.words.one_line],
                )),
                ("client", models.ForeignKey(
                    blank=True, null=True, on_delete=django.db.models.deletion.CASCADE,
                    related_name="sites", to="shopjobs.client",
                )),
                ("shop", models.ForeignKey(
                    on_delete=django.db.models.deletion.CASCADE, related_name="+",
                    to="shopjobs.shop",
                )),
            ],
        ),
        migrations.AddConstraint(
            model_name="client",
            constraint=models.UniqueConstraint(
                fields=("shop", "name"), name="client_name_once_a_shop"
            ),
        ),
        migrations.AddConstraint(
            model_name="site",
            constraint=models.UniqueConstraint(
                fields=("client", "address"), name="site_once_a_client"
            ),
        ),
        migrations.AddConstraint(
            model_name="site",
            constraint=models.UniqueConstraint(
                condition=models.Q(("client", None)), fields=("shop", "address"),
                name="site_of_nobody_once",
            ),
        ),
        migrations.RenameField("job", "client", "client_text"),
        migrations.RenameField("job", "site", "site_text"),
        migrations.AddField(
            model_name="job",
            name="client",
            field=models.ForeignKey(
                blank=True, null=True, on_delete=django.db.models.deletion.RESTRICT,
                related_name="jobs", to="shopjobs.client",
            ),
        ),
        migrations.AddField(
            model_name="job",
            name="site",
            field=models.ForeignKey(
                blank=True, null=True, on_delete=django.db.models.deletion.RESTRICT,
                related_name="jobs", to="shopjobs.site",
            ),
        ),
        migrations.AlterField(
            model_name="job",
            name="client_text",
            field=models.CharField(max_length=120, blank=True, default=""),
        ),
        migrations.AlterField(
            model_name="job",
            name="site_text",
            field=models.CharField(max_length=240, blank=True, default=""),
        ),
    ]
