-- The same for SQLite and PostgreSQL: ids are made by the program, moments are milliseconds since 1970, lengths are
-- picometres with the unit that they were written in. Never change this file once it is released; add another.

create table document (
  id     text primary key,
  place  text not null check (place in ('AT_HAND', 'ASIDE')),
  newest bigint not null check (newest > 0)   -- number of the newest revision
);

-- An edit holds a text; undo and redo show that of an edit. Edits hang together by the edit that each was made on.
create table revision (
  id       text primary key,
  document text not null references document (id),
  number   bigint not null check (number > 0),
  kind     text not null check (kind in ('EDIT', 'UNDO', 'REDO')),
  shows    text not null references revision (id),
  made_on  text references revision (id),
  name     text not null,
  body     text,
  saved_at bigint not null,
  saved_by text not null,
  why      text not null,
  unique (document, number),
  check ((kind = 'EDIT') = (shows = id)),
  check ((kind = 'EDIT') = (body is not null)),
  check (kind = 'EDIT' or made_on is null)
);
create index revision_made_on on revision (made_on);

-- The last that each device said of a step.
create table tick (
  document text not null references document (id),
  plan     text not null,
  step     text not null,
  device   text not null,
  state    text not null check (state in ('OPEN', 'DONE')),
  counted  integer not null check (counted >= 0),
  said_at  bigint not null,
  held_at  bigint not null,
  primary key (document, plan, step, device)
);

create table piece (
  id             text primary key,
  version        bigint not null check (version > 0),
  material       text not null,
  form           text not null check (form in ('SHEET', 'BOARD', 'OFFCUT')),
  thickness      bigint not null check (thickness > 0),
  thickness_unit text not null,
  length         bigint not null check (length > 0),
  length_unit    text not null,
  width          bigint not null check (width > 0),
  width_unit     text not null,
  quantity       integer not null check (quantity > 0),
  price          text,
  note           text not null
);

create table device (
  id           text primary key,
  name         text not null unique,
  token_digest text not null unique,
  paired_at    bigint not null,
  expires_at   bigint not null
);
