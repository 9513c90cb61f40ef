import django.contrib.auth.models
import django.contrib.auth.validators
import django.db.models.deletion
import django.utils.timezone
import shopjobs.words
from decimal import Decimal
from django.conf import settings
from django.db import migrations, models

from shopjobs.migrations._at_once import TablesAtOnce


class Migration(migrations.Migration):

    replaces = [
        ('shopjobs', '0001_initial'),
        ('shopjobs', '0002_words_on_one_line'),
        ('shopjobs', '0003_sessions'),
        ('shopjobs', '0004_background_tasks'),
        ('shopjobs', '0005_sent_forms'),
        ('shopjobs', '0006_revisions'),
        ('shopjobs', '0007_what_went'),
        ('shopjobs', '0008_job_lists'),
        ('shopjobs', '0009_clients_and_sites'),
        ('shopjobs', '0010_names_become_clients'),
        ('shopjobs', '0011_jobs_without_names'),
        ('shopjobs', '0012_files_put'),
    ]

    initial = True

    dependencies = [
        ('auth', '0012_alter_user_first_name_max_length'),
    ]

    operations = [
        TablesAtOnce(
            migrations.CreateModel(
                name='FilePut',
                fields=[
                    ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                    ('name', models.CharField(max_length=200, unique=True)),
                    ('at', models.DateTimeField()),
                ],
            ),
            migrations.CreateModel(
                name='Shop',
                fields=[
                    ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                    ('name', models.CharField(max_length=120, unique=True)),
                    ('unit', models.CharField(choices=[('in', 'inches'), ('mm', 'millimetres')], default='in', max_length=2)),
                    ('step', models.DecimalField(decimal_places=8, default=Decimal('1.5875'), max_digits=14)),
                    ('paper', models.CharField(choices=[('letter', 'Letter'), ('a4', 'A4')], default='letter', max_length=6)),
                    ('created_at', models.DateTimeField(auto_now_add=True)),
                ],
                options={
                    'constraints': [models.CheckConstraint(condition=models.Q(('step__gt', 0)), name='shop_step_above_zero'), models.CheckConstraint(condition=models.Q(('unit__in', ['in', 'mm'])), name='shop_unit'), models.CheckConstraint(condition=models.Q(('paper__in', ['letter', 'a4'])), name='shop_paper')],
                },
            ),
            migrations.CreateModel(
                name='SignInFailure',
                fields=[
                    ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                    ('username', models.CharField(max_length=150)),
                    ('address', models.CharField(max_length=45)),
                    ('at', models.DateTimeField()),
                ],
                options={
                    'indexes': [models.Index(fields=['username', 'address', 'at'], name='sign_in_failures')],
                },
            ),
            migrations.CreateModel(
                name='Worker',
                fields=[
                    ('name', models.CharField(max_length=64, primary_key=True, serialize=False)),
                    ('host', models.CharField(max_length=255)),
                    ('pid', models.PositiveIntegerField()),
                    ('seen_at', models.DateTimeField(db_index=True)),
                ],
            ),
            migrations.CreateModel(
                name='Client',
                fields=[
                    ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                    ('shop', models.ForeignKey(on_delete=django.db.models.deletion.CASCADE, related_name='clients', to='shopjobs.shop')),
                    ('name', models.CharField(max_length=120, validators=[shopjobs.words.one_line])),
                    ('contact', models.CharField(blank=True, max_length=120, validators=[shopjobs.words.one_line])),
                    ('phone', models.CharField(blank=True, max_length=40, validators=[shopjobs.words.one_line])),
                    ('email', models.EmailField(blank=True, max_length=254)),
                    ('note', models.CharField(blank=True, max_length=400, validators=[shopjobs.words.one_line])),
                ],
                options={
                    'constraints': [models.UniqueConstraint(fields=('shop', 'name'), name='client_name_once_a_shop')],
                },
            ),
            migrations.CreateModel(
                name='Person',
                fields=[
                    ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                    ('password', models.CharField(max_length=128, verbose_name='password')),
                    ('last_login', models.DateTimeField(blank=True, null=True, verbose_name='last login')),
                    ('is_superuser', models.BooleanField(default=False, help_text='Designates that this user has all permissions without explicitly assigning them.', verbose_name='superuser status')),
                    ('username', models.CharField(error_messages={'unique': 'A user with that username already exists.'}, help_text='Required. 150 characters or fewer. Letters, digits and @/./+/-/_ only.', max_length=150, unique=True, validators=[django.contrib.auth.validators.UnicodeUsernameValidator()], verbose_name='username')),
                    ('first_name', models.CharField(blank=True, max_length=150, verbose_name='first name')),
                    ('last_name', models.CharField(blank=True, max_length=150, verbose_name='last name')),
                    ('email', models.EmailField(blank=True, max_length=254, verbose_name='email address')),
                    ('is_staff', models.BooleanField(default=False, help_text='Designates whether the user can log into this admin site.', verbose_name='staff status')),
                    ('is_active', models.BooleanField(default=True, help_text='Designates whether this user should be treated as active. Unselect this instead of deleting accounts.', verbose_name='active')),
                    ('date_joined', models.DateTimeField(default=django.utils.timezone.now, verbose_name='date joined')),
                    ('shop', models.ForeignKey(blank=True, null=True, on_delete=django.db.models.deletion.CASCADE, related_name='people', to='shopjobs.shop')),
                    ('role', models.CharField(choices=[('owner', 'Owner'), ('office', 'Office'), ('installer', 'Installer')], default='installer', max_length=10)),
                    ('groups', models.ManyToManyField(blank=True, help_text='The groups this user belongs to. A user will get all permissions granted to each of their groups.', related_name='user_set', related_query_name='user', to='auth.group', verbose_name='groups')),
                    ('user_permissions', models.ManyToManyField(blank=True, help_text='Specific permissions for this user.', related_name='user_set', related_query_name='user', to='auth.permission', verbose_name='user permissions')),
                ],
                options={
                    'verbose_name_plural': 'people',
                    'constraints': [models.CheckConstraint(condition=models.Q(('shop__isnull', False), ('is_superuser', True), _connector='OR'), name='person_has_shop'), models.CheckConstraint(condition=models.Q(('role__in', ['owner', 'office', 'installer'])), name='person_role')],
                },
                managers=[
                    ('objects', django.contrib.auth.models.UserManager()),
                ],
            ),
            migrations.CreateModel(
                name='SentForm',
                fields=[
                    ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                    ('person', models.ForeignKey(on_delete=django.db.models.deletion.CASCADE, related_name='+', to=settings.AUTH_USER_MODEL)),
                    ('digest', models.CharField(max_length=64)),
                    ('at', models.DateTimeField()),
                    ('made_in', models.CharField(blank=True, max_length=80)),
                    ('made_key', models.BigIntegerField(blank=True, null=True)),
                ],
                options={
                    'constraints': [models.UniqueConstraint(fields=('person', 'digest'), name='form_saved_once')],
                },
            ),
            migrations.CreateModel(
                name='Session',
                fields=[
                    ('session_key', models.CharField(max_length=40, primary_key=True, serialize=False, verbose_name='session key')),
                    ('session_data', models.TextField(verbose_name='session data')),
                    ('expire_date', models.DateTimeField(db_index=True, verbose_name='expire date')),
                    ('person', models.ForeignKey(null=True, on_delete=django.db.models.deletion.CASCADE, related_name='sessions', to=settings.AUTH_USER_MODEL)),
                    ('began_at', models.DateTimeField(null=True)),
                    ('seen_at', models.DateTimeField()),
                    ('address', models.CharField(blank=True, max_length=45)),
                    ('browser', models.CharField(blank=True, max_length=60)),
                ],
                options={
                    'verbose_name': 'session',
                    'verbose_name_plural': 'sessions',
                    'abstract': False,
                },
            ),
            migrations.CreateModel(
                name='Site',
                fields=[
                    ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                    ('shop', models.ForeignKey(on_delete=django.db.models.deletion.CASCADE, related_name='+', to='shopjobs.shop')),
                    ('client', models.ForeignKey(blank=True, null=True, on_delete=django.db.models.deletion.CASCADE, related_name='sites', to='shopjobs.client')),
                    ('address', models.CharField(max_length=240, validators=[shopjobs.words.one_line])),
                ],
                options={
                    'constraints': [models.UniqueConstraint(fields=('client', 'address'), name='site_once_a_client'), models.UniqueConstraint(condition=models.Q(('client', None)), fields=('shop', 'address'), name='site_of_nobody_once')],
                },
            ),
            migrations.CreateModel(
                name='Job',
                fields=[
                    ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                    ('shop', models.ForeignKey(on_delete=django.db.models.deletion.CASCADE, related_name='jobs', to='shopjobs.shop')),
                    ('number', models.CharField(max_length=40, validators=[shopjobs.words.one_line, shopjobs.words.trimmed])),
                    ('client', models.ForeignKey(blank=True, null=True, on_delete=django.db.models.deletion.RESTRICT, related_name='jobs', to='shopjobs.client')),
                    ('site', models.ForeignKey(blank=True, null=True, on_delete=django.db.models.deletion.RESTRICT, related_name='jobs', to='shopjobs.site')),
                    ('unit', models.CharField(choices=[('in', 'inches'), ('mm', 'millimetres')], default='in', max_length=2)),
                    ('step', models.DecimalField(decimal_places=8, default=Decimal('1.5875'), max_digits=14)),
                    ('fit_on', models.DateField(blank=True, null=True)),
                    ('responsible', models.ForeignKey(blank=True, null=True, on_delete=django.db.models.deletion.SET_NULL, related_name='+', to=settings.AUTH_USER_MODEL)),
                    ('created_at', models.DateTimeField(auto_now_add=True)),
                    ('updated_at', models.DateTimeField(auto_now=True)),
                    ('revision', models.PositiveIntegerField(default=1)),
                    ('deleted_at', models.DateTimeField(blank=True, null=True)),
                    ('archived_at', models.DateTimeField(blank=True, null=True)),
                ],
                options={
                    'indexes': [models.Index(fields=['shop', '-updated_at', '-id'], name='jobs_by_last_change'), models.Index(fields=['shop', 'fit_on'], name='jobs_by_fitting_day')],
                    'constraints': [models.UniqueConstraint(condition=models.Q(('deleted_at', None)), fields=('shop', 'number'), name='job_number_once_a_shop'), models.CheckConstraint(condition=models.Q(('step__gt', 0)), name='job_step_above_zero'), models.CheckConstraint(condition=models.Q(('unit__in', ['in', 'mm'])), name='job_unit')],
                },
            ),
            migrations.CreateModel(
                name='BackgroundTask',
                fields=[
                    ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                    ('shop', models.ForeignKey(on_delete=django.db.models.deletion.CASCADE, related_name='tasks', to='shopjobs.shop')),
                    ('job', models.ForeignKey(null=True, on_delete=django.db.models.deletion.CASCADE, related_name='+', to='shopjobs.job')),
                    ('kind', models.CharField(max_length=40)),
                    ('pieces', models.PositiveIntegerField()),
                    ('done', models.PositiveIntegerField(default=0)),
                    ('piece_seconds', models.PositiveIntegerField()),
                    ('state', models.CharField(choices=[('waiting', 'waiting for a place'), ('at work', 'being worked on'), ('done', 'done'), ('failed', 'failed'), ('cancelled', 'cancelled')], default='waiting', max_length=9)),
                    ('fault', models.CharField(blank=True, max_length=400)),
                    ('asked_by', models.ForeignKey(null=True, on_delete=django.db.models.deletion.SET_NULL, related_name='+', to=settings.AUTH_USER_MODEL)),
                    ('asked_at', models.DateTimeField()),
                    ('ended_at', models.DateTimeField(null=True)),
                    ('run', models.PositiveIntegerField(default=0)),
                    ('tries', models.PositiveSmallIntegerField(default=0)),
                    ('result_id', models.CharField(blank=True, max_length=36)),
                ],
                options={
                    'indexes': [models.Index(fields=['shop', 'state'], name='task_by_shop'), models.Index(condition=models.Q(('state__in', ('waiting', 'at work'))), fields=['asked_at'], name='task_open')],
                },
            ),
            migrations.CreateModel(
                name='Revision',
                fields=[
                    ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                    ('shop', models.ForeignKey(on_delete=django.db.models.deletion.CASCADE, related_name='revisions', to='shopjobs.shop')),
                    ('job', models.ForeignKey(blank=True, null=True, on_delete=django.db.models.deletion.SET_NULL, related_name='revisions', to='shopjobs.job')),
                    ('person', models.ForeignKey(blank=True, null=True, on_delete=django.db.models.deletion.SET_NULL, related_name='+', to=settings.AUTH_USER_MODEL)),
                    ('at', models.DateTimeField()),
                    ('text', models.CharField(max_length=500)),
                    ('about', models.CharField(blank=True, max_length=40)),
                    ('changes', models.JSONField(default=list)),
                    ('went', models.JSONField(default=list)),
                    ('can_undo', models.BooleanField(default=False)),
                    ('undoes', models.ForeignKey(blank=True, null=True, on_delete=django.db.models.deletion.SET_NULL, related_name='undone_by', to='shopjobs.revision')),
                ],
                options={
                    'indexes': [models.Index(fields=['shop', '-at'], name='revisions_by_time'), models.Index(fields=['job', '-id'], name='revisions_of_job')],
                },
            ),
        ),
    ]
