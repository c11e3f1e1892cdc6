create table account (
  id bigint generated always as identity primary key,
  name varchar(80) not null unique,
  password_hash varchar(300) not null
);

-- Only the hash of a session's token is kept.
create table session (
  token_hash varchar(64) primary key,
  account_id bigint not null references account (id) on delete cascade,
  expires_at timestamp with time zone not null
);
