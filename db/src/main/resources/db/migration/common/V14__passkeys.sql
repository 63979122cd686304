-- With which people sign in without a password. What authenticators send is kept as it came, in Base64; a handle is by
-- what they know a login.

create table if not exists passkey_handle (
    login varchar(64) primary key references person (login) on delete cascade,
    handle varchar(100) not null unique
);

create table if not exists passkey (
    id varchar(1400) primary key,
    handle varchar(100) not null references passkey_handle (handle) on delete cascade,
    label varchar(100) not null,
    public_key varchar(4000) not null,
    uses bigint not null,
    verified boolean not null,
    transports varchar(200) not null,
    may_be_copied boolean not null,
    is_copied boolean not null,
    attestation varchar(100000) not null,
    client_data varchar(100000) not null,
    created_at timestamp(6) with time zone not null,
    last_used_at timestamp(6) with time zone not null
);
create index if not exists passkey_by_handle on passkey (handle);
