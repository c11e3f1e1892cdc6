-- What the owner asks of a bed's guild.
create table wish (
  bed_id bigint not null references bed (id) on delete cascade,
  kind varchar(20) not null,
  item varchar(40) not null,
  must boolean not null,
  weight integer not null check (weight between 1 and 10),
  primary key (bed_id, kind, item)
);

-- The rules for a bed's guild; no row where the defaults for its area hold.
create table guild_rules (
  bed_id bigint primary key references bed (id) on delete cascade,
  max_species integer not null,
  max_plants integer not null,
  budget_cents integer,
  price_if_unknown_cents integer not null,
  allow_borderline boolean not null,
  allow_not_known boolean not null,
  max_species_per_genus integer not null,
  only_stock boolean not null,
  native_to varchar(40)
);

-- Kinds of caution a bed's owner wants none of.
create table guild_rules_caution (
  bed_id bigint not null references guild_rules (bed_id) on delete cascade,
  caution varchar(20) not null,
  primary key (bed_id, caution)
);

-- Species that never come in (no plants) or are in with exactly so many plants.
create table guild_rules_species (
  bed_id bigint not null references guild_rules (bed_id) on delete cascade,
  species_id varchar(120) not null references species (id),
  plants integer check (plants between 1 and 10000),
  primary key (bed_id, species_id)
);

-- The guild saved for a bed.
create table guild (
  id bigint generated always as identity primary key,
  bed_id bigint not null unique references bed (id) on delete cascade,
  name varchar(120) not null,
  saved_at timestamp with time zone not null
);

create table guild_member (
  guild_id bigint not null references guild (id) on delete cascade,
  species_id varchar(120) not null references species (id),
  plants integer not null check (plants between 1 and 10000),
  primary key (guild_id, species_id)
);
