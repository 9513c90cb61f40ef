import django.core.validators
import django.db.models.deletion
import fronts.facts.lengths
import fronts.facts.words
from decimal import Decimal
from django.db import migrations, models


class Migration(migrations.Migration):
    """Takes away what the rows of fronts say now; columns of words are as long as any word."""

    dependencies = [
        ('fronts', '0004_each_front_its_row'),
    ]

    operations = [
        migrations.RemoveConstraint(
            model_name='box',
            name='one_box_a_front',
        ),
        migrations.RemoveField(
            model_name='box',
            name='index',
        ),
        migrations.RemoveField(
            model_name='box',
            name='opening',
        ),
        migrations.RemoveField(
            model_name='fitrecord',
            name='cabinet',
        ),
        migrations.RemoveField(
            model_name='opening',
            name='count',
        ),
        migrations.RemoveField(
            model_name='opening',
            name='front_build',
        ),
        migrations.RemoveField(
            model_name='opening',
            name='front_choose',
        ),
        migrations.RemoveField(
            model_name='opening',
            name='front_door',
        ),
        migrations.RemoveField(
            model_name='opening',
            name='front_height',
        ),
        migrations.RemoveField(
            model_name='opening',
            name='front_material',
        ),
        migrations.RemoveField(
            model_name='opening',
            name='front_thickness_own',
        ),
        migrations.RemoveField(
            model_name='opening',
            name='front_width',
        ),
        migrations.RemoveField(
            model_name='opening',
            name='heights',
        ),
        migrations.RemoveField(
            model_name='opening',
            name='hinged',
        ),
        migrations.RemoveField(
            model_name='opening',
            name='shift_x',
        ),
        migrations.RemoveField(
            model_name='opening',
            name='shift_y',
        ),
        migrations.AlterField(
            model_name='box',
            name='front',
            field=models.OneToOneField(default=None, on_delete=django.db.models.deletion.CASCADE, related_name='box', to='fronts.front'),
            preserve_default=False,
        ),
        migrations.AlterField(
            model_name='box',
            name='slide',
            field=models.CharField(blank=True, choices=[('bottom', 'bottom'), ('side', 'side'), ('under', 'under')], max_length=20),
        ),
        migrations.AlterField(
            model_name='cabinet',
            name='build',
            field=models.CharField(choices=[('face-frame', 'face-frame'), ('frameless', 'frameless')], max_length=20),
        ),
        migrations.AlterField(
            model_name='cabinet',
            name='kind',
            field=models.CharField(choices=[('base', 'base'), ('wall', 'wall'), ('tall', 'tall')], max_length=20),
        ),
        migrations.AlterField(
            model_name='cabinet',
            name='mount',
            field=models.CharField(blank=True, choices=[('overlay', 'overlay'), ('inset', 'inset')], max_length=20),
        ),
        migrations.AlterField(
            model_name='dooronhand',
            name='build',
            field=models.CharField(choices=[('slab', 'slab'), ('five-piece', 'five-piece')], default='slab', max_length=20),
        ),
        migrations.AlterField(
            model_name='dooronhand',
            name='thickness',
            field=fronts.facts.lengths.MmField(default=Decimal('19.05000000'), zero=False),
        ),
        migrations.AlterField(
            model_name='fitrecord',
            name='label',
            field=fronts.facts.words.WordsField(blank=True, max_length=100),
        ),
        migrations.AlterField(
            model_name='jobstandard',
            name='mount',
            field=models.CharField(blank=True, choices=[('overlay', 'overlay'), ('inset', 'inset')], max_length=20),
        ),
        migrations.AlterField(
            model_name='opening',
            name='closed_by',
            field=models.CharField(choices=[('door', 'door'), ('pair', 'pair'), ('drawer', 'drawer'), ('drawers', 'drawers'), ('pull-out', 'pull-out'), ('fixed', 'fixed'), ('open', 'open')], max_length=20),
        ),
        migrations.AlterField(
            model_name='opening',
            name='mount',
            field=models.CharField(blank=True, choices=[('overlay', 'overlay'), ('inset', 'inset')], max_length=20),
        ),
        migrations.AlterField(
            model_name='shelfpins',
            name='count',
            field=models.PositiveSmallIntegerField(validators=[django.core.validators.MinValueValidator(1), django.core.validators.MaxValueValidator(500)]),
        ),
        migrations.AlterField(
            model_name='shelfpins',
            name='diameter',
            field=fronts.facts.lengths.MmField(default=Decimal('6.35000000'), zero=False),
        ),
        migrations.AlterField(
            model_name='shopstandard',
            name='mount',
            field=models.CharField(blank=True, choices=[('overlay', 'overlay'), ('inset', 'inset')], max_length=20),
        ),
        migrations.AddConstraint(
            model_name='front',
            constraint=models.UniqueConstraint(fields=('opening', 'position'), name='front_in_opening'),
        ),
        migrations.AddConstraint(
            model_name='front',
            constraint=models.CheckConstraint(condition=models.Q(('choose', False), ('door', None), _connector='OR'), name='door_named_or_chosen'),
        ),
    ]

