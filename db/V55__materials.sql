-- What the owner says about materials on a site; without a row the usual settings hold. Lengths in metres.
create table material_settings (
  site_id bigint primary key references site (id) on delete cascade,
  bed_material varchar(20) not null,
  bed_depth_m double precision not null,
  bed_card boolean not null,
  path_material varchar(20) not null,
  path_depth_m double precision not null,
  path_card boolean not null,
  settling_percent double precision not null,
  load_m3 double precision not null,
  barrow_litres double precision not null,
  m3_an_hour double precision not null,
  gap_m double precision not null,
  trunk_m double precision not null,
  sheet_length_m double precision not null,
  sheet_width_m double precision not null,
  sheet_overlap_m double precision not null,
  sheets_an_hour double precision not null
);

-- How one bed or path is covered. The target is 'bed-3' or 'path-12': what is no longer there is not asked for.
create table material_covering (
  site_id bigint not null references site (id) on delete cascade,
  target varchar(30) not null,
  material varchar(20) not null,
  depth_m double precision not null,
  card boolean not null,
  wanted boolean not null,
  primary key (site_id, target)
);

create table material_order (
  site_id bigint not null references site (id) on delete cascade,
  position integer not null,
  target varchar(30) not null,
  primary key (site_id, position)
);

-- Amounts are cubic metres, or sheets of card.
create table material_delivery (
  id bigint generated always as identity primary key,
  site_id bigint not null references site (id) on delete cascade,
  material varchar(20) not null,
  amount double precision not null check (amount > 0),
  delivered_on date not null,
  note varchar(200) not null
);

create index material_delivery_site on material_delivery (site_id);

-- What was laid; the part from the stock is taken from what was delivered.
create table material_laid (
  id bigint generated always as identity primary key,
  site_id bigint not null references site (id) on delete cascade,
  target varchar(30) not null,
  name varchar(120) not null,
  material varchar(20) not null,
  amount double precision not null check (amount >= 0),
  from_stock double precision not null check (from_stock >= 0 and from_stock <= amount),
  laid_on date not null,
  finished boolean not null
);

create index material_laid_site on material_laid (site_id);
