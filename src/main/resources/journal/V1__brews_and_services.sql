-- Masses in grams, strengths in percent, temperatures in degrees Celsius, moments as ISO 8601 text.
create table brew (
  id varchar(36) primary key,
  recorded_at varchar(40) not null,
  event varchar(300) not null,
  event_date varchar(10),
  batch varchar(100) not null,
  coffee varchar(300) not null,
  brewer varchar(300),
  method varchar(20) not null,
  steam_loss double precision not null,
  dose_g double precision not null,
  water_g double precision not null,
  beverage_g double precision
);

create table reading (
  brew_id varchar(36) not null references brew (id) on delete cascade,
  number integer not null,
  percent double precision not null,
  sample_c double precision,
  primary key (brew_id, number)
);

create table service (
  id varchar(36) primary key,
  recorded_at varchar(40) not null,
  event varchar(300) not null,
  event_date varchar(10),
  kind varchar(100),
  group_name varchar(300) not null,
  coffee varchar(300) not null,
  headcount integer not null,
  drinkers double precision not null,
  cups_each double precision not null,
  cups_planned integer not null,
  cup_g double precision not null,
  put_out_g double precision not null,
  came_back_g double precision not null
);

create index brew_by_coffee on brew (coffee, brewer);
create index service_by_kind on service (kind);
