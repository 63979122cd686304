package yardlight.gateway.home;

import java.sql.SQLException;
import org.flywaydb.core.api.callback.BaseCallback;
import org.flywaydb.core.api.callback.Context;
import org.flywaydb.core.api.callback.Event;
import org.springframework.stereotype.Component;

/** Making tables anew may take longer than the gateway waits for any other statement. */
@Component
final class PatientTables extends BaseCallback {

    @Override
    public boolean supports(Event event, Context context) {
        return event == Event.BEFORE_EACH_MIGRATE;
    }

    @Override
    public void handle(Event event, Context context) {
        try {
            context.getConnection().setNetworkTimeout(Runnable::run, 0);
        } catch (SQLException e) {
            throw new IllegalStateException("the database does not answer: " + e.getMessage(), e);
        }
    }
}
