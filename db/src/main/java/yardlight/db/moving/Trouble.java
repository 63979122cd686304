package yardlight.db.moving;

import java.sql.SQLException;
import java.util.Set;

/** What a database says while something is moved, in words. */
final class Trouble {

    /**
     * Another writer holds what is wanted, or was there in between: SQL states of PostgreSQL (Appendix A of its manual: 40001
     * serialization_failure, 55P03 lock_not_available) and of H2 (its ErrorCode: HYT00 LOCK_TIMEOUT_1).
     */
    private static final Set<String> ANOTHER = Set.of("40001", "55P03", "HYT00");

    private Trouble() {}

    static MoveRefused refused(SQLException trouble) {
        String why = ANOTHER.contains(String.valueOf(trouble.getSQLState()))
                ? "another gateway writes to the database. Stop it first: "
                : "the database refuses: ";
        return new MoveRefused(why + trouble.getMessage(), trouble);
    }
}
