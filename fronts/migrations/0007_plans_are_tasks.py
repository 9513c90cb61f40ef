import django.db.models.deletion
from django.db import migrations, models
from django.utils import timezone


def give_up_what_was_at_work(apps, schema_editor):
    """Plans were worked out inside the web server, which was stopped for this migration."""
    at_work = apps.get_model("fronts", "CutPlan").objects.filter(state="working")
    at_work.update(
        state="failed",
        finished_at=timezone.now(),
        fault="The server was stopped while the plan was being worked out.",
    )


class Migration(migrations.Migration):

    dependencies = [
        ("fronts", "0006_numbers_may_be_the_usual_ones"),
        ("shopjobs", "0004_background_tasks"),
    ]

    operations = [
        migrations.AddField(
            model_name="cutplan",
            name="task",
            field=models.OneToOneField(
                null=True,
                on_delete=django.db.models.deletion.SET_NULL,
                related_name="+",
                to="shopjobs.backgroundtask",
            ),
        ),
        # Backwards too: no thread of the server works on what a worker began.
        migrations.RunPython(give_up_what_was_at_work, give_up_what_was_at_work),
        # Backwards the column comes back empty; whatever is at work was given up, so it is due.
        migrations.AlterField(
            model_name="cutplan",
            name="due_at",
            field=models.DateTimeField(default=timezone.now),
        ),
        migrations.RemoveField(model_name="cutplan", name="due_at"),
    ]
