-- A variant was an edit whose reason began with a word; now it has its name in a column of its own.
alter table revision add column variant text check (variant is null or kind = 'EDIT');
update revision set variant = substr(why, 10) where kind = 'EDIT' and why like 'Variant: _%';

-- Layouts that a longer search has found, each for the problem of this digest. The change is the one that was searched for.
create table layout (
  document text not null references document (id),
  problem  text not null,
  material text not null,
  change   bigint not null check (change > 0),
  body     text not null,
  primary key (document, problem)
);
