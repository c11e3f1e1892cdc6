-- The owner's own experience is a source from the start, whatever else the library is filled with.
insert into source (id, kind, author, title, published_year, locator)
values ('own-experience', 'OWN_EXPERIENCE', '', 'Own experience', null, '');
