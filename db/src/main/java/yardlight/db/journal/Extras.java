package yardlight.db.journal;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import yardlight.db.columns.LogColumns;
import yardlight.db.due.DueKey;

/** What is stored with a transaction besides the changes of state. */
final class Extras {

    final List<LogColumns.Line> lines = new ArrayList<>();
    final List<PostedRecord> events = new ArrayList<>();
    final List<AttemptRecord> attempts = new ArrayList<>();
    final List<Retry> retries = new ArrayList<>();
    final Set<DueKey> fired = new LinkedHashSet<>();
    boolean everyAlarm;
}
