#!/bin/sh
# Run once by the database's image, in an empty database: the two roles of docs/operations.md, and the database.
set -eu
psql --set ON_ERROR_STOP=1 --username postgres \
  --set owner="$(cat /run/secrets/owner)" --set service="$(cat /run/secrets/service)" <<'SQL'
create role bayledger login password :'owner';
create role bayledger_service login password :'service';
create database bayledger owner bayledger;
SQL
