-- What was removed, and when: each value of the entry by the name of its column in CSV.
create table removed (
  id varchar(36) not null,
  removed_at varchar(40) not null,
  number integer not null,
  name varchar(40) not null,
  value text not null,
  primary key (id, removed_at, number)
);
