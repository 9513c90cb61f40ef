
import django.core.validators
import django.db.models.deletion
import fronts.facts.lengths
import fronts.facts.words
from django.conf import settings
from django.db import migrations, models


class Migration(migrations.Migration):

    dependencies = [
        ('fronts', '0008_sheet_sets'),
        migrations.swappable_dependency(settings.AUTH_USER_MODEL),
    ]

    operations = [
        migrations.AddField(
            model_name='fitrecord',
            name='fitted_by_name',
            field=fronts.facts.words.WordsField(blank=True, max_length=301),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='gap_bottom_left',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='gap_bottom_right',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='gap_left_bottom',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='gap_left_top',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='gap_right_bottom',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='gap_right_top',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='gap_top_left',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='gap_top_right',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='planned_bottom',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='planned_bottom_left',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='planned_bottom_right',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='planned_left',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='planned_left_bottom',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='planned_left_top',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='planned_right',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='planned_right_bottom',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='planned_right_top',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='planned_top',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='planned_top_left',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='planned_top_right',
            field=fronts.facts.lengths.MmField(blank=True, null=True),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='state',
            field=fronts.facts.words.LabelField(default='done', max_length=20),
        ),
        migrations.AddField(
            model_name='ordercheck',
            name='checked_by_name',
            field=fronts.facts.words.WordsField(blank=True, max_length=301),
        ),
        migrations.AlterField(
            model_name='fitrecord',
            name='fitted_by',
            field=models.ForeignKey(blank=True, null=True, on_delete=django.db.models.deletion.RESTRICT, related_name='+', to=settings.AUTH_USER_MODEL),
        ),
        migrations.AlterField(
            model_name='ordercheck',
            name='checked_by',
            field=models.ForeignKey(blank=True, null=True, on_delete=django.db.models.deletion.RESTRICT, related_name='+', to=settings.AUTH_USER_MODEL),
        ),
        migrations.AlterField(
            model_name='ordercheck',
            name='item',
            field=fronts.facts.words.LabelField(max_length=200),
        ),
        migrations.AlterField(
            model_name='ordercheck',
            name='need',
            field=models.PositiveIntegerField(default=0, validators=[django.core.validators.MinValueValidator(0), django.core.validators.MaxValueValidator(1000000)]),
        ),
    ]
