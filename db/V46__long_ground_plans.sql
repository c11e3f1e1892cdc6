-- As many corners as a ground plan may have, each number with all its digits.
alter table nearby alter column corners set data type varchar(30000);
