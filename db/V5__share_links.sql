-- Only the hash of a link's token is kept; the link itself is shown once.
create table share_link (
  id bigint generated always as identity primary key,
  guild_id bigint not null references guild (id) on delete cascade,
  token_hash varchar(64) not null unique,
  label varchar(120) not null,
  created_at timestamp with time zone not null,
  expires_at timestamp with time zone,
  revoked boolean default false not null
);
