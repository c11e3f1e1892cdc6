-- The owner's species library in long form: one row of statement is one value from one source.
create table source (
  id varchar(60) primary key,
  kind varchar(20) not null,
  author varchar(300) not null,
  title varchar(500) not null,
  published_year integer,
  locator varchar(300) not null
);

create table species (
  id varchar(120) primary key,
  scientific_name varchar(200) not null unique,
  common_names varchar(500) not null,
  family varchar(80) not null,
  synonyms varchar(1000) not null,
  removed boolean default false not null
);

-- Values are kept as they were written; the program reads them anew, so nothing is bent on the way in.
create table statement (
  id bigint generated always as identity primary key,
  species_id varchar(120) not null references species (id),
  trait varchar(30) not null,
  item varchar(60) not null,
  entered varchar(300) not null,
  source_id varchar(60) not null references source (id),
  evidence varchar(10),
  chosen boolean default false not null,
  note varchar(500) not null,
  removed boolean default false not null
);

create index statement_species on statement (species_id);

-- What the owner has at hand of a species, and what one plant costs.
create table holding (
  species_id varchar(120) primary key references species (id),
  plants_on_hand integer not null,
  price_cents integer,
  constraint holding_sane check (plants_on_hand between 0 and 100000 and (price_cents is null or price_cents between 0 and 100000000))
);

-- One row: grows with every change to the library.
create table library_state (revision bigint not null);
insert into library_state (revision) values (0);
