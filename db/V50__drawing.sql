-- Where each plant of a bed's guild stands, metres east and north of the bed's middle.
create table bed_spot (
  bed_id bigint not null references bed (id) on delete cascade,
  species_id varchar(120) not null references species (id),
  number integer not null check (number between 1 and 10000),
  east_m double precision not null,
  north_m double precision not null,
  locked boolean not null,
  primary key (bed_id, species_id, number)
);

-- How a bed's drawing is arranged; no row where the usual settings hold.
create table bed_drawing (
  bed_id bigint primary key references bed (id) on delete cascade,
  reach_m double precision not null,
  overhang_m double precision not null,
  walkable_edge boolean not null,
  seed bigint not null
);

-- Years until a plant is grown, where the owner knows better than the usual numbers.
create table bed_growth (
  bed_id bigint not null references bed (id) on delete cascade,
  layer varchar(20) not null,
  rate varchar(10) not null,
  years integer not null check (years between 1 and 80),
  primary key (bed_id, layer, rate)
);
