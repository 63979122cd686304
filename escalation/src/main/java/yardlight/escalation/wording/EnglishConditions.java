package yardlight.escalation.wording;

import java.util.Map;

/** Conditions in English, as far as they are not their own names in capitals. */
final class EnglishConditions {

    static final Map<String, String> NAMES = Map.ofEntries(
            Map.entry("power-off", "POWER OFF"),
            Map.entry("comms-loss", "COMMS LOST"),
            Map.entry("said-stop", "SAID STOP"),
            Map.entry("rising-fast", "RISING FAST"),
            Map.entry("falling-fast", "FALLING FAST"),
            Map.entry("drift", "DRIFTING"),
            Map.entry("no-readings", "NO READINGS"),
            Map.entry("sensor-fault", "SENSOR FAULT"),
            Map.entry("not-confirmed", "NOT CONFIRMED"),
            Map.entry("will-overflow", "WILL OVERFLOW"),
            Map.entry("runs-less", "RUNS LESS"),
            Map.entry("runs-more", "RUNS MORE"),
            Map.entry("running-without-effect", "RUNS IN VAIN"),
            Map.entry("falling-without-pump", "FALLS, PUMP OFF"));
    /** What some of them may mean: common practice, no source. */
    static final Map<String, String> MEANINGS = Map.of(
            "runs-less", "Less fluid may come in: a well off or a leak",
            "runs-more", "The pump may be wearing",
            "running-without-effect", "Pump on, no effect: belt, trash or valve",
            "falling-without-pump", "Level falls and no pump runs: a leak or a stuck switch",
            "leak", "It never fell so fast: an open line");

    private EnglishConditions() {}
}
