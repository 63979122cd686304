package yardlight.demo.outside;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** What the rounds on one database came to. */
final class Tally {

    /** What is worth a word when the promises are not kept; empty otherwise. */
    final List<String> broken = new ArrayList<>();

    private final long began = System.nanoTime();
    private int rounds;
    private int alarms;
    private int texts;
    private long answered;
    private long missing;
    private int mostTexts;
    private int itsKills;

    void round() {
        rounds++;
    }

    /** Takes one alarm into account: what was posted for it, what the gateway shows of it, and what the mail server got. */
    void alarm(int place, Fleet fleet, Seen seen, int texts) {
        int lived = fleet.livedThrough(place);
        alarms++;
        this.texts += texts;
        answered += fleet.answered(place);
        missing += Math.max(0, fleet.answered(place) - seen.events());
        if (texts > mostTexts) {
            mostTexts = texts;
            itsKills = lived;
        }
        if (seen.events() != fleet.answered(place)) {
            broken.add(place + ": " + fleet.answered(place) + " events answered, " + seen.events() + " there");
        }
        if (texts < 1 || !seen.told()) {
            broken.add(place + ": notices " + seen.notices() + ", texts " + texts);
        }
        if (texts > 1 + lived) {
            broken.add(place + ": " + texts + " texts, and it lived through " + lived + " kills");
        }
    }

    int alarms() {
        return alarms;
    }

    long answered() {
        return answered;
    }

    @Override
    public String toString() {
        long seconds = Duration.ofNanos(System.nanoTime() - began).toSeconds();
        return rounds + " rounds of kill -9, " + answered + " events answered with 202, " + missing + " missing; "
                + alarms
                + " alarms, " + texts + " texts, at most " + mostTexts + " for one alarm (which lived through "
                + itsKills
                + " kills); " + seconds + " s";
    }
}
