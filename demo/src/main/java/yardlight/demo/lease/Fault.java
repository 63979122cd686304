package yardlight.demo.lease;

/** What goes wrong at a lease by the script. It begins when it is told to and lasts. */
public enum Fault {
    POWER("power of the pump off, wells on"),
    BELT("belt burnt, motor runs on"),
    FUSE("fuse of the pump blown"),
    SWITCH_STUCK_ON("float switch stuck on"),
    SWITCH_STUCK_OFF("float switch stuck off"),
    TRASH("trash in the pump"),
    FLOW_LINE_HOLE("hole in the flow line"),
    TUBING_LEAK("tubing leak in a well"),
    WELL_OFF("a well off"),
    INJECTION_LEAK("leak of the injection line"),
    SENSOR_STUCK("level sensor stuck"),
    SENSOR_DRIFT("level sensor drifts"),
    RAIN("rain through the hatch");

    private final String words;

    Fault(String words) {
        this.words = words;
    }

    /** Names it in a table. */
    public String words() {
        return words;
    }
}
