-- How people work on a site; no row where the usual settings hold.
create table work_settings (
  site_id bigint primary key references site (id) on delete cascade,
  session_hours double precision not null,
  people integer not null,
  session_day integer not null check (session_day between 1 and 7),
  tree_minutes integer not null,
  shrub_minutes integer not null,
  herb_minutes integer not null,
  cover_minutes integer not null
);

-- Share of starts that become plants, where the owner knows better.
create table work_take (
  site_id bigint not null references work_settings (site_id) on delete cascade,
  way varchar(30) not null,
  percent integer not null check (percent between 1 and 100),
  primary key (site_id, way)
);

-- Work that was done, with what it was about, so that it can be taken back.
create table work_done (
  id bigint generated always as identity primary key,
  site_id bigint not null references site (id) on delete cascade,
  task_key varchar(300) not null,
  kind varchar(30) not null,
  words varchar(300) not null,
  amount double precision not null check (amount > 0),
  done_on date not null,
  species_id varchar(120) references species (id),
  bed_id bigint references bed (id) on delete set null
);

create index work_done_site on work_done (site_id);
