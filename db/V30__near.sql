-- What grows near a bed, outside it, as far as it may serve the bed's plants as a partner. The nearest plant of a species counts.
create table bed_near (
  bed_id bigint not null references bed (id) on delete cascade,
  species_id varchar(120) not null references species (id),
  distance_m double precision not null check (distance_m between 0.5 and 2000),
  primary key (bed_id, species_id)
);
