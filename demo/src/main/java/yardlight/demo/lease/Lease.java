package yardlight.demo.lease;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * A lease, from midnight of its first day on. {@link #step} lets time pass, {@link #readings} is what its box sees,
 * {@link #begin} breaks something. The same design and seed give the same lease to the last bit, however its time is cut
 * into steps.
 */
public final class Lease {

    /** Time passes in pieces of this length. */
    public static final Duration PIECE = Duration.ofSeconds(20);

    private static final double PIECE_MINUTES = PIECE.toSeconds() / 60.0;
    private static final double DAY = 1_440;

    private final LeaseDesign design;
    private final Random random;
    private final List<Well> wells;
    private final Separator separator;
    private final Tank water;
    private final Tank oil;
    private final FloatSwitch floats;
    private final InjectionPump pump;
    private final InjectionLine line = new InjectionLine();
    private final Hauler hauler = new Hauler();
    private final Sensor waterSensor = new Sensor(0.01, 0.01);
    private final Sensor oilSensor = new Sensor(0.01, 0.01);
    private final Sensor separatorSensor = new Sensor(0.3, 0.1);
    private final Sensor injectionSensor = new Sensor(4, 1);
    private final double heldAtFirst;

    private long pieces;
    private Rain rain = Rain.NONE;
    private double spillsUpstream;
    private double lifted;
    private double rained;
    private double injected;
    private double hauled;
    private double spilled;
    private double overflowed;

    public Lease(LeaseDesign design, long seed) {
        this.design = design;
        this.random = new Random(seed);
        this.wells = design.wells().stream().map(Well::new).toList();
        this.separator = new Separator(design.waterCut());
        double between = (design.floats().start() + design.floats().stop()) / 2;
        this.water = new Tank(LeaseDesign.DIAMETER, design.brim(), between);
        this.oil = new Tank(LeaseDesign.DIAMETER, design.brim(), LeaseDesign.between(random, 2, 10));
        this.floats = new FloatSwitch(design.floats());
        this.pump = new InjectionPump(design.pump());
        this.heldAtFirst = held();
        sense(new Step(0, random));
    }

    public LeaseDesign design() {
        return design;
    }

    /**
     * Lets time pass.
     *
     * @param length whole {@link #PIECE}s
     */
    public void step(Duration length) {
        if (length.isNegative() || length.toSeconds() % PIECE.toSeconds() != 0 || length.getNano() != 0) {
            throw new IllegalArgumentException("step must be made of pieces of " + PIECE + ": " + length);
        }
        for (long done = 0; done < length.toSeconds() / PIECE.toSeconds(); done++) {
            piece(new Step(PIECE_MINUTES, random));
            pieces++;
        }
    }

    /** What the box sees now; the same until time passes. */
    public Readings readings() {
        return new Readings(
                waterSensor.shows(),
                oilSensor.shows(),
                separatorSensor.shows(),
                injectionSensor.shows(),
                pump.runs(),
                Map.of("pump", pump.powered(), "wells", true));
    }

    /** The true level of the water tank, ft, whatever its sensor shows. */
    public double waterLevel() {
        return water.level();
    }

    /** Whether the plain switch at the top of the water tank is tripped; it hangs on no sensor and no box. */
    public boolean highSwitch() {
        return water.level() >= design.highSwitch();
    }

    /** How long it has been since the beginning. */
    public Duration passed() {
        return PIECE.multipliedBy(pieces);
    }

    public Ledger ledger() {
        return new Ledger(lifted, rained, injected, hauled, spilled, overflowed, held() - heldAtFirst);
    }

    /** Breaks something now, for good; how badly is thrown with the lease's own dice. */
    public void begin(Fault fault) {
        switch (fault) {
            case POWER -> pump.losePower();
            case BELT -> pump.burnBelt();
            case FUSE -> pump.blowFuse();
            case SWITCH_STUCK_ON -> floats.stick(true);
            case SWITCH_STUCK_OFF -> floats.stick(false);
            case TRASH -> pump.choke(LeaseDesign.between(random, 0.2, 0.5));
            case FLOW_LINE_HOLE -> spillsUpstream = LeaseDesign.between(random, 0.5, 0.9);
            case TUBING_LEAK -> biggest().leaksDownTo(LeaseDesign.between(random, 0, 0.3));
            case WELL_OFF -> biggest().off();
            case INJECTION_LEAK -> line.leak(LeaseDesign.between(random, 0.2, 0.5));
            case SENSOR_STUCK -> waterSensor.stick();
            case SENSOR_DRIFT ->
                waterSensor.drift((random.nextBoolean() ? 1 : -1) * LeaseDesign.between(random, 0.3, 1));
            case RAIN -> rain = Rain.drawn(random);
        }
    }

    private Well biggest() {
        return wells.stream().max(Comparator.comparingDouble(Well::base)).orElseThrow();
    }

    private void piece(Step step) {
        double up = wells.stream()
                .mapToDouble(well -> well.step(step.minutes(), random))
                .sum();
        double lost = up * spillsUpstream;
        double usual = design.lifted() / DAY * step.minutes();
        Separator.Dumped dumped = separator.step(up - lost, up / usual, spillsUpstream > 0, step);
        double through = rain.step(water, step.minutes());
        double over = water.fill(dumped.water() + through) + oil.fill(dumped.oil());
        double moved = water.draw(pump.step(floats.wants(water.level()), step.minutes()), InjectionPump.SUCTION);
        double kept = line.step(moved * DAY / step.minutes() / design.pump(), step);
        hauled += hauler.step(oil, (pieces * step.minutes()) % DAY, step.minutes());
        lifted += up;
        rained += through;
        overflowed += over;
        injected += moved * kept;
        spilled += lost + moved * (1 - kept);
        sense(step);
    }

    private void sense(Step step) {
        waterSensor.step(water.level(), step);
        oilSensor.step(oil.level(), step);
        separatorSensor.step(separator.psi(), step);
        injectionSensor.step(line.psi(), step);
    }

    private double held() {
        return separator.held() + water.held() + oil.held();
    }
}
