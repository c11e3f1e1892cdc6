-- Longitude in degrees east; optional, hours of sun hardly depend on it.
alter table site add column longitude_degrees double precision;
alter table site add constraint site_longitude check (longitude_degrees is null or longitude_degrees between -180 and 180);

-- The rectangle a bed fills or lies in, and where its middle lies on the site, metres east and north of the
-- site's own point. Nothing where it was not told.
alter table bed add column length_m double precision;
alter table bed add column width_m double precision;
alter table bed add column turn_degrees double precision;
alter table bed add column east_m double precision;
alter table bed add column north_m double precision;
alter table bed add constraint bed_size check ((length_m is null) = (width_m is null) and (length_m is null) = (turn_degrees is null));
alter table bed add constraint bed_place check ((east_m is null) = (north_m is null));

-- Trees and buildings around beds. East and north are told from the middle of the bed they were measured from,
-- or from the site's own point where no bed is named.
create table nearby (
  id bigint generated always as identity primary key,
  site_id bigint not null references site (id) on delete cascade,
  bed_id bigint references bed (id) on delete cascade,
  name varchar(120) not null,
  east_m double precision not null,
  north_m double precision not null,
  height_m double precision not null,
  paced_distance_m double precision,
  paced_angle_degrees double precision,
  paced_eye_m double precision,
  crown_base_m double precision,
  crown_radius_m double precision,
  light_in_leaf double precision,
  light_bare double precision,
  evergreen boolean,
  length_m double precision,
  width_m double precision,
  turn_degrees double precision,
  corners varchar(20000),
  constraint nearby_kind check (
    (crown_base_m is not null and crown_radius_m is not null and light_in_leaf is not null and light_bare is not null
      and evergreen is not null and length_m is null and corners is null)
    or (crown_base_m is null and (length_m is null) <> (corners is null)
      and (length_m is null) = (width_m is null) and (length_m is null) = (turn_degrees is null)))
);

create index nearby_site on nearby (site_id);
create index nearby_bed on nearby (bed_id);

-- The skyline in eight compass directions, degrees over level; a bed's own holds there instead of the site's.
create table site_skyline (
  site_id bigint primary key references site (id) on delete cascade,
  degrees varchar(200) not null
);

create table bed_skyline (
  bed_id bigint primary key references bed (id) on delete cascade,
  degrees varchar(200) not null
);
