package yardlight.demo.night;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardlight.demo.phone.Text;

/** Holds what was seen of a night against what must come of it. */
final class NightVerdict {

    static final String TANK = "WATER TANK";
    static final String FLOAT = "CALICO DRAW";
    static final String BATTERY = "LARKSPUR BARN";
    static final String SILENT = "TULE CREEK";

    private static final Duration BEFORE_BEN = Duration.ofMinutes(10);
    /** Two rounds of five minutes, seen through a clock that runs fast and a mail server. */
    private static final Duration SLACK = Duration.ofMinutes(3);
    /** What the demo's own reading of the gateway's clock may be out by. */
    private static final Duration CLOCK_ERROR = Duration.ofSeconds(20);

    private final NightRecord night;
    private final List<String> reasons = new ArrayList<>();

    private NightVerdict(NightRecord night) {
        this.night = night;
    }

    /** Why the night did not go as written; empty when it did. */
    static List<String> reasons(NightRecord night) {
        NightVerdict verdict = new NightVerdict(night);
        verdict.tankWokeAnaThenBen();
        verdict.benAnsweredAndThenItWasQuiet();
        verdict.bothHeardWhatBecameOfIt();
        verdict.othersWereTreatedRight();
        return List.copyOf(verdict.reasons);
    }

    private void tankWokeAnaThenBen() {
        List<Text> ana = tankTextsOf("ana");
        List<Text> ben = tankTextsOf("ben");
        require(ana.size() == 2, "Ana must get 2 texts about the tank, not " + ana.size());
        require(ben.size() == 1, "Ben must get 1 text about the tank, not " + ben.size());
        if (!ana.isEmpty() && !ben.isEmpty()) {
            Duration wait = Duration.between(ana.get(0).at(), ben.get(0).at());
            require(
                    wait.minus(BEFORE_BEN).abs().compareTo(SLACK) <= 0,
                    "Ben must be called 10 minutes after Ana, not after " + wait);
        }
    }

    private List<Text> tankTextsOf(String person) {
        return night.about(TANK).stream()
                .filter(text -> text.person().id().equals(person))
                .toList();
    }

    private void benAnsweredAndThenItWasQuiet() {
        Optional<Instant> answered = night.answers().stream()
                .filter(answer -> answer.text().mentions(TANK)
                        && answer.text().person().id().equals("ben"))
                .map(NightRecord.Answer::at)
                .findFirst();
        require(answered.isPresent(), "Ben must answer by the link");
        require(
                night.tankAcknowledgedBy().filter("ben"::equals).isPresent(),
                "the tank must be acknowledged by ben, not by "
                        + night.tankAcknowledgedBy().orElse("nobody"));
        answered.ifPresent(at -> require(
                night.about(TANK).stream().noneMatch(text -> text.at().isAfter(at)),
                "nobody must be called for the tank once Ben has answered"));
    }

    private void bothHeardWhatBecameOfIt() {
        List<Text> taken = night.news(TANK, "Ben Tso has it since");
        require(
                taken.size() == 1 && taken.get(0).person().id().equals("ana"),
                "Ana, and nobody else, must hear once that Ben has the tank");
        List<Text> over = night.news(TANK, "normal 4:");
        require(
                over.stream().map(text -> text.person().id()).sorted().toList().equals(List.of("ana", "ben")),
                "Ana and Ben must hear once that the tank is back");
        Instant morning = night.quietEnds().minus(CLOCK_ERROR);
        require(
                over.stream().noneMatch(text -> text.at().isBefore(morning)),
                "nobody must be woken to hear that the tank is back");
    }

    private void othersWereTreatedRight() {
        int chatter = night.about(FLOAT).size();
        require(chatter == 1 || chatter == 2, "the chattering switch must make 1 or 2 texts, not " + chatter);
        require(!night.about(SILENT).isEmpty(), "the silent box must make a text");
        require(!night.about(BATTERY).isEmpty(), "the low battery must make a text in the morning");
        Instant morning = night.quietEnds().minus(CLOCK_ERROR);
        require(
                night.about(BATTERY).stream().noneMatch(text -> text.at().isBefore(morning)),
                "the low battery must wait until quiet hours end");
    }

    private void require(boolean held, String rule) {
        if (!held) {
            reasons.add(rule);
        }
    }
}
