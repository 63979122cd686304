package yardlight.demo.night;

import java.io.PrintStream;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What happened, line by line as it happens: local time, who, what. */
public final class Timeline {

    /** One line of it. */
    public record Line(Instant at, String time, String who, String what) {
        @Override
        public String toString() {
            return String.format("%8s  %-24s %s", time, who, what);
        }
    }

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("h:mm a", Locale.US);

    private final ZoneId zone;
    private final PrintStream out;
    private final List<Line> lines = new ArrayList<>();
    private boolean handled;

    public Timeline(ZoneId zone, PrintStream out) {
        this.zone = zone;
        this.out = out;
    }

    public synchronized void add(Instant at, String who, String what) {
        Line line = new Line(at, time(at), who, what);
        lines.add(line);
        out.println(line);
        out.flush();
    }

    /** Adds what a visitor did; from then on the night is not the one that was written. */
    public synchronized void addByHand(Instant at, String who, String what) {
        handled = true;
        add(at, who, what + " (by hand)");
    }

    /** Whether a visitor took a hand in it. */
    public synchronized boolean handled() {
        return handled;
    }

    /** The time of day as the texts write it, {@code 2:13 AM}. */
    public String time(Instant at) {
        return TIME.format(at.atZone(zone));
    }

    public synchronized List<Line> lines() {
        return List.copyOf(lines);
    }
}
