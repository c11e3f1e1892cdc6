-- What was found growing on a site or in one of its beds. Names stay as they were typed; what they are taken for stands beside them.
create table survey (
  id bigint generated always as identity primary key,
  site_id bigint not null references site (id) on delete cascade,
  bed_id bigint references bed (id) on delete cascade,
  name varchar(120) not null,
  surveyed_on date,
  plot_size_m2 double precision,
  cover_scale varchar(20) not null,
  wetland_region varchar(20),
  note varchar(2000) not null,
  constraint survey_plot_size check (plot_size_m2 is null or plot_size_m2 > 0)
);

create index survey_site on survey (site_id);
create index survey_bed on survey (bed_id);

create table survey_plant (
  survey_id bigint not null references survey (id) on delete cascade,
  position integer not null,
  written varchar(200) not null,
  taken varchar(200),
  cover varchar(20) not null,
  origin varchar(10) not null,
  stage varchar(10) not null,
  primary key (survey_id, position)
);
