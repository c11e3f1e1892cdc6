-- Imports of people's own tables, each one step that can be undone.
create table import_run (
  id bigint generated always as identity primary key,
  title varchar(300) not null,
  brought_at timestamp with time zone not null,
  undone_at timestamp with time zone,
  total_rows bigint default 0 not null,
  new_species bigint default 0 not null,
  known_rows bigint default 0 not null,
  near_rows bigint default 0 not null,
  refused_rows bigint default 0 not null,
  left_out_rows bigint default 0 not null,
  names_changed bigint default 0 not null,
  values_added bigint default 0 not null,
  values_same bigint default 0 not null,
  conflicts bigint default 0 not null,
  notes bigint default 0 not null,
  cells_unread bigint default 0 not null
);

-- Which import brought a row. No foreign keys: each would keep an index of millions of entries for one deletion.
alter table source add column import_id bigint;
alter table species add column import_id bigint;
alter table statement add column import_id bigint;
-- What was changed by hand after it came is no longer the import's to take back.
alter table species add column edited boolean default false not null;
alter table statement add column edited boolean default false not null;

-- Cells of a table that no trait takes, kept with the species as they stood: one line a cell.
create table species_note (
  id bigint generated always as identity primary key,
  species_id varchar(120) not null references species (id) on delete cascade,
  text varchar(1000000) not null,
  source_id varchar(60) not null references source (id),
  import_id bigint
);

-- What an import changed of entries that were there before it, to be put back.
create table import_change (
  import_id bigint not null references import_run (id) on delete cascade,
  species_id varchar(120) not null,
  kind varchar(10) not null,
  statement_id bigint default 0 not null,
  was varchar(4000),
  became varchar(4000),
  primary key (import_id, species_id, kind, statement_id)
);

-- Imports that somebody is looking through. Mapping and decisions are JSON, the file lies in the data directory.
create table import_draft (
  id bigint generated always as identity primary key,
  file_name varchar(200) not null,
  stored_as varchar(200) not null,
  sheet varchar(300) not null,
  started_at timestamp with time zone not null,
  mapping varchar(1000000),
  source varchar(4000),
  decisions varchar(1000000000) not null
);

create table import_mapping (
  name varchar(120) primary key,
  content varchar(1000000) not null
);
