package yardlight.gateway.stage;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Component;
import yardlight.db.report.PastSeasons;
import yardlight.escalation.rehearsal.Past;
import yardlight.escalation.rehearsal.PastNights;
import yardlight.escalation.rehearsal.Season;
import yardlight.escalation.rehearsal.Toll;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/** Plays past nights once more, one season at a time, beside the alarms and never in their way. */
@Component
public class Seasons {

    public static final Duration LONGEST = Duration.ofDays(400);

    /** A season of so many alarms takes seconds; whoever has more of them asks for less at a time. Ours. */
    public static final int MOST_ALARMS = 5_000;

    /** A second click, or a second person, waits for what the first one started. Ours. */
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    /** What came of it. */
    public sealed interface Played permits Compared, NotPlayed {}

    /**
     * The time as it was beside what it would have been.
     *
     * @param leftOut how often alarms of the gateway itself and of sites that are not in the setup called: they are in neither
     */
    public record Compared(Setup setup, Season really, Season would, int leftOut) implements Played {

        public Toll tollThen() {
            return Toll.of(really, this::zone);
        }

        public Toll tollNow() {
            return Toll.of(would, this::zone);
        }

        /** Whose clock says what is night; the first site's for whoever is not in the setup. */
        private ZoneId zone(String contact) {
            return Optional.ofNullable(setup.contacts().get(contact))
                    .map(Contact::zone)
                    .or(() -> setup.sites().values().stream().findFirst().map(Site::zone))
                    .orElse(ZoneOffset.UTC);
        }
    }

    /** Why nothing was played. */
    public enum NotPlayed implements Played {
        /** More alarms, or far more lines about them, than are played at a time. */
        ALARMS,
        /** More texts than are played at a time. */
        TEXTS,
        /** Another season is being played, and was not over in time. */
        BUSY
    }

    private final PastSeasons seasons;
    private final Stage stage;
    private final InstantSource clock;
    private final Turn turn = new Turn(PATIENCE);

    Seasons(PastSeasons seasons, Stage stage, InstantSource clock) {
        this.seasons = seasons;
        this.stage = stage;
        this.clock = clock;
    }

    /**
     * Plays a time once more.
     *
     * @param setup by which it is played
     * @param sites empty for all of them
     * @param from inclusive
     * @param to exclusive, at most {@link #LONGEST} later
     * @param answers as in {@link PastNights#play}
     */
    public Played play(
            Setup setup, Optional<Set<String>> sites, Instant from, Instant to, Map<String, Duration> answers) {
        return turn.take(() -> seasons.between(sites, from, to, MOST_ALARMS)
                        .map(past -> play(setup, past, answers))
                        .orElse(NotPlayed.ALARMS))
                .orElse(NotPlayed.BUSY);
    }

    private Played play(Setup setup, Past all, Map<String, Duration> answers) {
        Past past = all.at(site -> setup.sites().containsKey(site) && !site.equals(Site.GATEWAY));
        Instant end = past.to().plus(Past.AFTER);
        Instant now = clock.instant();
        return PastNights.play(setup, past, end.isAfter(now) ? now : end, answers, stage.stops())
                .<Played>map(would -> new Compared(setup, Season.really(past), would, all.calls() - past.calls()))
                .orElse(NotPlayed.TEXTS);
    }
}
