-- The outline of a bed where it was traced, metres east and north of the site's own point, and where the bed's middle lay then:
-- a bed that is moved takes its outline along.
create table bed_outline (
  bed_id bigint primary key references bed (id) on delete cascade,
  middle_east_m double precision not null,
  middle_north_m double precision not null,
  corners varchar(30000) not null
);

-- A path: its middle line in metres east and north of the site's own point, heights of its two ends over any one level.
create table plan_path (
  id bigint generated always as identity primary key,
  site_id bigint not null references site (id) on delete cascade,
  name varchar(120) not null,
  line varchar(120000) not null,
  width_m double precision not null,
  depth_m double precision not null,
  start_height_m double precision,
  end_height_m double precision,
  constraint plan_path_heights check ((start_height_m is null) = (end_height_m is null))
);

create index plan_path_site on plan_path (site_id);

create table plan_water (
  id bigint generated always as identity primary key,
  site_id bigint not null references site (id) on delete cascade,
  name varchar(120) not null,
  corners varchar(30000) not null
);

create index plan_water_site on plan_water (site_id);

-- The ground the plan shows at least.
create table plan_paper (
  site_id bigint primary key references site (id) on delete cascade,
  east_m double precision not null,
  north_m double precision not null,
  width_m double precision not null,
  depth_m double precision not null
);

-- The picture that lies under the plan, and where its middle lies on the ground.
create table plan_picture (
  site_id bigint primary key references site (id) on delete cascade,
  kind varchar(10) not null,
  width_px integer not null,
  height_px integer not null,
  east_m double precision not null,
  north_m double precision not null,
  metres_per_px double precision not null,
  turn_degrees double precision not null,
  content binary large object not null
);
