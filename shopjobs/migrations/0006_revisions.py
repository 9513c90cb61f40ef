"""The diary becomes history: a line may hold what it changed, and can be taken back.

Lines that there are stay as they are; what they changed was not kept. A deleted job is kept
for some time, so that a number counts once only among those that are not.
"""

import django.db.models.deletion
from django.apps.registry import Apps
from django.db import migrations, models
from django.db.backends.base.schema import BaseDatabaseSchemaEditor


def let_go_of_deleted_jobs(apps: Apps, schema_editor: BaseDatabaseSchemaEditor) -> None:
    """On the way back nothing could tell a deleted job from the others."""
    apps.get_model("shopjobs", "Job")._base_manager.exclude(deleted_at=None).delete()


class Migration(migrations.Migration):
    """Rename the table, and add what history needs."""

    dependencies = [
        ("shopjobs", "0005_sent_forms"),
    ]

    operations = [
        migrations.RenameModel("DiaryEntry", "Revision"),
        migrations.RemoveConstraint(
            model_name='job',
            name='job_number_once_a_shop',
        ),
        migrations.RenameIndex(
            model_name='revision',
            new_name='revisions_by_time',
            old_name='diary_by_time',
        ),
        migrations.AddField(
            model_name='job',
            name='deleted_at',
            field=models.DateTimeField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='revision',
            name='about',
            field=models.CharField(blank=True, max_length=40),
        ),
        migrations.AddField(
            model_name='revision',
            name='can_undo',
            field=models.BooleanField(default=False),
        ),
        migrations.AddField(
            model_name='revision',
            name='changes',
            field=models.JSONField(default=list),
        ),
        migrations.AddField(
            model_name='revision',
            name='undoes',
            field=models.ForeignKey(blank=True, null=True, on_delete=django.db.models.deletion.SET_NULL, related_name='undone_by', to='shopjobs.revision'),
        ),
        migrations.AlterField(
            model_name='revision',
            name='job',
            field=models.ForeignKey(blank=True, null=True, on_delete=django.db.models.deletion.SET_NULL, related_name='revisions', to='shopjobs.job'),
        ),
        migrations.AlterField(
            model_name='revision',
            name='shop',
            field=models.ForeignKey(on_delete=django.db.models.deletion.CASCADE, related_name='revisions', to='shopjobs.shop'),
        ),
        migrations.AddIndex(
            model_name='revision',
            index=models.Index(fields=['job', '-id'], name='revisions_of_job'),
        ),
        migrations.AddConstraint(
            model_name='job',
            constraint=models.UniqueConstraint(condition=models.Q(('deleted_at', None)), fields=('shop', 'number'), name='job_number_once_a_shop'),
        ),
        migrations.RunPython(migrations.RunPython.noop, let_go_of_deleted_jobs),
    ]
