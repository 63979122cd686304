package yardlight.gateway.lane;

import yardlight.db.TestDatabase;
import yardlight.gateway.SmallGateway;

class PostgresLaneIT extends LaneContract {

    @Override
    TestDatabase database() {
        return TestDatabase.POSTGRESQL;
    }

    @Override
    void cut(SmallGateway gateway) {
        gateway.jdbc()
                .execute("select pg_terminate_backend(pid) from pg_stat_activity"
                        + " where datname = current_database() and pid <> pg_backend_pid()");
    }
}
