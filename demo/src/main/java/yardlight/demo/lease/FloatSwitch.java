package yardlight.demo.lease;

/** Wants the pump to run from its upper level down to its lower one. Trash or a broken arm keeps it where it is told. */
final class FloatSwitch {

    private enum Stuck {
        NOT,
        ON,
        OFF
    }

    private final LeaseDesign.Floats floats;
    private Stuck stuck = Stuck.NOT;
    private boolean wants;

    FloatSwitch(LeaseDesign.Floats floats) {
        this.floats = floats;
    }

    void stick(boolean on) {
        stuck = on ? Stuck.ON : Stuck.OFF;
    }

    boolean wants(double level) {
        if (level >= floats.start()) {
            wants = true;
        } else if (level <= floats.stop()) {
            wants = false;
        }
        return switch (stuck) {
            case NOT -> wants;
            case ON -> true;
            case OFF -> false;
        };
    }
}
