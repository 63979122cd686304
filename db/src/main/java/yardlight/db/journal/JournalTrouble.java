package yardlight.db.journal;

import java.sql.SQLException;

/** The database did not do what it was asked to; the transaction is lost, and its connection with it. */
public class JournalTrouble extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final boolean data;

    JournalTrouble(String doing, SQLException cause) {
        super(doing + ": " + cause.getMessage(), cause);
        String state = cause.getSQLState();
        this.data = state != null && (state.startsWith("22") || state.startsWith("23"));
    }

    /**
     * Whether the trouble lies in a value that was to be stored (SQL states of class 22 and 23): the same batch would
     * fail again, its other items would not.
     */
    public boolean data() {
        return data;
    }
}
