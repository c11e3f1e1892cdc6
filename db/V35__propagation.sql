-- How many plants of a species the owner can raise in time.
alter table holding add column plants_to_propagate integer default 0 not null;
alter table holding add constraint holding_propagation_sane check (plants_to_propagate between 0 and 100000);

-- Where plants of a bed's guild may come from: anywhere, have-or-propagate, on-hand.
alter table guild_rules add column plants_from varchar(20) default 'anywhere' not null;
update guild_rules set plants_from = 'on-hand' where only_stock;
alter table guild_rules drop column only_stock;
