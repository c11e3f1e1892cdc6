create table site (
  id bigint generated always as identity primary key,
  name varchar(120) not null,
  place varchar(10) not null,
  latitude_degrees double precision,
  last_spring_frost varchar(5),
  first_autumn_frost varchar(5),
  note varchar(2000) not null,
  constraint site_latitude check (latitude_degrees is null or latitude_degrees between -90 and 90)
);

create table bed (
  id bigint generated always as identity primary key,
  site_id bigint not null references site (id) on delete cascade,
  name varchar(120) not null,
  area_m2 double precision not null,
  note varchar(2000) not null,
  constraint bed_area check (area_m2 >= 0.1 and area_m2 <= 100000)
);

create index bed_site on bed (site_id);

-- A condition belongs to a site, or to a bed that says it differently: never a bare number, always with its basis.
create table site_condition (
  site_id bigint not null references site (id) on delete cascade,
  axis varchar(20) not null,
  low double precision not null,
  high double precision not null,
  basis varchar(12) not null,
  entered varchar(120) not null,
  primary key (site_id, axis),
  constraint site_condition_range check (low <= high)
);

create table bed_condition (
  bed_id bigint not null references bed (id) on delete cascade,
  axis varchar(20) not null,
  low double precision not null,
  high double precision not null,
  basis varchar(12) not null,
  entered varchar(120) not null,
  primary key (bed_id, axis),
  constraint bed_condition_range check (low <= high)
);

-- Plants that already stand in a bed and stay.
create table bed_standing (
  bed_id bigint not null references bed (id) on delete cascade,
  species_id varchar(120) not null references species (id),
  plants integer not null check (plants between 1 and 10000),
  primary key (bed_id, species_id)
);
