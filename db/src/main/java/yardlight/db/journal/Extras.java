package yardlight.db.journal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import yardlight.db.due.DueKey;
import yardlight.escalation.Entry;

/** What is stored with a transaction besides the changes of state. */
final class Extras {

    /** A line for the log. */
    record Written(long line, Instant at, Entry entry) {}

    final List<Written> lines = new ArrayList<>();
    final List<PostedRecord> events = new ArrayList<>();
    final List<AttemptRecord> attempts = new ArrayList<>();
    final List<Retry> retries = new ArrayList<>();
    final Set<DueKey> fired = new LinkedHashSet<>();
    boolean everyAlarm;
}
