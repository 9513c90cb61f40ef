import django.db.models.deletion
import fronts.facts.lengths
import fronts.facts.words
from decimal import Decimal
from django.db import migrations, models


class Migration(migrations.Migration):
    """Makes the table of fronts, and room for what is to point at its rows."""

    dependencies = [
        ('fronts', '0002_cutting_plans_and_order_lists'),
    ]

    operations = [
        migrations.CreateModel(
            name='Front',
            fields=[
                ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                ('position', models.PositiveSmallIntegerField()),
                ('own_height', fronts.facts.lengths.MmField(blank=True, null=True, zero=False)),
                ('choose', models.BooleanField(default=False)),
                ('width', fronts.facts.lengths.MmField(blank=True, null=True, zero=False)),
                ('height', fronts.facts.lengths.MmField(blank=True, null=True, zero=False)),
                ('thickness', fronts.facts.lengths.MmField(blank=True, null=True, zero=False)),
                ('build', models.CharField(blank=True, choices=[('slab', 'slab'), ('five-piece', 'five-piece')], max_length=20)),
                ('material', fronts.facts.words.WordsField(blank=True, max_length=80)),
                ('shift_x', fronts.facts.lengths.MmField(default=Decimal('0E-8'), signed=True)),
                ('shift_y', fronts.facts.lengths.MmField(default=Decimal('0E-8'), signed=True)),
                ('hinged', models.CharField(blank=True, choices=[('left', 'left'), ('right', 'right'), ('top', 'top'), ('bottom', 'bottom')], max_length=20)),
                ('door', models.ForeignKey(blank=True, null=True, on_delete=django.db.models.deletion.RESTRICT, related_name='fronts', to='fronts.dooronhand')),
                ('opening', models.ForeignKey(on_delete=django.db.models.deletion.CASCADE, related_name='fronts', to='fronts.opening')),
            ],
        ),
        migrations.RenameField(
            model_name='opening',
            old_name='diagonal_1',
            new_name='measured_diagonal_1',
        ),
        migrations.RenameField(
            model_name='opening',
            old_name='diagonal_2',
            new_name='measured_diagonal_2',
        ),
        migrations.AddField(
            model_name='box',
            name='front',
            field=models.ForeignKey(null=True, on_delete=django.db.models.deletion.CASCADE, related_name='+', to='fronts.front'),
        ),
        migrations.AlterField(
            model_name='box',
            name='opening',
            field=models.ForeignKey(null=True, on_delete=django.db.models.deletion.CASCADE, related_name='boxes', to='fronts.opening'),
        ),
        migrations.AlterField(
            model_name='fitrecord',
            name='cabinet',
            field=fronts.facts.words.WordsField(default='', max_length=40),
        ),
        migrations.RemoveIndex(
            model_name='fitrecord',
            name='fronts_fitr_job_id_b8d26b_idx',
        ),
        migrations.RenameField(
            model_name='fitrecord',
            old_name='front',
            new_name='label',
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='front',
            field=models.ForeignKey(blank=True, null=True, on_delete=django.db.models.deletion.SET_NULL, related_name='fits', to='fronts.front'),
        ),
        migrations.AddField(
            model_name='fitrecord',
            name='hung',
            field=models.CharField(blank=True, max_length=64),
        ),
    ]
