-- What the owner asks of a bed's guild.
create table wish (
  bed_id bigint not null references bed (id) on delete cascade,
  kind varchar(20) not null,
  item varchar(40) not null,
  must boolean not null,
  weight integer not null check (weight between 1 and 10),
  primary key (bed_id, kind, item)
);

-- The rules for a bed's guild as one JSON document; absent where the defaults hold.
create table guild_rules (
  bed_id bigint primary key references bed (id) on delete cascade,
  document varchar(20000) not null
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
