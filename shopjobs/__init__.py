"""Who and when: the site, its shops and people, their jobs and the diary."""
